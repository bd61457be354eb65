package gambrel.data;

import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * A data file: a header and rows of the same width. Rows are made when they are asked for, since the
 * longest table of ten years does not fit in memory.
 */
public final class Table {
  private final String name;
  private final List<String> header;
  private final Supplier<Stream<List<String>>> rows;

  /**
   * A table.
   *
   * @param name its file name
   * @param header column names
   * @param rows makes the same rows each time: cells as they are printed
   */
  public Table(String name, List<String> header, Supplier<Stream<List<String>>> rows) {
    this.name = name;
    this.header = List.copyOf(header);
    this.rows = rows;
  }

  /** A table whose rows are there already. */
  public Table(String name, List<String> header, List<List<String>> rows) {
    this(name, header, List.copyOf(rows)::stream);
  }

  /** Its file name. */
  public String name() {
    return name;
  }

  /** Column names. */
  public List<String> header() {
    return header;
  }

  /** The rows, each as wide as the header. */
  public Stream<List<String>> rows() {
    return rows.get().peek(this::check);
  }

  private void check(List<String> row) {
    if (row.size() != header.size()) {
      throw new IllegalStateException(
          name + ": " + row.size() + " cells under " + header.size() + " columns: " + row);
    }
  }

  /** Column names from a comma-separated list; {@code _kg} becomes the shop's unit. */
  static List<String> columns(String names, String unit) {
    return List.of(names.replace("_kg", "_" + unit).split(","));
  }
}
