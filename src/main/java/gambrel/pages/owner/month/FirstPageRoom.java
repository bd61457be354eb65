package gambrel.pages.owner.month;

import gambrel.pages.views.FirstPage;
import gambrel.trade.shop.Settings.Paper;
import java.util.List;
import java.util.Map;

/**
 * Decides how many findings the first page takes so that the five figures still fit on it: ten at
 * most, fewer if they need more lines. Lines are estimated from the number of letters, by the
 * letters that fill a line in the longest language.
 */
final class FirstPageRoom {
  private static final int MOST = 10;
  private static final Map<Paper, Integer> LINES = Map.of(Paper.A4, 44, Paper.LETTER, 39);
  private static final int SEEN_A_LINE = 54;
  private static final int NEXT_A_LINE = 36;

  private FirstPageRoom() {}

  /** The first of {@code rows} that have room; one at least. */
  static List<FirstPage.Row> fitting(List<FirstPage.Row> rows, Paper paper) {
    int lines = 0;
    int number = 0;
    for (var row : rows) {
      lines += lines(row);
      if (number == MOST || number > 0 && lines > LINES.get(paper)) {
        break;
      }
      number++;
    }
    return rows.subList(0, number);
  }

  private static int lines(FirstPage.Row row) {
    int seen = lines(row.seen().length() + 1 + row.sure().length(), SEEN_A_LINE);
    return Math.max(Math.max(seen, row.worth().size()), lines(row.next().length(), NEXT_A_LINE));
  }

  private static int lines(int letters, int aLine) {
    return (letters + aLine - 1) / aLine;
  }
}
