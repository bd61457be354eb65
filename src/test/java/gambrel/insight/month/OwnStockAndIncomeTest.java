package gambrel.insight.month;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.insight.month.figures.BodyRate;
import gambrel.insight.month.figures.Finding;
import gambrel.insight.month.figures.MonthRecords;
import gambrel.insight.month.money.Income;
import gambrel.insight.month.money.OwnStock;
import gambrel.insight.month.money.SupplierLine;
import gambrel.scenes.Scene;
import gambrel.trade.measure.Money;
import java.nio.file.Path;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OwnStockAndIncomeTest {
  private static final Currency EURO = Currency.getInstance("EUR");

  @TempDir Path folder;

  private Scene scene;

  @BeforeEach
  void bodies() {
    scene =
        Books.shop(folder)
            .file("values.csv", "item,value,from,to", "mince,12,,", "bone,0.5,,")
            .file(
                "charges.csv",
                "charge,description,basis,price,tax_percent",
                "cut,Cutting,boning,2.00,10")
            .body("B1,beef,steer,2026-03-02,shop,Hill,900.00")
            .body("B2,beef,steer,2026-03-02,,Hill,1000.00")
            .body("B3,beef,steer,2026-03-02,ann,,")
            .body("B4,beef,steer,2026-03-02,shop,,");
    for (int i = 1; i <= 4; i++) {
      scene.weigh(
          """
          02T10:0%d B%d hot carcase 102
          03T10:0%d B%d cold carcase 100
          05T10:0%d B%d pack mince 78
          05T11:0%d B%d bin bone 21
          """
              .formatted(i, i, i, i, i, i, i, i));
    }
  }

  private MonthRecords records() {
    return Books.march(scene);
  }

  private List<OwnStock> stock() {
    var records = records();
    return OwnStock.of(records.bodies().cut(), records.values(), EURO);
  }

  /** 78 kg at 12 are 936: 36 over the one's cost, 64 under the other's; B4's cost is not known. */
  @Test
  void marginIsTheWorthOfTheTakeHomeLessTheCost() {
    assertEquals(
        List.of(Optional.of(new Money(3_600)), Optional.of(new Money(-6_400))),
        stock().stream().map(OwnStock::margin).toList());
  }

  @Test
  void bodiesOfASupplierAreAddedUp() {
    var line = SupplierLine.of(stock()).get(0);
    assertEquals("Hill", line.supplier());
    assertEquals(2, line.bodies().size());
    assertEquals(Optional.of(new Money(-2_800)), line.sum(OwnStock::margin));
    assertEquals(Optional.of(BigFraction.of(-28, 200)), line.figure().value());
    assertTrue(line.toOthers().isEmpty(), "nobody to compare it with");
  }

  @Test
  void bodyWithoutValuesHasNoMarginInsteadOfNothing() {
    scene.file("values.csv", "item,value,from,to", "bone,0.5,,");
    assertEquals(List.of(Optional.empty(), Optional.empty()), margins());
    assertTrue(SupplierLine.of(stock()).get(0).sum(OwnStock::margin).isEmpty());
  }

  private List<Optional<Money>> margins() {
    return stock().stream().map(OwnStock::margin).toList();
  }

  @Test
  void valueOfAnotherDayDoesNotCount() {
    scene.file("values.csv", "item,value,from,to", "mince,12,,2026-03-30", "mince,13,2026-04-01,");
    assertEquals(List.of(Optional.empty(), Optional.empty()), margins());
  }

  @Test
  void findingNamesBodiesThatAreWorthLessThanTheyCost() {
    var found =
        MonthReport.of(records()).findings().stream()
            .filter(f -> f.kind() == Finding.Kind.STOCK)
            .toList();
    assertEquals(1, found.size());
    assertEquals(List.of("B2"), found.get(0).subjects());
    assertEquals(Optional.of(new Money(6_400)), found.get(0).money());
  }

  /** 100 kg at 2.00 for Ann alone, tax left out: the shop's bodies bring no charge. */
  @Test
  void incomeIsOfCustomersBodiesWithoutTax() {
    assertEquals(List.of(BigFraction.of(200)), income(BodyRate::money));
    assertEquals(List.of(BigFraction.of(2)), income(BodyRate::rate));
  }

  @Test
  void shopsHalfOfABodyWeighsNothingInItsIncome() {
    scene
        .body("B5,beef,steer,2026-03-02,,,")
        .file("shares.csv", "body,customer,share", "B5,ann,1/2", "B5,shop,1/2")
        .weigh(
            """
            02T12:00 B5 hot carcase 102
            03T12:00 B5 cold carcase 100
            05T12:00 B5 pack mince 99
            """);
    assertEquals(List.of(BigFraction.of(200), BigFraction.of(100)), income(BodyRate::money));
    assertEquals(List.of(BigFraction.of(100), BigFraction.of(50)), income(BodyRate::weight));
  }

  private List<BigFraction> income(Function<BodyRate, BigFraction> amount) {
    var records = records();
    return Income.of(records, records.bodies().cut()).stream().map(amount).toList();
  }

  @Test
  void noBodiesDivideByNothing() {
    assertTrue(BodyRate.of(List.of()).isEmpty());
  }
}
