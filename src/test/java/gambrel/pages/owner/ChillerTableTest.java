package gambrel.pages.owner;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.pages.views.SummaryView;
import gambrel.pages.views.TableView.Cell;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ChillerTableTest {
  @TempDir private Path folder;
  private SmallShop shop;

  /** From May 2025 to April 2026 two beef bodies and two lambs a month lose 2 %. */
  @BeforeEach
  void twoSpeciesForAYear() {
    shop = new SmallShop(folder);
    for (int month = 0; month < 12; month++) {
      String day = LocalDate.of(2025, 5, 5).plusMonths(month).toString();
      for (int i = 0; i < 2; i++) {
        body("B" + month + i, "beef", day, "250", "245");
        body("L" + month + i, "lamb", day, "25", "24.5");
      }
    }
  }

  /** 5 + 7 of 500 kg is 2.4 %. */
  @Test
  void hasARowForEachDayOfKillAndAColumnForEachSpecies() {
    body("B1", "beef", "2026-05-04", "250", "245");
    body("B2", "beef", "2026-05-04", "250", "243");
    body("L1", "lamb", "2026-05-06", "25", "24.5");
    var month = may();
    var heads =
        SmallShop.tables(month, "daily").get(0).heads().get(0).stream().map(Cell::text).toList();
    assertEquals(List.of("", "Beef, usual 2.00%", "Lamb, usual 2.00%"), heads);
    assertEquals(
        List.of(List.of("4 May", "2.40", "of 2", "", ""), List.of("6 May", "", "", "2.00", "of 1")),
        SmallShop.rows(month, "daily"));
  }

  @Test
  void isLeftOutWithoutEnoughBodiesBefore() {
    var few = new SmallShop(folder.resolve("few"));
    few.beef("B1", "2026-05-04", "c-ann").hung("B1", "2026-05-04", "250", "245");
    assertEquals(
        List.of(), SmallShop.tables(few.summary("2026-05", "2026-07-01T02:00:00Z"), "daily"));
  }

  private void body(String id, String species, String day, String hot, String cold) {
    shop.add("bodies.csv", id + "," + species + "," + day + ",,,c-ann");
    shop.hung(id, day, hot, cold);
  }

  private SummaryView may() {
    return shop.summary("2026-05", "2026-07-01T02:00:00Z");
  }
}
