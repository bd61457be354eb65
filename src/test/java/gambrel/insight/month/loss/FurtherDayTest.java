package gambrel.insight.month.loss;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.insight.month.Books;
import gambrel.insight.month.figures.MonthFigure;
import gambrel.insight.month.figures.Ownership;
import gambrel.scenes.Scene;
import gambrel.trade.measure.Exact;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Two bodies of 100 kg cold hang 6, 7, 8 and 9 days each and lose 0.3 kg a day, one of them 0.1 kg
 * more and one 0.1 kg less. Their line has the slope 0.3; its residuals are eight times 0.1, hence
 * a deviation of √(0.08/6) = 0.11547; days lie 10 in squares about their mean, so that the slope's
 * error is 0.036515 and, with t(6, 0.975) = 2.44691 by the printed tables, its margin 0.0893.
 */
class FurtherDayTest {
  private static final LocalDate FIRST = LocalDate.of(2026, 2, 25);

  @TempDir Path folder;

  private Scene scene;
  private int bodies;

  @BeforeEach
  void shop() {
    scene = Books.shop(folder);
  }

  /** Killed from 25 February on, a day each. */
  private void hangEight(String owner, double aDay) {
    for (int days = 6; days <= 9; days++) {
      hang(owner, days, 100 - aDay * days - 0.1);
      hang(owner, days, 100 - aDay * days + 0.1);
    }
  }

  private void hang(String owner, int days, double aged) {
    String id = "B" + ++bodies;
    var killed = FIRST.plusDays(bodies % 8);
    scene.body("%s,beef,steer,%s,%s,,,,,,".formatted(id, killed, owner));
    weigh(killed, id, "hot carcase", 102);
    weigh(killed.plusDays(1), id, "cold carcase", 100);
    weigh(killed.plusDays(days), id, "aged carcase", aged);
    weigh(killed.plusDays(days), id, "pack mince", aged - 1);
  }

  private void weigh(LocalDate day, String id, String what, double weight) {
    scene.weigh("%sT10:00 %s %s %s".formatted(day, id, what, text(weight)));
  }

  private static String text(double weight) {
    return String.format(Locale.ROOT, "%.2f", weight);
  }

  private List<FurtherDay> found() {
    return FurtherDay.of(Books.march(scene));
  }

  private static String said(MonthFigure figure, int decimals) {
    var interval = figure.interval().orElseThrow();
    return round(interval.lower(), decimals)
        + " "
        + round(figure.value().orElseThrow(), decimals)
        + " "
        + round(interval.upper(), decimals);
  }

  private static String round(BigFraction value, int decimals) {
    return Exact.round(value, decimals).toPlainString();
  }

  @Test
  void takesWhatTheLineFallsByGiveOrTakeItsMargin() {
    hangEight("ann", 0.3);
    var day = found().get(0);
    assertEquals("0.2107 0.3000 0.3893", said(day.loss().orElseThrow(), 4));
    assertEquals("0.211 0.300 0.389", said(day.weight().orElseThrow(), 3));
  }

  @Test
  void ofCustomersAndOfTheShopIsToldApart() {
    hangEight("ann", 0.3);
    hangEight("shop", 0.5);
    var found = found();
    assertEquals(
        List.of(Ownership.CUSTOMERS, Ownership.OWN),
        found.stream().map(FurtherDay::whose).toList());
    assertEquals("0.300", round(found.get(0).loss().orElseThrow().value().orElseThrow(), 3));
    assertEquals("0.500", round(found.get(1).loss().orElseThrow().value().orElseThrow(), 3));
  }

  /**
   * Lost before, at the middle of 7.5 days: 2.25 %; 0.3 of 100 − 2.25 − 0.3 = 97.45 are 0.3079 %.
   */
  @Test
  void onAnOwnBodyAsksForThePriceThatBringsTheSameMoney() {
    hangEight("shop", 0.3);
    scene.file("values.csv", "item,value,from,to", "carcase,10,,");
    var own = found().get(0);
    assertEquals("0.2160 0.3079 0.3999", said(own.rise().orElseThrow(), 4));
    var sold = BigFraction.of(9775, 100).multiply(10);
    var price = own.rise().orElseThrow().value().orElseThrow().divide(100).add(1).multiply(10);
    assertEquals(sold, BigFraction.of(9745, 100).multiply(price));
  }

  @Test
  void ofWhichTooFewBodiesTellSaysOnlyWhatIsCharged() {
    scene.file("charges.csv", "charge,description,basis,price", "hang,Hanging,day,2");
    hang("ann", 6, 98);
    var day = found().get(0);
    assertEquals(1, day.hanging().bodies().size());
    assertTrue(day.loss().isEmpty() && day.rise().isEmpty());
    assertEquals("2.00", round(day.charge().orElseThrow().median(), 2));
  }

  /** Six days and a seventh are free, the eighth is not: 0, 0, and six times 2. */
  @Test
  void isChargedAsTheBillChargesIt() {
    scene.file("charges.csv", "charge,description,basis,price,free", "hang,Hanging,day,2,7");
    hangEight("ann", 0.3);
    var charge = found().get(0).charge().orElseThrow();
    assertEquals("1.50", round(charge.lower(), 2));
    assertEquals("2.00", round(charge.median(), 2));
  }

  @Test
  void isChargedForBodiesOfLastMonthAtThisMonthsPrices() {
    scene.file(
        "charges.csv",
        "charge,description,basis,price,from,to",
        "old,Hanging,day,2,,2026-03-30",
        "new,Hanging,day,3,2026-03-31,");
    hangEight("ann", 0.3);
    var charge = found().get(0).charge().orElseThrow();
    assertEquals("3.00", round(charge.lower(), 2));
    assertEquals("3.00", round(charge.upper(), 2));
  }

  @Test
  void leavesOutABodyThatIsHeldForACharge() {
    scene.file("charges.csv", "charge,description,basis,price,hot_from", "hang,Hanging,day,2,50");
    hangEight("ann", 0.3);
    assertEquals(8, found().get(0).charge().orElseThrow().number());
    scene.body("C1,beef,steer,2026-03-02,ann,,,,,,");
    weigh(LocalDate.of(2026, 3, 3), "C1", "cold carcase", 100);
    weigh(LocalDate.of(2026, 3, 9), "C1", "aged carcase", 98);
    weigh(LocalDate.of(2026, 3, 9), "C1", "pack mince", 97);
    var with = found().get(0);
    assertEquals(8, with.hanging().bodies().size());
    assertEquals(8, with.charge().orElseThrow().number());
  }

  @Test
  void ofBodiesThatTheShopSharesIsNeitherOnes() {
    scene.file("shares.csv", "body,customer,share", "S1,ann,1/2", "S1,shop,1/2");
    scene.body("S1,beef,steer,2026-03-02,,,,,,,");
    weigh(LocalDate.of(2026, 3, 2), "S1", "hot carcase", 102);
    weigh(LocalDate.of(2026, 3, 3), "S1", "cold carcase", 100);
    weigh(LocalDate.of(2026, 3, 9), "S1", "aged carcase", 98);
    weigh(LocalDate.of(2026, 3, 9), "S1", "pack mince", 97);
    assertEquals(List.of(), found());
  }
}
