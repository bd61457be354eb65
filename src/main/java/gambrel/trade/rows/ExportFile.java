package gambrel.trade.rows;

import java.util.List;

/**
 * One export file.
 *
 * @param path relative to the shop folder, with {@code /}
 * @param rows in file order; skipped, ignored and blank lines are not rows
 */
public record ExportFile(String path, List<ExportRow> rows) {
  /** Copies the rows. */
  public ExportFile {
    rows = List.copyOf(rows);
  }
}
