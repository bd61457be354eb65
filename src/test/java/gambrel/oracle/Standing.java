package gambrel.oracle;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Which rail weighings of a body stand; one beyond a part's number is set aside. */
final class Standing {
  private final Tree tree;
  private final int head;
  private final List<Row> standing = new ArrayList<>();

  /** {@code rows}: the used weighings of one body, marked here where they go beyond. */
  Standing(Tree tree, int head, List<Row> rows) {
    this.tree = tree;
    this.head = head;
    var fitting = new ArrayList<Row>();
    Map<String, Integer> taken = new HashMap<>();
    for (var row : rows.stream().filter(Row::isRail).sorted(Row.BY_TIME).toList()) {
      var key = row.step + "|" + row.item + (row.is("aged") ? "|" + row.date : "");
      int sum = taken.getOrDefault(key, 0) + number(row);
      if (sum > most(row)) {
        row.mark = Row.Mark.SET_ASIDE;
      } else {
        taken.put(key, sum);
        fitting.add(row);
      }
    }
    keepLatestAged(fitting);
  }

  private void keepLatestAged(List<Row> fitting) {
    Map<String, LocalDate> latest = new HashMap<>();
    for (var row : fitting) {
      if (row.is("aged")) {
        latest.put(row.item, row.date);
      }
    }
    for (var row : fitting) {
      if (!row.is("aged") || row.date.equals(latest.get(row.item))) {
        standing.add(row);
      }
    }
  }

  int head() {
    return head;
  }

  private int most(Row row) {
    return tree.count(row.item) * head;
  }

  /** How many of the part a weighing is of. */
  int number(Row row) {
    return row.pieces == null ? 1 : Math.max(1, Math.min(row.pieces, most(row)));
  }

  /** In order of time. */
  List<Row> rows() {
    return standing;
  }

  List<Row> rows(String step) {
    return standing.stream().filter(row -> row.is(step)).toList();
  }
}
