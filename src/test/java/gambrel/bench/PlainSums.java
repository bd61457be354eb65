package gambrel.bench;

import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;

/**
 * What it takes a fast general database to read the same files and add up net by body and code: no
 * repeats, no voids, no balance. A yardstick for one machine on one day.
 */
final class PlainSums {
  private PlainSums() {}

  /** Whether DuckDB is on the class path: the ordinary build leaves its 80 MB out. */
  static boolean isThere() {
    return DriverManager.drivers().anyMatch(d -> d.getClass().getName().contains("duckdb"));
  }

  /** Seconds that DuckDB takes, a new database each time. */
  static double seconds(Path shop) throws SQLException {
    long start = System.nanoTime();
    String files = shop.resolve("exports/*.csv").toString();
    try (var connection = DriverManager.getConnection("jdbc:duckdb:");
        var statement =
            connection.prepareStatement(
                "select body, code, sum(net) from read_csv(?, types={'body': 'VARCHAR', 'code': 'VARCHAR',"
                    + " 'ticket': 'VARCHAR', 'batch': 'VARCHAR'}) group by body, code")) {
      statement.setString(1, files);
      try (var rows = statement.executeQuery()) {
        while (rows.next()) {
          rows.getDouble(3);
        }
      }
    }
    return (System.nanoTime() - start) / 1e9;
  }
}
