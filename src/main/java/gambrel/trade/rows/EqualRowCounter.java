package gambrel.trade.rows;

import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Place;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;

/**
 * Numbers the equal rows of layouts that give an identity. Equal rows in one file are different
 * weighings: the first is number 0, the next number 1. Each file begins at 0 again. Where files
 * overlap, rows with one number are therefore the same weighing, and the file with the most equal
 * rows decides how many weighings there were.
 *
 * @param rows the rows; each whose layout gives it an identity has its number in its key
 * @param notices one for each file with equal rows that are no voids
 */
record EqualRowCounter(List<KeyedRow> rows, List<Notice> notices) {

  /**
   * Numbers rows.
   *
   * @param rows in file and line order
   */
  static EqualRowCounter of(List<KeyedRow> rows) {
    var next = new HashMap<List<Object>, Integer>();
    var numbered = new ArrayList<KeyedRow>();
    var second = new LinkedHashMap<String, Place>();
    var equal = new HashMap<String, Integer>();
    for (var row : rows) {
      if (!row.key().isIdentity()) {
        numbered.add(row);
        continue;
      }
      String file = row.place().file();
      int number = next.merge(List.of(file, row.key(), row.compared()), 1, Integer::sum) - 1;
      numbered.add(row.under(row.key().numbered(number)));
      if (number > 0 && !row.status().isVoid()) {
        second.putIfAbsent(file, row.place());
        equal.merge(file, 1, Integer::sum);
      }
    }
    return new EqualRowCounter(
        numbered,
        second.entrySet().stream()
            .map(
                e ->
                    Notice.of(NoticeCode.ROWS_EQUAL, e.getValue())
                        .with("count", equal.get(e.getKey())))
            .toList());
  }
}
