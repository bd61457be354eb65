package gambrel.oracle;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Compares the program's files with the calculation's tables, cell by cell. */
public final class OracleDiff {
  private static final Map<String, List<String>> KEYS =
      Map.ofEntries(
          Map.entry("bodies.csv", List.of("body")),
          Map.entry("cuts.csv", List.of("body", "item", "step", "level")),
          Map.entry("pieces.csv", List.of("body", "item")),
          Map.entry("batches.csv", List.of("batch")),
          Map.entry("shrink.csv", List.of("body")),
          Map.entry("rows.csv", List.of("file")),
          Map.entry("statements.csv", List.of("customer", "body", "revision")),
          Map.entry("charges.csv", List.of("customer", "body", "charge", "description")),
          Map.entry("accounts.csv", List.of("customer")),
          Map.entry("rail.csv", List.of("body")),
          Map.entry("month-charts.csv", List.of("month", "chart", "body")),
          Map.entry("month-figures.csv", List.of("month", "figure", "whose", "species", "group")));

  /** Figures of a month that rest on values, boners, costs or a line through points. */
  private static final List<String> NOT_CALCULATED =
      List.of(
          "further_day_",
          "bone_to_others_points",
          "minutes_a_piece",
          "boned_an_hour",
          "worth_of_cold",
          "cut_worth_of_",
          "margin_of_cold",
          "bid_",
          "more_on_cut",
          "charged",
          "statements_",
          "owed");

  /** Groups of a month that rest on who boned a body and where it hung. */
  private static final List<String> NOT_GROUPED = List.of("boner ", "chiller ");

  /** Stands for a cell that is not calculated. */
  static final String ANY = "?";

  private final List<String> found = new ArrayList<>();
  private int cells;

  /**
   * What was compared.
   *
   * @param cells how many cells
   * @param differences every difference as {@code file [row key] column: expected X, was Y}
   */
  public record Compared(int cells, List<String> differences) {
    /** Both together. */
    public Compared plus(Compared other) {
      var all = new ArrayList<>(differences);
      all.addAll(other.differences);
      return new Compared(cells + other.cells, all);
    }
  }

  private OracleDiff() {}

  /**
   * Compares tables. Columns that the calculation does not have are not compared, nor is the order
   * of the register and of the months; a {@code signal} is missed only where a point lies beyond
   * its limits and none is there.
   *
   * @param data the program's {@code data} folder
   */
  public static Compared compare(OracleTables expected, Path data) {
    var diff = new OracleDiff();
    expected
        .tables()
        .forEach(
            (file, table) -> {
              var actual = Csv.raw(data.resolve(file)).stream().map(Csv.Raw::cells).toList();
              diff.compare(
                  file, table, actual.stream().filter(r -> isCalculated(file, r)).toList());
            });
    return new Compared(diff.cells, diff.found);
  }

  /** Compares all tables, those of the months too. */
  public static Compared compareAll(ExactNight expected, Path data) {
    var figures = Csv.read(data.resolve("month-figures.csv")).stream().map(Csv.Line::cells);
    return compare(expected.tables(), data)
        .plus(compare(expected.charts(), data))
        .plus(compare(expected.figures(MonthGroups.named(figures.toList())), data));
  }

  private static boolean isCalculated(String file, List<String> row) {
    return !file.equals("month-figures.csv")
        || NOT_CALCULATED.stream().noneMatch(row.get(1)::startsWith)
            && (row.get(1).contains("_loss") ? NOT_GROUPED : List.<String>of())
                .stream().noneMatch(row.get(4)::startsWith);
  }

  private void compare(String file, List<List<String>> expected, List<List<String>> actual) {
    if (actual.isEmpty()) {
      found.add(file + ": missing or empty");
      return;
    }
    boolean whole = !file.equals("statements.csv");
    boolean ordered = whole && !file.startsWith("month-");
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
    if (ordered
        && sameRows
        && !List.copyOf(wanted.keySet()).equals(List.copyOf(present.keySet()))) {
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
      if (expected.equals(ANY)) {
        continue;
      }
      cells++;
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
