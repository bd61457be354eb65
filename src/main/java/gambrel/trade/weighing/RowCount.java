package gambrel.trade.weighing;

/**
 * The number of rows of one export file by {@link gambrel.trade.rows.RowDisposition}.
 *
 * @param file relative to the shop folder
 * @param used rows read and understood
 * @param repeat rows that repeat an earlier row
 * @param voided rows that cancel or are cancelled
 * @param setAside rows that wait for a person
 */
public record RowCount(String file, int used, int repeat, int voided, int setAside) {
  /** The number of all rows of the file. */
  public int read() {
    return used + repeat + voided + setAside;
  }
}
