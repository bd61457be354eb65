package gambrel.oracle;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Repeats, voids and conflicts: what can be told of a row from other rows alone. */
final class Marking {
  private static final Set<String> NUMBERS = Set.of("net", "gross", "tare", "pieces");
  private static final List<String> CONTENT =
      List.of(
          "time", "body", "code", "net", "gross", "tare", "unit", "pieces", "batch", "customer");

  private final List<Row> weighings = new ArrayList<>();
  private final List<Row> voids = new ArrayList<>();

  Marking(List<Row> rows) {
    for (var row : rows) {
      if (row.struck) {
        row.mark = Row.Mark.VOID;
      } else if (row.isVoidRow()) {
        voids.add(row);
      } else {
        weighings.add(row);
      }
    }
    markRepeats();
    markVoids();
    markConflicts();
  }

  private void markRepeats() {
    var seen = new HashSet<String>();
    for (var row : voids) {
      if (!seen.add(key(row) + "|" + row.status())) {
        row.mark = Row.Mark.REPEAT;
      }
    }
    seen.clear();
    for (var row : weighings) {
      if (!seen.add(key(row) + "|" + content(row))) {
        row.mark = Row.Mark.REPEAT;
      }
    }
  }

  private void markVoids() {
    var live = voids.stream().filter(r -> r.mark == Row.Mark.USED && !r.later).toList();
    for (var row : live) {
      row.mark = Row.Mark.VOID;
      if (row.status().equals("void")) {
        weighings.stream()
            .filter(w -> w.counts() && key(w).equals(key(row)))
            .forEach(w -> w.mark = Row.Mark.VOID);
      }
    }
    live.stream()
        .filter(r -> r.status().startsWith("void:") && r.time != null)
        .sorted(Row.BY_TIME)
        .forEach(this::cancelNearest);
  }

  private void cancelNearest(Row voiding) {
    var ticket = voiding.status().substring("void:".length()).trim();
    Row best = null;
    for (var row : weighings) {
      boolean candidate =
          row.mark == Row.Mark.USED
              && row.time != null
              && !row.time.isAfter(voiding.time)
              && row.cell("scale").equals(voiding.cell("scale"))
              && row.cell("ticket").equals(ticket);
      if (candidate && (best == null || nearer(row, best, voiding))) {
        best = row;
      }
    }
    if (best != null) {
      best.mark = Row.Mark.VOID;
    }
  }

  /** Later in time; at the same time, the last one above the void, else the first below it. */
  private static boolean nearer(Row row, Row best, Row voiding) {
    if (!row.time.equals(best.time)) {
      return row.time.isAfter(best.time);
    }
    boolean above = row.index < voiding.index;
    boolean bestAbove = best.index < voiding.index;
    return above != bestAbove ? above : above && row.index > best.index;
  }

  private void markConflicts() {
    Map<String, List<Row>> byKey = new HashMap<>();
    for (var row : weighings) {
      if (row.counts()) {
        byKey.computeIfAbsent(key(row), k -> new ArrayList<>()).add(row);
      }
    }
    for (var same : byKey.values()) {
      if (same.size() > 1) {
        same.forEach(row -> row.mark = Row.Mark.SET_ASIDE);
      }
    }
  }

  private static String key(Row row) {
    var day = row.date == null ? row.cell("time") : row.date.toString();
    return row.cell("ticket").isEmpty()
        ? row.cell("scale") + "||" + content(row)
        : row.cell("scale") + "|" + row.cell("ticket") + "|" + day;
  }

  private static String content(Row row) {
    var text = new StringBuilder();
    for (var column : CONTENT) {
      var cell = row.cell(column);
      if (NUMBERS.contains(column) && Num.isNumber(cell)) {
        cell = Num.of(cell).toString();
      } else if (column.equals("time") && row.time != null) {
        cell = row.time.toString();
      }
      text.append(cell).append('|');
    }
    return text.toString();
  }
}
