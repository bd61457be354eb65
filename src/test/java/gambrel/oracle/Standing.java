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

  /** Beyond what the body has of a part. */
  final List<Row> beyond = new ArrayList<>();

  /** Aged weighings of parts that were weighed again on a later day. */
  final List<Row> replaced = new ArrayList<>();

  /** {@code rows}: the used weighings of one body, marked here where they go beyond. */
  Standing(Tree tree, int head, List<Row> rows) {
    this.tree = tree;
    this.head = head;
    Map<String, Integer> taken = new HashMap<>();
    var rail = rows.stream().filter(Row::isRail).sorted(Row.BY_TIME).toList();
    Map<String, LocalDate> latest = new HashMap<>();
    rail.stream().filter(r -> r.is("aged")).forEach(r -> latest.put(r.item, r.date));
    for (var row : rail) {
      if (row.is("aged") && !row.date.equals(latest.get(row.item))) {
        replaced.add(row);
        continue;
      }
      var key = row.step + "|" + row.item;
      int sum = taken.getOrDefault(key, 0) + number(row);
      if (sum > most(row)) {
        row.mark = Row.Mark.SET_ASIDE;
        beyond.add(row);
      } else {
        taken.put(key, sum);
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
