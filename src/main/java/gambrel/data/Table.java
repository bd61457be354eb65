package gambrel.data;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A data file: a header and rows of the same width.
 *
 * @param name its file name
 * @param header column names
 * @param rows cells as they are printed
 */
public record Table(String name, List<String> header, List<List<String>> rows) {
  /** Copies header and rows and checks their widths. */
  public Table {
    header = List.copyOf(header);
    rows = Collections.unmodifiableList(new ArrayList<>(rows));
    for (var row : rows) {
      if (row.size() != header.size()) {
        throw new IllegalArgumentException(
            name + ": " + row.size() + " cells under " + header.size() + " columns: " + row);
      }
    }
  }

  /** Column names from a comma-separated list; {@code _kg} becomes the shop's unit. */
  static List<String> columns(String names, String unit) {
    return List.of(names.replace("_kg", "_" + unit).split(","));
  }
}
