package gambrel.oracle;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;

/** Plain CSV with a header line. */
final class Csv {
  private Csv() {}

  /** One record: the line it starts on and its cells by header, absent ones blank. */
  record Line(int number, Map<String, String> cells, boolean tooMany) {
    String get(String column) {
      return cells.getOrDefault(column, "");
    }
  }

  /** The records under the header; none where the file is missing. */
  static List<Line> read(Path file) {
    return read(file, header -> header);
  }

  /** The same with the header's names as they are meant; columns with a blank name are left. */
  static List<Line> read(Path file, UnaryOperator<List<String>> names) {
    var lines = new ArrayList<Line>();
    var table = raw(file);
    if (table.isEmpty()) {
      return lines;
    }
    var header = names.apply(table.get(0).cells().stream().map(String::trim).toList());
    for (var record : table.subList(1, table.size())) {
      var cells = new LinkedHashMap<String, String>();
      for (int i = 0; i < header.size() && i < record.cells().size(); i++) {
        cells.put(header.get(i), record.cells().get(i).trim());
      }
      boolean tooMany =
          record.cells().stream().skip(header.size()).anyMatch(cell -> !cell.isBlank());
      lines.add(new Line(record.number(), cells, tooMany));
    }
    return lines;
  }

  /** One record as it stands. */
  record Raw(int number, List<String> cells) {}

  /** Every record, the header too. */
  static List<Raw> raw(Path file) {
    if (!Files.exists(file)) {
      return List.of();
    }
    try {
      var text = Files.readString(file);
      if (text.startsWith("\uFEFF")) {
        text = text.substring(1);
      }
      char delimiter = text.lines().findFirst().orElse("").contains(";") ? ';' : ',';
      return parse(text, CSVFormat.RFC4180.builder().setDelimiter(delimiter).get());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Raw> parse(String text, CSVFormat format) throws IOException {
    var records = new ArrayList<Raw>();
    try (var parser = CSVParser.parse(text, format)) {
      var iterator = parser.iterator();
      // Asking for the next record reads it, so the line is taken before.
      for (int before = 0; iterator.hasNext(); before = (int) parser.getCurrentLineNumber()) {
        var record = iterator.next();
        if (record.size() > 1 || !record.get(0).isBlank()) {
          records.add(new Raw(before + 1, record.toList()));
        }
      }
    }
    return records;
  }
}
