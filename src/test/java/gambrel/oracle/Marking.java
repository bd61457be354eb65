package gambrel.oracle;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
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
      if (row.unfinished) {
        row.mark = Row.Mark.SET_ASIDE;
      } else if (row.struck) {
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
    Map<String, List<Row>> same = new LinkedHashMap<>();
    voids.forEach(row -> add(same, key(row) + "|void|" + row.status(), row));
    weighings.forEach(row -> add(same, key(row) + "|" + content(row), row));
    same.values().forEach(rows -> markRepeats(rows, !rows.get(0).identity.isEmpty()));
  }

  private static void add(Map<String, List<Row>> groups, String key, Row row) {
    groups.computeIfAbsent(key, k -> new ArrayList<>()).add(row);
  }

  /**
   * Equal rows in order of files and lines.
   *
   * @param counted whether those of one file count as often as they stand
   */
  private static void markRepeats(List<Row> rows, boolean counted) {
    int taken = 0;
    Map<String, Integer> inFile = new HashMap<>();
    for (var row : rows) {
      int number = counted ? inFile.merge(row.file, 1, Integer::sum) : 1;
      if (number <= taken) {
        row.mark = Row.Mark.REPEAT;
      } else {
        taken++;
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
            .limit(row.identity.isEmpty() ? weighings.size() : 1)
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
        add(byKey, key(row), row);
      }
    }
    for (var same : byKey.values()) {
      if (same.stream().map(Marking::content).distinct().count() > 1) {
        same.forEach(row -> row.mark = Row.Mark.SET_ASIDE);
      }
    }
  }

  static String key(Row row) {
    if (!row.identity.isEmpty()) {
      return row.cell("scale") + "||" + values(row, row.identity);
    }
    var day = row.date == null ? row.cell("time") : row.date.toString();
    return row.cell("ticket").isEmpty()
        ? row.cell("scale") + "||" + content(row)
        : row.cell("scale") + "|" + row.cell("ticket") + "|" + day;
  }

  static String content(Row row) {
    return values(row, CONTENT);
  }

  private static String values(Row row, List<String> columns) {
    var text = new StringBuilder();
    for (var column : columns) {
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
