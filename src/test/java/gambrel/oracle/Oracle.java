package gambrel.oracle;

import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A second, plain and slow calculation of every figure, written from the contract alone, to hold
 * the program's against.
 */
public final class Oracle {
  private Oracle() {}

  /** The tables that a first run over the folder should write. */
  public static OracleTables compute(Path shopFolder, OffsetDateTime asOf, TreeSource trees) {
    return tables(new World(new Setup(shopFolder, trees), asOf.toInstant()));
  }

  static OracleTables tables(World world) {
    Map<String, List<List<String>>> tables = new LinkedHashMap<>();
    tables.put("bodies.csv", BodiesTable.of(world));
    tables.put("cuts.csv", CutsTable.of(world));
    tables.put("pieces.csv", PiecesTable.of(world));
    tables.put("batches.csv", OtherTables.batches(world));
    tables.put("shrink.csv", ShrinkTable.of(world));
    tables.put("rows.csv", OtherTables.rows(world));
    var ledger = new Ledger();
    ledger.add(world);
    tables.putAll(ledger.tables());
    return new OracleTables(tables);
  }
}
