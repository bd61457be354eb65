package gambrel.files.tables;

import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** {@code data/pieces.csv}: every piece weighed on the block and what came of it. */
final class PiecesTable {
  private static final String COLUMNS = "body,item,block_kg,out_kg,loss_kg,balance_u_kg";

  private PiecesTable() {}

  static Table of(Night night) {
    return new Table(
        "pieces.csv",
        Table.columns(COLUMNS, night.shop().settings().unit().id()),
        () -> night.bodies().values().stream().flatMap(PiecesTable::rows));
  }

  private static Stream<List<String>> rows(BodyAccount account) {
    return account.balance().pieces().stream()
        .map(
            piece ->
                new RowBuilder()
                    .text(account.body().id())
                    .text(piece.item())
                    .weight(piece.block())
                    .weight(piece.out())
                    .weight(piece.loss())
                    .root(Optional.of(piece.resolutionSquared()))
                    .cells());
  }
}
