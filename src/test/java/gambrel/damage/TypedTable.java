package gambrel.damage;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;

/**
 * A file of a shop folder as somebody types it. The settings of {@code shop.properties} are rows of
 * two cells, key and value, without a header line. The replacement character stands for a letter
 * that is written in Windows-1252 and cannot be decoded as UTF-8.
 *
 * @param file path inside the shop folder
 * @param delimiter what parts the cells
 * @param header names of the columns; none in a file of settings
 * @param rows cells of each row
 */
record TypedTable(String file, char delimiter, List<String> header, List<List<String>> rows) {
  /** What stands for a letter that cannot be decoded. */
  static final char UNDECODABLE = '\uFFFD';

  private static final int E_ACUTE_IN_WINDOWS_1252 = 0xE9;

  TypedTable {
    header = List.copyOf(header);
    rows = rows.stream().map(List::copyOf).toList();
  }

  /** Reads a file with commas, or one of settings. */
  static TypedTable read(String file, String text) {
    if (file.endsWith(".properties")) {
      var settings = text.lines().map(line -> List.of(line.split("=", 2))).toList();
      return new TypedTable(file, '=', List.of(), settings);
    }
    try (var parser = CSVParser.parse(text, CSVFormat.RFC4180)) {
      var records = parser.getRecords().stream().map(cells -> cells.toList()).toList();
      return new TypedTable(file, ',', records.get(0), records.subList(1, records.size()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Whether it holds settings. */
  boolean settings() {
    return header.isEmpty();
  }

  /** The line of a row, from 1. */
  int line(int row) {
    return row + (settings() ? 1 : 2);
  }

  /** A cell; blank where the row is too short. */
  String cell(int row, int column) {
    return column < rows.get(row).size() ? rows.get(row).get(column) : "";
  }

  TypedTable withHeader(List<String> names) {
    return new TypedTable(file, delimiter, names, rows);
  }

  TypedTable withDelimiter(char other) {
    return new TypedTable(file, other, header, rows);
  }

  TypedTable withRows(List<List<String>> others) {
    return new TypedTable(file, delimiter, header, others);
  }

  TypedTable withRow(int row, List<String> cells) {
    var changed = new ArrayList<>(rows);
    changed.set(row, cells);
    return withRows(changed);
  }

  TypedTable withCell(int row, int column, String cell) {
    var cells = new ArrayList<>(rows.get(row));
    while (cells.size() <= column) {
      cells.add("");
    }
    cells.set(column, cell);
    return withRow(row, cells);
  }

  /** The file's bytes. */
  byte[] bytes() {
    var text = new StringBuilder();
    if (!settings()) {
      append(text, header);
    }
    rows.forEach(row -> append(text, row));
    var bytes = new ByteArrayOutputStream();
    text.chars()
        .forEach(
            c -> {
              if (c == UNDECODABLE) {
                bytes.write(E_ACUTE_IN_WINDOWS_1252);
              } else {
                bytes.writeBytes(Character.toString(c).getBytes(StandardCharsets.UTF_8));
              }
            });
    return bytes.toByteArray();
  }

  private void append(StringBuilder text, List<String> cells) {
    text.append(String.join(String.valueOf(delimiter), cells.stream().map(this::quoted).toList()));
    text.append('\n');
  }

  private String quoted(String cell) {
    boolean plain = settings() || cell.indexOf(delimiter) < 0 && cell.indexOf('"') < 0;
    return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
  }
}
