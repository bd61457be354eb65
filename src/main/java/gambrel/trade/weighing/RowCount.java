package gambrel.trade.weighing;

import gambrel.trade.rows.ExportFile;
import gambrel.trade.rows.RowDisposition;
import java.util.List;

/**
 * The number of rows of one export file by {@link RowDisposition}.
 *
 * @param file relative to the shop folder
 * @param used rows read and understood
 * @param repeat rows that repeat an earlier row
 * @param voided rows that cancel or are cancelled
 * @param setAside rows that wait for a person
 */
public record RowCount(String file, int used, int repeat, int voided, int setAside) {
  /** Counts the rows of a file, which are set aside if nothing of it is used. */
  static RowCount of(ExportFile file, List<ClassifiedRow> rows) {
    var counts = new int[RowDisposition.values().length];
    rows.forEach(row -> counts[row.disposition().ordinal()]++);
    return new RowCount(
        file.path(),
        counts[RowDisposition.USED.ordinal()],
        counts[RowDisposition.REPEAT.ordinal()],
        counts[RowDisposition.VOID.ordinal()],
        counts[RowDisposition.SET_ASIDE.ordinal()] + file.leftOut());
  }

  /** The rows of some files together; without a file's name. */
  public static RowCount sum(List<RowCount> counts) {
    return new RowCount(
        "",
        counts.stream().mapToInt(RowCount::used).sum(),
        counts.stream().mapToInt(RowCount::repeat).sum(),
        counts.stream().mapToInt(RowCount::voided).sum(),
        counts.stream().mapToInt(RowCount::setAside).sum());
  }

  /** The number of all rows of the file. */
  public int read() {
    return used + repeat + voided + setAside;
  }
}
