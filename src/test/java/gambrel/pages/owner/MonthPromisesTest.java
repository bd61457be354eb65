package gambrel.pages.owner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.pages.views.FirstPage;
import gambrel.pages.views.SummaryView;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the owner relies on when he reads his month. */
class MonthPromisesTest {
  private static final String LATER = "2026-10-15T02:00:00Z";

  @TempDir private Path folder;
  private SmallShop shop;
  private int bodies;

  @BeforeEach
  void startAShop() {
    shop = new SmallShop(folder);
  }

  /**
   * Twenty bodies lost 2 % and 3 % by turns. The three that are left out lost 30 % each: one is
   * held, one was released, the meat of one is in a batch that is not packed.
   */
  @Test
  void aBodyHeldInCureOrReleasedWithAFaultIsInNoFigureCentreOrComparison() {
    inJune(List.of(2, 3, 2, 3, 2, 3, 2, 3, 2, 3, 2, 3, 2, 3, 2, 3, 2, 3, 2, 3));
    for (String body : List.of("HELD", "RELEASED")) {
      shop.beef(body, "2026-06-21", "c-ann").hung(body, "2026-06-21", "200", "140");
      shop.cut(body, "2026-06-23", "80", "40");
    }
    shop.beef("CURE", "2026-06-21", "c-ann").hung("CURE", "2026-06-21", "200", "140");
    shop.add("batches.csv", "S1,Ham,2026-12-01");
    shop.row("bench", "2026-06-23T09:00", "CURE", "trim", "99", "S1");
    shop.row("bench", "2026-06-23T09:10", "CURE", "bone", "40");
    shop.add("releases.csv", "body,by,on,reason,action");
    shop.add("releases.csv", "RELEASED,Hetty,2026-06-30T08:00,a tub was spilt,release");
    kill("2026-07-06", 2);
    var july = shop.summary("2026-07", LATER);
    var chill = five(july, "Beef: lost in the chiller, of hot");
    assertEquals(new FirstPage.FiveCell("2.5%", "of 20"), chill.cells().get(1));
    assertEquals("usual 2.50%", centre(july));
    assertEquals(
        List.of("Beef", "4.0", "", "2.0", "of 1", "2.5", "of 20", "2.0–3.0"),
        SmallShop.rows(july, "against").get(0));
    assertEquals(
        List.of(
            "Held, so left out of these figures: HELD. It lost 20.00\u00a0kg in the boning room,"
                + " 14.3% of the weight into it.",
            "In a batch that is still open, so left out: CURE.",
            "Left out: RELEASED, released by Hetty (a tub was spilt). It lost 20.00\u00a0kg in the"
                + " boning room, 14.3% of the weight into it."),
        shop.summary("2026-06", LATER).first().leftOut());
  }

  /** 20 kg are missing, and a kilo on the rail is worth 10. */
  @Test
  void ofABodyThatIsHeldItSaysWhatItsLossIsWorth() {
    shop.add("values.csv", "item,value,from,to\ncarcase,10,,");
    shop.beef("B1", "2026-07-06", "c-ann").hung("B1", "2026-07-06", "204", "200");
    shop.cut("B1", "2026-07-09", "140", "40");
    assertEquals(
        List.of(
            "Held, so left out of these figures: B1. It lost 20.00\u00a0kg in the boning room,"
                + " 10.0% of the weight into it, worth about $200.00."),
        shop.summary("2026-07", LATER).first().leftOut());
  }

  /** The mean of fifteen times 2 % and five times 6 % is 3 %; the lines lie around it. */
  @Test
  void centresAndTheUsualAreMediansAndNoLineOfALossIsBelowZero() {
    inJune(List.of(2, 2, 6, 2, 2, 2, 6, 2, 2, 2, 6, 2, 2, 2, 6, 2, 2, 2, 6, 2));
    kill("2026-07-06", 2);
    var july = shop.summary("2026-07", LATER);
    assertEquals("usual 2.00%", centre(july));
    assertEquals("2.00", SmallShop.rows(july, "places").get(1).get(4));
    var lines = SmallShop.part(july, "What beef lost").orElseThrow().charts().get(0).lines();
    assertEquals("seldom below 0.00%", lines.get(2).label());
  }

  /** Brisket at 8 is packed every month, though trim is worth 12. */
  @Test
  void theSameFindingAboutValuesComesOnceAQuarterOrWhenValuesOrCutsChanged() {
    shop.add("codes.csv", "brisket,brisket,pack");
    shop.add("values.csv", "item,value,from,to\nbrisket,8,,\ntrim,12,,\nmince,13,,2026-07-31");
    shop.add("values.csv", "mince,14,2026-08-01,");
    for (String month : List.of("2026-04", "2026-05", "2026-06", "2026-07", "2026-08")) {
      String body = "K" + ++bodies;
      shop.beef(body, month + "-06", "").hung(body, month + "-06", "204", "200");
      shop.row("bench", month + "-09T08:00", body, "brisket", "10");
      shop.cut(body, month + "-09", "148", "40");
    }
    assertTrue(tellsOfBrisket("2026-04"), "it was not packed before");
    assertTrue(!tellsOfBrisket("2026-05"), "nothing changed");
    assertTrue(tellsOfBrisket("2026-06"), "the quarter ends");
    assertTrue(!tellsOfBrisket("2026-07"), "nothing changed");
    assertTrue(tellsOfBrisket("2026-08"), "mince has another value");
  }

  private boolean tellsOfBrisket(String month) {
    return shop.summary(month, LATER).first().findings().stream()
        .anyMatch(row -> row.seen().startsWith("Brisket"));
  }

  @ParameterizedTest
  @CsvSource({
    "en, 1 body waits for you., 2 bodies wait for you., '1 statement was issued.'",
    "de, 1 Tier wartet auf Sie., 2 Tiere warten auf Sie., 1 Abrechnung wurde ausgestellt.",
    "fr, 1 animal vous attend., 2 animaux vous attendent., 1 relevé a été émis.",
    "es, 1 animal le espera., 2 animales le esperan., Se emitió 1 liquidación."
  })
  void sentencesAgreeWithOneAndWithTwo(String language, String one, String two, String issued) {
    shop.add("shop.properties", "language=" + language);
    var wording = SmallShop.wording(shop.at(LATER));
    assertEquals(one, wording.counted("morning.held", 1));
    assertEquals(two, wording.counted("morning.held", 2));
    assertEquals(issued, wording.counted("morning.issued", 1));
  }

  private void inJune(List<Integer> percents) {
    for (int day = 1; day <= percents.size(); day++) {
      kill(LocalDate.of(2026, 6, day).toString(), percents.get(day - 1));
    }
  }

  private void kill(String day, int percent) {
    String body = "K" + ++bodies;
    shop.beef(body, day, "c-ann").hung(body, day, "200", "" + (200 - 2 * percent));
  }

  private static String centre(SummaryView month) {
    var part = SmallShop.part(month, "What beef lost").orElseThrow();
    return part.charts().get(0).lines().get(0).label();
  }

  private static FirstPage.FiveRow five(SummaryView month, String label) {
    return month.first().five().stream()
        .flatMap(five -> five.rows().stream())
        .filter(row -> row.label().equals(label))
        .findFirst()
        .orElseThrow();
  }
}
