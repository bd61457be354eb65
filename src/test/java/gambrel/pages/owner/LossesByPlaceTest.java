package gambrel.pages.owner;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.pages.views.SummaryView;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The losses of a species by day and place. */
class LossesByPlaceTest {
  @TempDir private Path folder;
  private SmallShop shop;

  /** From May 2025 to April 2026 two bodies a month, in the north chiller, lose 2 %. */
  @BeforeEach
  void startAShop() {
    shop = new SmallShop(folder);
    shop.instead("bodies.csv", "body,species,killed,customer,chiller");
    for (int month = 0; month < 12; month++) {
      String day = LocalDate.of(2025, 5, 5).plusMonths(month).toString();
      body("A" + month, day, "north", "245");
      body("C" + month, day, "north", "245");
    }
  }

  /** 5 + 7 of 500 kg is 2.4 %; nothing hung in the south before. */
  @Test
  void areToldByDayOfKillAndByChiller() {
    body("B1", "2026-05-04", "north", "245");
    body("B2", "2026-05-04", "south", "243");
    body("B3", "2026-05-06", "south", "245");
    var may = may();
    assertEquals(
        List.of(
            List.of("4 May", "2", "12.0", "2.40", "2.00"),
            List.of("6 May", "1", "5.0", "2.00", "2.00")),
        chilled(may, "By day"));
    assertEquals(
        List.of(
            List.of("north", "1", "5.0", "2.00", "2.00"),
            List.of("south", "2", "12.0", "2.40", "")),
        chilled(may, "By chiller"));
    assertEquals(
        List.of(List.of("rail", "3", "17.0", "2.27", "2.00")), chilled(may, "By rail scale"));
  }

  /** 4 of 200 kg are lost on 10 May, 2 of 200 kg on the 11th. */
  @Test
  void areToldByDayOfTheLastCutByBenchScaleAndByBoner() {
    shop.add(
        "bench.csv",
        "scale,from,to,body,batch,customer,boner\nbench,2026-05-10T06:00,2026-05-10T18:00,,,,Wyn");
    body("B1", "2026-05-08", "north", "200");
    body("B2", "2026-05-08", "north", "200");
    shop.cut("B1", "2026-05-10", "156", "40").cut("B2", "2026-05-11", "158", "40");
    var may = may();
    assertEquals(
        List.of(
            List.of("10 May", "1", "4.00", "2.00", ""), List.of("11 May", "1", "2.00", "1.00", "")),
        cut(may, "By day"));
    assertEquals(List.of(List.of("bench", "2", "6.00", "1.50", "")), cut(may, "By bench scale"));
    assertEquals(List.of(List.of("Wyn", "1", "4.00", "2.00", "")), cut(may, "By boner"));
  }

  private void body(String id, String day, String chiller, String cold) {
    shop.add("bodies.csv", String.join(",", id, "beef", day, "c-ann", chiller));
    shop.hung(id, day, "250", cold);
  }

  private SummaryView may() {
    return shop.summary("2026-05", "2026-07-01T02:00:00Z");
  }

  private static List<List<String>> chilled(SummaryView month, String title) {
    return below(month, title, 0);
  }

  private static List<List<String>> cut(SummaryView month, String title) {
    return below(month, title, 5);
  }

  /** The rows below a title, of the five columns from one on. */
  private static List<List<String>> below(SummaryView month, String title, int column) {
    var rows = new ArrayList<List<String>>();
    boolean below = false;
    for (var row : SmallShop.rows(month, "places")) {
      var cells = row.subList(column, column + 5);
      boolean titled = cells.get(1).isEmpty();
      if (below && !titled) {
        rows.add(cells);
      }
      below = titled ? cells.get(0).equals(title) : below;
    }
    return rows;
  }
}
