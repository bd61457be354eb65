package gambrel.files.tables;

import gambrel.trade.balance.BatchBalance;
import gambrel.trade.reckoning.Night;
import java.util.List;

/** {@code data/batches.csv}: what went into every batch and what came out. */
final class BatchesTable {
  private static final String COLUMNS =
      "batch,product,meat_in_kg,added_kg,out_kg,loss_kg,loss_pct,state";

  private BatchesTable() {}

  static Table of(Night night) {
    return new Table(
        "batches.csv",
        Table.columns(COLUMNS, night.shop().settings().unit().id()),
        night.batches().values().stream().map(BatchesTable::row).toList());
  }

  private static List<String> row(BatchBalance batch) {
    return new RowBuilder()
        .text(batch.batch().id())
        .text(batch.batch().product())
        .weight(batch.meatIn())
        .weight(batch.added())
        .weight(batch.out())
        .weight(batch.loss())
        .share(batch.lossShare())
        .text(batch.state().id())
        .cells();
  }
}
