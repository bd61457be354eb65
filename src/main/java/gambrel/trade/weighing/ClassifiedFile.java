package gambrel.trade.weighing;

import gambrel.trade.rows.ReadRow;
import gambrel.trade.rows.RowDisposition;
import java.util.List;
import java.util.stream.Stream;

/**
 * The classified rows of one export file.
 *
 * @param path relative to the shop folder
 * @param rows in line order
 */
record ClassifiedFile(String path, List<ClassifiedRow> rows) {

  /** The weighings that have taken effect. */
  Stream<Weighing> weighings() {
    return rows.stream().flatMap(row -> row.weighing().stream());
  }

  /** The rows that wait for a person. */
  Stream<SetAside> setAside() {
    return rows.stream().flatMap(row -> row.setAside().stream());
  }

  /** The rows that are used, in effect or not yet. */
  Stream<ReadRow> used() {
    return rows.stream()
        .filter(row -> row.disposition() == RowDisposition.USED)
        .map(ClassifiedRow::row);
  }

  /** The rows that repeat no other row. */
  List<ReadRow> withoutRepeats() {
    return rows.stream()
        .filter(row -> row.disposition() != RowDisposition.REPEAT)
        .map(ClassifiedRow::row)
        .toList();
  }

  /** The number of rows by disposition. */
  RowCount count() {
    return new RowCount(
        path,
        count(RowDisposition.USED),
        count(RowDisposition.REPEAT),
        count(RowDisposition.VOID),
        count(RowDisposition.SET_ASIDE));
  }

  private int count(RowDisposition disposition) {
    return (int) rows.stream().filter(row -> row.disposition() == disposition).count();
  }
}
