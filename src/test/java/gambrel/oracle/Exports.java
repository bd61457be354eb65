package gambrel.oracle;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Properties;

/** The export rows in path order, then line, with the corrections of a moment laid over them. */
final class Exports {
  final List<String> files = new ArrayList<>();
  final List<Row> rows = new ArrayList<>();

  /** Whether a file ends in the middle. */
  boolean unfinished;

  private final Setup setup;
  private final Instant asOf;
  private final Corrections corrections;

  Exports(Setup setup, Instant asOf) {
    this.setup = setup;
    this.asOf = asOf;
    corrections = new Corrections(setup, asOf);
    for (var file : paths()) {
      files.add(file);
      var identity = identity(file);
      boolean cut = isUnfinished(file);
      unfinished |= cut;
      for (var line : Csv.read(setup.folder.resolve(file))) {
        rows.add(row(file, line));
        rows.get(rows.size() - 1).unfinished = cut;
        rows.get(rows.size() - 1).identity = identity;
      }
      timesAround(rows.stream().filter(row -> row.file.equals(file)).toList());
    }
  }

  private static void timesAround(List<Row> rows) {
    for (int i = 0; i < rows.size(); i++) {
      if (rows.get(i).time == null) {
        var around = rows.get(i).around;
        rows.subList(0, i).stream()
            .filter(row -> row.time != null)
            .reduce((one, later) -> later)
            .ifPresent(row -> around.add(row.time));
        rows.subList(i, rows.size()).stream()
            .filter(row -> row.time != null)
            .findFirst()
            .ifPresent(row -> around.add(row.time));
      }
    }
  }

  /** Whether the last line has no end, and lacks cells or the last digits of its last number. */
  private boolean isUnfinished(String file) {
    var path = setup.folder.resolve(file);
    var table = Csv.raw(path);
    if (table.size() < 2 || endsALine(path)) {
      return false;
    }
    var last = table.get(table.size() - 1).cells();
    int at = last.size() - 1;
    while (at >= 0 && last.get(at).isBlank()) {
      at--;
    }
    int column = at;
    return last.size() < table.get(0).cells().size()
        || at >= 0
            && Num.isNumber(last.get(at))
            && table.size() > 2
            && table.subList(1, table.size() - 1).stream()
                .allMatch(r -> decimals(r.cells(), column) > decimals(last, column));
  }

  private static int decimals(List<String> cells, int column) {
    var cell = column < cells.size() ? cells.get(column).trim() : "";
    return Num.isNumber(cell) && cell.contains(".") ? cell.length() - cell.indexOf('.') - 1 : 0;
  }

  private static boolean endsALine(Path path) {
    try {
      return Files.readString(path).endsWith("\n");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The identity that the layout in the first folder under exports gives; empty without one. */
  private List<String> identity(String file) {
    var parts = file.split("/");
    var layout = setup.folder.resolve(parts[0]).resolve(parts[1]).resolve("layout.properties");
    if (parts.length < 3 || !Files.exists(layout)) {
      return List.of();
    }
    var keys = new Properties();
    try (var reader = Files.newBufferedReader(layout)) {
      keys.load(reader);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    var fields = keys.getProperty("identity", "").trim();
    return fields.isEmpty() ? List.of() : List.of(fields.split("\\s*,\\s*"));
  }

  private List<String> paths() {
    var exports = setup.folder.resolve("exports");
    if (!Files.isDirectory(exports)) {
      return List.of();
    }
    try (var walk = Files.walk(exports)) {
      return walk.filter(Files::isRegularFile)
          .map(this::relative)
          .filter(path -> path.endsWith(".csv"))
          .sorted(Split.byBytes())
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private String relative(Path path) {
    return setup.folder.relativize(path).toString().replace('\\', '/');
  }

  private Row row(String file, Csv.Line line) {
    var cells = new LinkedHashMap<>(line.cells());
    var before = timeOf(line.get("time"));
    var date = before == null ? null : setup.localDate(before);
    boolean struck = corrections.apply(file, line.number(), date, cells);
    var row = new Row(file, line.number(), rows.size(), cells);
    row.struck = struck;
    row.time = timeOf(row.cell("time"));
    if (row.time != null) {
      row.date = setup.localDate(row.time);
      row.later = row.time.isAfter(asOf);
    }
    return row;
  }

  private Instant timeOf(String text) {
    try {
      return setup.time(text);
    } catch (DateTimeException e) {
      return null;
    }
  }
}
