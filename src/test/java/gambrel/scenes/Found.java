package gambrel.scenes;

import gambrel.files.publish.Csv;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What a night left in its output folder, read as another program would read it. */
public final class Found {
  private final Path root;
  private final int exit;

  /** An output folder, and the exit code of the night that left it. */
  public Found(Path root, int exit) {
    this.root = root;
    this.exit = exit;
  }

  /** The exit code. */
  public int exit() {
    return exit;
  }

  /** A cell of {@code bodies.csv}. */
  public String body(String body, String column) {
    return cell("bodies", column, "body=" + body);
  }

  /** State and reasons of a body, like {@code held loss-high;shares}. */
  public String state(String body) {
    return (body(body, "state") + ' ' + body(body, "reasons")).strip();
  }

  /** A cell of {@code statements.csv}, of the last revision. */
  public String statement(String customer, String body, String column) {
    var rows = rows("statements", "customer=" + customer, "body=" + body);
    return rows.isEmpty() ? "none" : rows.get(rows.size() - 1).get(column);
  }

  /** A figure that the statement's attachment carries, like {@code item:rump}. */
  public String figure(String customer, String body, String name) {
    String file = statement(customer, body, "file");
    return text(file)
        .lines()
        .filter(line -> line.startsWith(name + ','))
        .map(line -> line.substring(name.length() + 1))
        .findFirst()
        .orElse("none");
  }

  /** What became of the rows of an export: read = used + repeat + void + set aside. */
  public String counts(String export) {
    var row = rows("rows", "file=" + export).get(0);
    return String.join(
        " ",
        row.get("read"),
        "=",
        row.get("used"),
        "+",
        row.get("repeat"),
        "+",
        row.get("void"),
        "+",
        row.get("set_aside"));
  }

  /** The same of {@code exports/a.csv}. */
  public String counts() {
    return counts("exports/a.csv");
  }

  /** The notices as {@code severity code}, those about a first night left out. */
  public List<String> notices() {
    return rows("notices").stream()
        .map(row -> row.get("severity") + ' ' + row.get("code"))
        .filter(notice -> !notice.equals("note register-new"))
        .toList();
  }

  /** A cell of the one notice with this code. */
  public String notice(String code, String column) {
    return cell("notices", column, "code=" + code);
  }

  /** The one cell of a data file in the row whose cells are as {@code column=value} says. */
  public String cell(String table, String column, String... where) {
    var rows = rows(table, where);
    if (rows.size() != 1) {
      throw new AssertionError(
          rows.size() + " rows of " + table + " where " + List.of(where) + ": " + rows(table));
    }
    if (!rows.get(0).containsKey(column)) {
      throw new AssertionError(table + " has no column " + column);
    }
    return rows.get(0).get(column);
  }

  /** The rows of a data file whose cells are as {@code column=value} says. */
  public List<Map<String, String>> rows(String table, String... where) {
    return table(table).stream()
        .filter(row -> List.of(where).stream().allMatch(condition -> fits(row, condition)))
        .toList();
  }

  private static boolean fits(Map<String, String> row, String condition) {
    int sign = condition.indexOf('=');
    return condition.substring(sign + 1).equals(row.get(condition.substring(0, sign)));
  }

  private List<Map<String, String>> table(String table) {
    var records = Csv.records(text("data/" + table + ".csv").getBytes(StandardCharsets.UTF_8));
    var header = records.get(0);
    return records.stream().skip(1).map(record -> row(header, record)).toList();
  }

  private static Map<String, String> row(List<String> header, List<String> record) {
    var row = new LinkedHashMap<String, String>();
    for (int i = 0; i < header.size(); i++) {
      row.put(header.get(i), record.get(i));
    }
    return row;
  }

  /** The documents, sorted: all but the data files. */
  public List<String> documents() {
    try (var files = Files.walk(root)) {
      return files
          .filter(Files::isRegularFile)
          .map(file -> root.relativize(file).toString().replace('\\', '/'))
          .filter(file -> !file.startsWith("data/") && !file.startsWith("."))
          .sorted()
          .collect(Collectors.toList());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The text of a file of the output folder. */
  public String text(String path) {
    try {
      return Files.readString(root.resolve(path));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
