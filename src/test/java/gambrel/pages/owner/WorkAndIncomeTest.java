package gambrel.pages.owner;

import static gambrel.pages.owner.SmallShop.remarks;
import static gambrel.pages.owner.SmallShop.rows;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.pages.views.SummaryView;
import java.nio.file.Path;
import java.util.List;
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
    assertEquals(List.of(), rows(may, "income"));
  }

  @Test
  void incomeIsChargesOnTheWeightIntoTheBoningRoom() {
    assertEquals(
        List.of(List.of("Beef", "1", "100.00", "0.50", "", "", "")), rows(july(), "income"));
    assertEquals(1, remarks(july(), "What cutting brought").size());
  }

  /** 0.50 a kilo, 300 kg an hour. */
  @Test
  void andForAnHourWherePaceIsKnown() {
    wynBonesQuarters();
    assertEquals("150.00", rows(july(), "income").get(0).get(4));
    assertEquals(2, remarks(july(), "What cutting brought").size());
  }

  /** 100 kg for the same 100 in June. */
  @Test
  void besideThatOfTheTwelveMonthsBefore() {
    shop.beef("A1", "2026-06-08", "c-ann").hung("A1", "2026-06-08", "102", "100");
    shop.cut("A1", "2026-06-12", "78", "20");
    assertEquals("1.00", rows(july(), "income").get(0).get(5));
  }

  @Test
  void ownBodiesBringNone() {
    shop.beef("B2", "2026-07-06", "").hung("B2", "2026-07-06", "204", "200");
    shop.cut("B2", "2026-07-13", "156", "40");
    assertEquals("1", rows(july(), "income").get(0).get(1));
  }
}
