package gambrel.trade.weighing;

/**
 * What became of the rows of one export file.
 *
 * @param file relative to the shop folder
 * @param used read and understood
 * @param repeat met before
 * @param voided cancelling or cancelled
 * @param setAside waiting for a person
 */
public record RowCount(String file, int used, int repeat, int voided, int setAside) {
  /** All rows of the file. */
  public int read() {
    return used + repeat + voided + setAside;
  }
}
