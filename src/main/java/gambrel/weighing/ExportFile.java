package gambrel.weighing;

import java.util.List;
import java.util.function.Supplier;

/**
 * The rows of one export file. Ten years of a busy plant do not fit in memory as objects, so a file
 * either keeps its rows or makes them anew whenever it is asked, always the same.
 */
public final class ExportFile {
  private final String path;
  private final int count;
  private volatile Supplier<List<ExportRow>> rows;

  /**
   * A file that keeps its rows.
   *
   * @param path relative to the shop folder, with {@code /}
   * @param rows in file order; skipped, ignored and blank lines are not rows
   */
  public ExportFile(String path, List<ExportRow> rows) {
    this.path = path;
    this.count = rows.size();
    var kept = List.copyOf(rows);
    this.rows = () -> kept;
  }

  /**
   * A file whose rows are made anew each time, by several threads at once if it comes to that.
   *
   * @param path relative to the shop folder, with {@code /}
   * @param count how many rows there are
   * @param rows makes the same rows each time
   */
  public ExportFile(String path, int count, Supplier<List<ExportRow>> rows) {
    this.path = path;
    this.count = count;
    this.rows = rows;
  }

  /** Relative to the shop folder, with {@code /}. */
  public String path() {
    return path;
  }

  /** How many rows there are. */
  public int count() {
    return count;
  }

  /**
   * The rows in file order; ask once and go through them.
   *
   * @throws IllegalStateException if they were given up
   */
  public List<ExportRow> rows() {
    return rows.get();
  }

  /** Gives the rows up, once nobody asks for them: those of many years take much of the memory. */
  public void giveUp() {
    rows =
        () -> {
          throw new IllegalStateException("the rows of " + path + " were given up");
        };
  }

  @Override
  public String toString() {
    return path + ", " + count + " rows";
  }
}
