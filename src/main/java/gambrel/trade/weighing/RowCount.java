package gambrel.trade.weighing;

import gambrel.trade.rows.RowDisposition;
import java.util.Map;

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
  static RowCount of(String file, Map<RowDisposition, Integer> counts) {
    return new RowCount(
        file,
        counts.getOrDefault(RowDisposition.USED, 0),
        counts.getOrDefault(RowDisposition.REPEAT, 0),
        counts.getOrDefault(RowDisposition.VOID, 0),
        counts.getOrDefault(RowDisposition.SET_ASIDE, 0));
  }

  /** The number of all rows of the file. */
  public int read() {
    return used + repeat + voided + setAside;
  }
}
