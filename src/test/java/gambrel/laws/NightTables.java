package gambrel.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;

/** The data files of a night. */
record NightTables(Path data) {
  /** Those that tell figures; the others tell of rows. */
  static final List<String> FIGURES =
      List.of(
          "bodies.csv", "cuts.csv", "pieces.csv", "batches.csv", "shrink.csv", "statements.csv");

  CsvFile table(String name) {
    return CsvFile.read(data.resolve(name));
  }

  List<Map<String, String>> rows(String name) {
    return table(name).rows();
  }

  /** A number; a blank is nothing. */
  static BigDecimal number(Map<String, String> row, String column) {
    var text = row.get(column);
    return text.isEmpty() ? BigDecimal.ZERO : new BigDecimal(text);
  }

  /** A weight, whatever the shop's unit. */
  static BigDecimal weight(Map<String, String> row, String name) {
    return number(row, row.containsKey(name + "_kg") ? name + "_kg" : name + "_lb");
  }

  /** Every figure as text. */
  List<String> figures() {
    var all = new ArrayList<String>();
    for (var name : FIGURES) {
      all.add(name);
      all.addAll(table(name).text().lines().toList());
    }
    return all;
  }

  /** Asserts that all figures are those of another night, and tells those that are not. */
  void assertSameFigures(NightTables other, String why) {
    var mine = figures();
    var theirs = other.figures();
    var only = new ArrayList<>(mine);
    only.removeAll(new HashSet<>(theirs));
    var missing = new ArrayList<>(theirs);
    missing.removeAll(new HashSet<>(mine));
    assertEquals(String.join("\n", missing), String.join("\n", only), why);
    assertEquals(theirs, mine, why);
  }
}
