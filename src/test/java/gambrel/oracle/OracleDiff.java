package gambrel.oracle;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Compares the program's files with the calculation's tables, cell by cell. */
public final class OracleDiff {
  private static final Map<String, List<String>> KEYS =
      Map.of(
          "bodies.csv", List.of("body"),
          "cuts.csv", List.of("body", "item", "step", "level"),
          "pieces.csv", List.of("body", "item"),
          "batches.csv", List.of("batch"),
          "shrink.csv", List.of("body"),
          "rows.csv", List.of("file"),
          "statements.csv", List.of("customer", "body", "revision"));

  private final List<String> found = new ArrayList<>();

  private OracleDiff() {}

  /**
   * Every difference as {@code file [row key] column: expected X, was Y}; empty where all agree.
   * Columns that the calculation does not have are not compared, nor is the order of the register;
   * a {@code signal} is missed only where a point lies beyond its limits and none is there.
   *
   * @param data the program's {@code data} folder
   */
  public static List<String> compare(OracleTables expected, Path data) {
    var diff = new OracleDiff();
    expected
        .tables()
        .forEach(
            (file, table) -> {
              var actual = Csv.raw(data.resolve(file)).stream().map(Csv.Raw::cells).toList();
              diff.compare(file, table, actual);
            });
    return diff.found;
  }

  private void compare(String file, List<List<String>> expected, List<List<String>> actual) {
    if (actual.isEmpty()) {
      found.add(file + ": missing or empty");
      return;
    }
    boolean whole = !file.equals("statements.csv");
    if (whole && !expected.get(0).equals(actual.get(0))) {
      found.add(file + " header: expected " + expected.get(0) + ", was " + actual.get(0));
    }
    var wanted = byKey(file, expected);
    var present = byKey(file, actual);
    for (var key : wanted.keySet()) {
      if (present.containsKey(key)) {
        compareRow(file, key, wanted.get(key), present.get(key));
      } else {
        found.add(file + " " + key + ": row missing");
      }
    }
    present.keySet().stream()
        .filter(key -> !wanted.containsKey(key))
        .forEach(key -> found.add(file + " " + key + ": row not expected"));
    boolean sameRows = wanted.keySet().equals(present.keySet());
    if (whole && sameRows && !List.copyOf(wanted.keySet()).equals(List.copyOf(present.keySet()))) {
      found.add(file + ": rows in another order");
    }
    if (present.size() != actual.size() - 1) {
      found.add(file + ": two rows of one key");
    }
  }

  private void compareRow(
      String file, List<String> key, Map<String, String> wanted, Map<String, String> present) {
    for (var column : wanted.keySet()) {
      var expected = wanted.get(column);
      var actual = present.get(column);
      boolean same =
          column.equals("signal")
              ? expected.isEmpty() || actual != null && !actual.isEmpty()
              : expected.equals(actual);
      if (!same) {
        found.add(file + " " + key + " " + column + ": expected " + expected + ", was " + actual);
      }
    }
  }

  private static Map<List<String>, Map<String, String>> byKey(
      String file, List<List<String>> table) {
    Map<List<String>, Map<String, String>> rows = new LinkedHashMap<>();
    for (var cells : table.subList(1, table.size())) {
      var row = new LinkedHashMap<String, String>();
      for (int i = 0; i < table.get(0).size() && i < cells.size(); i++) {
        row.put(table.get(0).get(i), cells.get(i));
      }
      rows.put(KEYS.get(file).stream().map(c -> row.getOrDefault(c, "")).toList(), row);
    }
    return rows;
  }
}
