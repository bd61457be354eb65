package gambrel.data;

import gambrel.reckoning.Night;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** {@code data/pieces.csv}: every piece weighed on the block and what came of it. */
final class PiecesTable {
  private static final String COLUMNS = "body,item,block_kg,out_kg,loss_kg,balance_u_kg";

  private PiecesTable() {}

  static Table of(Night night) {
    var rows = new ArrayList<List<String>>();
    for (var account : night.bodies().values()) {
      for (var piece : account.balance().pieces()) {
        rows.add(
            new Row()
                .text(account.body().id())
                .text(piece.item())
                .weight(piece.block())
                .weight(piece.out())
                .weight(piece.loss())
                .root(Optional.of(piece.resolutionSquared()))
                .cells());
      }
    }
    return new Table(
        "pieces.csv", Table.columns(COLUMNS, night.shop().settings().unit().id()), rows);
  }
}
