package gambrel.pages.owner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.pages.views.SummaryView;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LongListsTest {
  private static final String BODIES = "Every body of the month";

  @TempDir private Path folder;
  private SmallShop shop;

  @BeforeEach
  void startAShop() {
    shop = new SmallShop(folder);
  }

  @Test
  void everyBodyHasALine() {
    sound(61);
    assertEquals(61, SmallShop.rows(july(), "bodies").size());
    assertEquals(1, SmallShop.remarks(july(), BODIES).size(), "how to read it alone");
  }

  /** One in July beside seven in June; the years before have none. */
  @Test
  void bodiesKilledStandBesideThoseOfLastMonth() {
    for (int i = 0; i < 7; i++) {
      String day = "2026-06-08";
      shop.beef("A" + i, day, "c-ann").row("rail", day + "T08:00", "A" + i, "hot", "300");
    }
    sound(1);
    var five = july().first().five().get(0);
    assertEquals(List.of("July 2026", "June 2026", "Thirteen months"), five.heads());
    var killed = five.rows().get(0);
    assertEquals(List.of("1", "7"), killed.cells().stream().map(cell -> cell.text()).toList());
    assertEquals(2, killed.spark().dots().size());
    assertTrue(killed.spark().dots().get(1).now());
  }

  @Test
  void theSameMonthLastYearHasAColumnIfItHadABody() {
    shop.beef("A1", "2025-07-08", "c-ann").hung("A1", "2025-07-08", "300", "294");
    sound(1);
    var five = july().first().five().get(0);
    assertEquals("July 2025", five.heads().get(2));
    var chill = five.rows().get(1);
    assertEquals(List.of("2.0%", "", "2.0%"), chill.cells().stream().map(c -> c.text()).toList());
    assertEquals(List.of(), chill.spark().lines(), "no two months in a row");
  }

  private void sound(int number) {
    for (int i = 0; i < number; i++) {
      String body = String.format(Locale.ROOT, "S%02d", i);
      shop.beef(body, "2026-07-06", "").hung(body, "2026-07-06", "306", "300");
      shop.cut(body, "2026-07-13", "200", "98");
    }
  }

  private SummaryView july() {
    return shop.summary("2026-07", "2026-09-15T02:00:00Z");
  }
}
