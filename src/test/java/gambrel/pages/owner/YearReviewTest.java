package gambrel.pages.owner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.pages.views.SummaryView;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class YearReviewTest {
  private static final String LATER = "2027-01-15T02:00:00Z";

  @TempDir private Path folder;
  private SmallShop shop;

  /** 5 of 500 kg is 1 %; 12 of 600 kg is 2 %; 17 of 1100 kg is 1.5 %. */
  @BeforeEach
  void twoBodiesHalfAYearApart() {
    shop = new SmallShop(folder);
    shop.beef("B1", "2026-03-02", "c-ann").hung("B1", "2026-03-02", "500", "495");
    shop.beef("B2", "2026-09-07", "c-ann").hung("B2", "2026-09-07", "600", "588");
    shop.beef("B3", "2026-12-07", "c-ann").row("rail", "2026-12-07T08:00", "B3", "hot", "300");
  }

  @Test
  void comesWithDecemberALineAMonthAndTheirTotal() {
    var year = year("2026-12");
    assertTrue(SmallShop.part(year, "The year 2026").isPresent());
    assertEquals("Beef", SmallShop.tables(year, "year").get(0).heads().get(0).get(0).text());
    assertEquals(
        List.of("March 2026", "September 2026", "December 2026", "Total"),
        SmallShop.column(year, "year", 0));
    assertEquals(List.of("1.0", "2.0", "", "1.5"), SmallShop.column(year, "year", 3));
    assertEquals("466.7", SmallShop.column(year, "year", 2).get(3), "500, 600 and 300 kg are 1400");
  }

  @Test
  void staysAwayInOtherMonthsUnlessAskedFor() {
    assertEquals(List.of(), SmallShop.tables(year("2026-09"), "year"));
  }

  @Test
  void coversTheTwelveMonthsThatEndWithTheMonthAskedFor() {
    shop.add("shop.properties", "year_review=9");
    var year = year("2026-09");
    assertTrue(SmallShop.part(year, "The twelve months to September 2026").isPresent());
    assertEquals(
        List.of("March 2026", "September 2026", "Total"), SmallShop.column(year, "year", 0));
    assertEquals(List.of(), SmallShop.tables(year("2026-12"), "year"), "only what is asked for");
  }

  private SummaryView year(String month) {
    return shop.summary(month, LATER);
  }
}
