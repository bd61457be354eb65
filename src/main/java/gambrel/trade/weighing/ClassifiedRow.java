package gambrel.trade.weighing;

import gambrel.trade.rows.ReadRow;
import gambrel.trade.rows.RowDisposition;
import java.util.Optional;

/**
 * A row with its disposition.
 *
 * @param row the row
 * @param disposition the result for the row
 * @param weighing the weighing of a used row that has taken effect; else empty
 * @param setAside why a row that is set aside waits; else empty
 */
record ClassifiedRow(
    ReadRow row,
    RowDisposition disposition,
    Optional<Weighing> weighing,
    Optional<SetAside> setAside) {

  /** A row that gives no weighing and does not wait. */
  static ClassifiedRow of(ReadRow row, RowDisposition disposition) {
    return new ClassifiedRow(row, disposition, Optional.empty(), Optional.empty());
  }
}
