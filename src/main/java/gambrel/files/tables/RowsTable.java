package gambrel.files.tables;

import gambrel.trade.reckoning.Night;
import gambrel.trade.weighing.RowCount;
import java.util.List;

/** {@code data/rows.csv}: what became of the rows of every export. */
final class RowsTable {
  private RowsTable() {}

  static Table of(Night night) {
    return new Table(
        "rows.csv",
        List.of("file", "read", "used", "repeat", "void", "set_aside"),
        night.ledger().rows().stream().map(RowsTable::row).toList());
  }

  private static List<String> row(RowCount count) {
    return new RowBuilder()
        .text(count.file())
        .number(count.read())
        .number(count.used())
        .number(count.repeat())
        .number(count.voided())
        .number(count.setAside())
        .cells();
  }
}
