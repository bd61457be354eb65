package gambrel.night;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.YearMonth;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which months have a summary. */
class MonthsTest {
  private static final String LATE = "2026-06-06T02:00";

  @TempDir private Path folder;
  private NightShop shop;

  /** A body killed in March, one killed in March and cut in May, and one not yet killed. */
  @BeforeEach
  void openShop() {
    shop = new NightShop(folder.resolve("shop")).beef("B1", "ann").body("B2", "bob");
    shop.add("exports/a.csv", "bench,70,2026-05-05T10:00:00,B2,rump,290,,,,");
    shop.add("bodies.csv", "B3,beef,2026-08-03,ann,", "B4,beef,2026-04-03,ann,cancelled");
  }

  private List<String> summaries() {
    return Trees.files(shop.reports().resolve("summaries"));
  }

  @Test
  void everyMonthInWhichABodyWasKilledOrCutLastHasOne() {
    shop.run(LATE);

    assertEquals(List.of("2026-03.pdf", "2026-05.pdf"), summaries());
  }

  @Test
  void aMonthThatLiesAheadHasNoneYet() {
    shop.run(NightShop.NIGHT);

    assertEquals(List.of("2026-03.pdf"), summaries());
  }

  @Test
  void onlyTheMonthsThatAreAskedForAreWrittenAndTheOthersStay() {
    shop.run(NightShop.NIGHT);
    Trees.age(shop.reports());
    var before = Trees.times(shop.reports().resolve("summaries"));

    shop.night().run(shop.reports(), NightShop.moment(LATE), List.of(YearMonth.of(2026, 5)));

    assertEquals(List.of("2026-03.pdf", "2026-05.pdf"), summaries());
    var after = Trees.times(shop.reports().resolve("summaries"));
    assertEquals(before.get("2026-03.pdf"), after.get("2026-03.pdf"));
  }

  @Test
  void anUnchangedOneIsNotTouched() {
    shop.run(LATE);
    Trees.age(shop.reports());
    var before = Trees.times(shop.reports().resolve("summaries"));

    shop.run("2026-06-07T02:00");

    assertEquals(before, Trees.times(shop.reports().resolve("summaries")));
  }

  @Test
  void aMonthThatLosesItsOnlyBodyLosesItsSummary() {
    shop.run(LATE);
    shop.replace("exports/a.csv", "2026-05-05T10", "2026-03-08T10");

    shop.run(LATE);

    assertEquals(List.of("2026-03.pdf"), summaries());
  }
}
