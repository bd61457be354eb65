package gambrel.files.tables;

import gambrel.trade.reckoning.Night;
import java.util.List;

/** The data files that follow from a night's figures alone. */
public final class NightTables {
  private NightTables() {}

  /** All of them but the register and the notices. */
  public static List<Table> of(Night night) {
    return List.of(
        BodiesTable.of(night),
        CutsTable.of(night),
        PiecesTable.of(night),
        BatchesTable.of(night),
        ShrinkTable.of(night),
        RowsTable.of(night));
  }
}
