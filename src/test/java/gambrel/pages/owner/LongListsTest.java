package gambrel.pages.owner;

import static org.junit.jupiter.api.Assertions.assertEquals;

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
  void sixtyBodiesHaveALineEach() {
    sound(60);
    assertEquals(60, SmallShop.rows(july(), "bodies").size());
    assertEquals(1, SmallShop.remarks(july(), BODIES).size(), "how to read it alone");
  }

  /** Of 300 kg 20 are missing; the other 61 are cut without fault. */
  @Test
  void ofMoreThanSixtyOnlyThoseThatAreNotSettledHaveOne() {
    sound(61);
    shop.beef("X1", "2026-07-06", "c-ann").hung("X1", "2026-07-06", "306", "300");
    shop.cut("X1", "2026-07-13", "200", "80");
    var month = july();
    assertEquals(List.of("X1"), SmallShop.column(month, "bodies", 0));
    assertEquals(
        "61 bodies more are settled; they stand in data/bodies.csv.",
        SmallShop.remarks(month, BODIES).get(0));
  }

  /** 2 in May and 7 in June; the ten months before have none. */
  @Test
  void bodiesKilledStandBesideAMonthsAverageSinceTheFirstKill() {
    for (int i = 0; i < 9; i++) {
      String day = i < 2 ? "2026-05-04" : "2026-06-08";
      shop.beef("A" + i, day, "c-ann").row("rail", day + "T08:00", "A" + i, "hot", "300");
    }
    sound(1);
    var killed = july().first().five().get(0).rows().get(0).texts();
    assertEquals(List.of("1", ""), killed.subList(1, 3));
    assertEquals(List.of("5 a month", ""), killed.subList(5, 7), "9 in two months");
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
