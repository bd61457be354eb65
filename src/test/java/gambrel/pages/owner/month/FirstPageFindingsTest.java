package gambrel.pages.owner.month;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.pages.views.FirstPage;
import gambrel.trade.shop.Settings.Paper;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class FirstPageFindingsTest {
  private static int shown(int rows, int letters, Paper paper) {
    var row = new FirstPage.Row("x".repeat(letters), "", "", List.of());
    return FirstPart.fitting(Collections.nCopies(rows, row), paper).size();
  }

  @Test
  void areTenAtMost() {
    assertEquals(0, shown(0, 50, Paper.A4));
    assertEquals(9, shown(9, 50, Paper.A4));
    assertEquals(10, shown(11, 50, Paper.A4));
  }

  /** Six lines of 54 letters each: seven are 42 of 44 lines, six 36 of the shorter sheet's 39. */
  @Test
  void areFewerWhereTheyAreLong() {
    assertEquals(7, shown(11, 6 * 54 - 1, Paper.A4));
    assertEquals(6, shown(11, 6 * 54 - 1, Paper.LETTER));
  }

  @Test
  void areOneAtLeast() {
    assertEquals(1, shown(3, 5_000, Paper.LETTER));
  }
}
