package gambrel.statement;

import java.util.List;

/**
 * What the whole body gave and what this household got of it. It never names another owner.
 *
 * @param sentence the share and how the body was divided
 * @param yours head of the household's column, such as {@code Your 1/2}
 * @param rows what was divided
 */
public record SharesView(String sentence, String yours, List<Row> rows) {
  /** Copies the rows. */
  public SharesView {
    rows = List.copyOf(rows);
  }

  /**
   * One thing that was divided.
   *
   * @param label what it is
   * @param whole of the whole body
   * @param yours of this household
   */
  public record Row(String label, String whole, String yours) {}
}
