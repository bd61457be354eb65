package gambrel.laws;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;

/**
 * A table with a header line, by column.
 *
 * @param columns the header
 * @param rows each row's cells by column
 */
record CsvFile(List<String> columns, List<Map<String, String>> rows) {
  CsvFile {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }

  /** Reads a file; one that is missing has no columns. */
  static CsvFile read(Path file) {
    try {
      return Files.exists(file) ? of(Files.readString(file)) : new CsvFile(List.of(), List.of());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static CsvFile of(String text) throws IOException {
    var plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
    boolean semicolons = plain.lines().findFirst().orElse("").contains(";");
    var format = CSVFormat.RFC4180.builder().setDelimiter(semicolons ? ';' : ',').get();
    try (var parser = CSVParser.parse(plain, format)) {
      var records = parser.getRecords();
      if (records.isEmpty()) {
        return new CsvFile(List.of(), List.of());
      }
      var columns = records.get(0).toList();
      var rows = new ArrayList<Map<String, String>>();
      for (var cells : records.subList(1, records.size())) {
        var row = new HashMap<String, String>();
        for (int i = 0; i < columns.size() && i < cells.size(); i++) {
          row.put(columns.get(i), cells.get(i));
        }
        rows.add(row);
      }
      return new CsvFile(columns, rows);
    }
  }

  /** The rows that fit. */
  CsvFile where(Predicate<Map<String, String>> fits) {
    return new CsvFile(columns, rows.stream().filter(fits).toList());
  }

  /** The same rows, each changed. */
  CsvFile each(UnaryOperator<Map<String, String>> change) {
    return new CsvFile(
        columns, rows.stream().map(row -> change.apply(new HashMap<>(row))).toList());
  }

  /** These rows in place of its own. */
  CsvFile with(List<Map<String, String>> others) {
    return new CsvFile(columns, others);
  }

  /** As text; a row without any cell is a blank line. */
  String text() {
    var text = new StringBuilder();
    var format = CSVFormat.RFC4180.builder().setRecordSeparator('\n').get();
    try {
      format.printRecord(text, columns.toArray());
      for (var row : rows) {
        if (row.isEmpty()) {
          text.append('\n');
        } else {
          format.printRecord(text, columns.stream().map(c -> row.getOrDefault(c, "")).toArray());
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }
}
