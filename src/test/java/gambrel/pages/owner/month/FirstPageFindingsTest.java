package gambrel.pages.owner.month;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.pages.views.FirstPage;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class FirstPageFindingsTest {
  private static int shown(int rows, int letters, int room) {
    var row = new FirstPage.Row("x".repeat(letters), "", "", List.of());
    return FirstPart.fitting(Collections.nCopies(rows, row), room).size();
  }

  @Test
  void areFiveAtMost() {
    assertEquals(0, shown(0, 50, 20));
    assertEquals(4, shown(4, 50, 20));
    assertEquals(5, shown(11, 50, 20));
  }

  /** Six lines of 54 letters each: three are 18 of 20 lines, two 12 of 15. */
  @Test
  void areFewerWhereTheyAreLong() {
    assertEquals(3, shown(11, 6 * 54 - 1, 20));
    assertEquals(2, shown(11, 6 * 54 - 1, 15));
  }

  @Test
  void areOneAtLeast() {
    assertEquals(1, shown(3, 5_000, 20));
  }
}
