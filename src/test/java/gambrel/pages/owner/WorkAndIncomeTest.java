package gambrel.pages.owner;

import static gambrel.pages.owner.SmallShop.remarks;
import static gambrel.pages.owner.SmallShop.rows;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.pages.views.SummaryView;
import gambrel.trade.measure.Money;
import gambrel.trade.measure.Weight;
import gambrel.trade.register.ChargeLine;
import gambrel.trade.register.Register;
import gambrel.trade.register.RegisterRow;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WorkAndIncomeTest {
  @TempDir private Path folder;
  private SmallShop shop;

  /** Ann's body of 200 kg, for which 100 is charged. */
  @BeforeEach
  void annsSteer() {
    shop = new SmallShop(folder).add("codes.csv", "hq,hindquarter,block\nfq,forequarter,block");
    shop.beef("B1", "2026-07-06", "c-ann").hung("B1", "2026-07-06", "204", "200");
    shop.cut("B1", "2026-07-10", "156", "40");
  }

  /** A quarter of 50 kg every ten minutes from eight o'clock on; Wyn is at the bench. */
  private void wynBonesQuarters() {
    shop.add(
        "bench.csv",
        "scale,from,to,body,batch,customer,boner\n"
            + "bench,2026-07-10T06:00,2026-07-10T18:00,,,,Wyn");
    int minute = 0;
    for (var quarter : List.of("hq", "hq", "fq", "fq")) {
      shop.row("bench", "2026-07-10T08:%02d".formatted(minute), "B1", quarter, "50");
      minute += 10;
    }
  }

  private SummaryView july() {
    return shop.summary("2026-07", "2026-09-15T02:00:00Z");
  }

  /** Six quarters of 50 kg in an hour; the last forequarter has no end. */
  @Test
  void paceIsToldByPieceAndBoner() {
    wynBonesQuarters();
    assertEquals(
        List.of(
            List.of("Hindquarter, beef", "Wyn", "2", "10.0", "", "300", "", ""),
            List.of("Forequarter, beef", "Wyn", "1", "10.0", "", "300", "", "")),
        rows(july(), "pace"));
  }

  @Test
  void withoutABonerThePageSaysWhatToWriteDown() {
    assertEquals(List.of(), rows(july(), "pace"));
    var remarks = remarks(july(), "Work on the block");
    assertEquals(1, remarks.size());
    assertTrue(remarks.get(0).contains("bench.csv"), remarks::toString);
  }

  @Test
  void andNothingInAMonthWithoutACut() {
    var may = shop.summary("2026-05", "2026-09-15T02:00:00Z");
    assertEquals(List.of(), remarks(may, "Work on the block"));
    assertEquals(List.of(), rows(may, "earned"));
  }

  /** As charged on the statement that went out, on 200 kg. */
  @Test
  void earnedIsWhatTheStatementsChargeOnTheWeightIntoTheBoningRoom() {
    assertEquals(
        List.of(
            List.of("Slaughter", "1", "100.00", "0.50", ""),
            List.of("Hide", "1", "\u221220.00", "\u22120.10", ""),
            List.of("Total", "1", "80.00", "0.40", "")),
        rows(issued(), "earned"));
  }

  /** 0.50 a kilo, 300 kg an hour. */
  @Test
  void andForAnHourWherePaceIsKnown() {
    wynBonesQuarters();
    assertEquals("150.00", rows(issued(), "earned").get(0).get(4));
  }

  @Test
  void isNotToldBeforeAStatementWentOut() {
    assertEquals(List.of(), rows(july(), "earned"));
  }

  /** The month after a statement of 80 to Ann for her body. */
  private SummaryView issued() {
    var lines = List.of(line("kill", "Slaughter", 10_000), line("hide", "Hide", -2_000));
    var statement =
        new RegisterRow(
            "c-ann",
            "B1",
            1,
            LocalDateTime.parse("2026-07-11T02:00:00"),
            Weight.ofThousandths(156_000),
            new Money(8_000),
            Money.ZERO,
            Money.ZERO,
            Optional.empty(),
            "statements/c-ann/B1-r1.pdf",
            "",
            "",
            Optional.of(1),
            lines);
    var night = shop.at("2026-09-15T02:00:00Z");
    return SmallShop.summary(night, "2026-07", new Register(List.of(statement)));
  }

  private static ChargeLine line(String charge, String description, long amount) {
    var one = BigDecimal.ONE;
    return new ChargeLine(
        charge, description, one, "head", one, new Money(amount), BigDecimal.ZERO, Money.ZERO);
  }
}
