package gambrel.trade.rows;

import java.util.List;

/**
 * One export file.
 *
 * @param path relative to the shop folder, with {@code /}
 * @param rows in file order; skipped, ignored and blank lines are not rows
 * @param leftOut the number of rows of a file of which nothing is used; {@code rows} is then empty
 * @param voidsOwn whether the shop says that a void row always cancels its own ticket
 */
public record ExportFile(String path, List<ExportRow> rows, int leftOut, boolean voidsOwn) {
  /** Copies the rows. */
  public ExportFile {
    rows = List.copyOf(rows);
  }

  /** A file whose rows are used. */
  public ExportFile(String path, List<ExportRow> rows) {
    this(path, rows, 0, false);
  }

  /** The same file with nothing of it used. */
  public ExportFile withoutRows() {
    return new ExportFile(path, List.of(), rows.size() + leftOut, voidsOwn);
  }
}
