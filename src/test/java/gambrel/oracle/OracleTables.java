package gambrel.oracle;

import java.util.List;
import java.util.Map;

/**
 * The tables by file name ({@code bodies.csv} and so on), each a header row and its rows as they
 * should be printed. {@code statements.csv} and {@code shrink.csv} hold only what can be compared:
 * see {@link OracleDiff}.
 */
public record OracleTables(Map<String, List<List<String>>> tables) {

  /** One table, header first. */
  public List<List<String>> table(String file) {
    return tables.get(file);
  }

  /** A cell by the values of its row's first columns. */
  public String cell(String file, String column, String... key) {
    var rows = table(file);
    int at = rows.get(0).indexOf(column);
    return rows.stream()
        .skip(1)
        .filter(row -> row.subList(0, key.length).equals(List.of(key)))
        .findFirst()
        .map(row -> row.get(at))
        .orElseThrow(() -> new AssertionError("no row " + List.of(key) + " in " + file));
  }
}
