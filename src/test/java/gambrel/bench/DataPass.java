package gambrel.bench;

import gambrel.files.csv.OrderedParallel;
import gambrel.files.publish.Csv;
import gambrel.files.tables.NightTables;
import gambrel.files.tables.Table;
import gambrel.night.Inputs;
import gambrel.night.RefusedException;
import gambrel.trade.reckoning.Night;
import gambrel.trade.reckoning.Progress;
import gambrel.trade.reckoning.Reckoner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;

/**
 * One pass from a shop folder to the bytes of its data files, but for notices and register.
 *
 * @param rows export rows
 * @param bodies bodies
 * @param read seconds until every row is typed values
 * @param reckoned seconds from there until every body has its figures
 * @param written seconds from there until the data files are written
 * @param bytes of the data files
 * @param heap the most memory in use, in bytes
 */
record DataPass(
    long rows, int bodies, double read, double reckoned, double written, long bytes, long heap) {
  /** After the last day of every made-up shop. */
  private static final OffsetDateTime AS_OF = OffsetDateTime.parse("2027-01-01T02:00+11:00");

  private static final double NANOS = 1e9;

  /** Makes the data files of a shop folder, and deletes them. */
  static DataPass over(Path shop) throws RefusedException, IOException {
    try (var heap = new PeakHeap()) {
      return over(shop, heap);
    }
  }

  private static DataPass over(Path shop, PeakHeap heap) throws RefusedException, IOException {
    long start = System.nanoTime();
    var inputs = Inputs.read(shop, Progress.NONE);
    long rows = inputs.exports().stream().mapToLong(file -> file.rows().size()).sum();
    long read = System.nanoTime();
    var night = new Reckoner(inputs.shop(), inputs.exports()).at(AS_OF);
    long reckoned = System.nanoTime();
    var bytes = new AtomicLong();
    var folder = Files.createTempDirectory("gambrel-data");
    var file = folder.resolve("data.csv");
    OrderedParallel.each(
        tables(night),
        Csv::bytes,
        made -> bytes.addAndGet(Files.write(file, made).toFile().length()));
    Files.deleteIfExists(file);
    Files.delete(folder);
    long written = System.nanoTime();
    return new DataPass(
        rows,
        night.bodies().size(),
        (read - start) / NANOS,
        (reckoned - read) / NANOS,
        (written - reckoned) / NANOS,
        bytes.get(),
        heap.most());
  }

  private static List<Table> tables(Night night) {
    var tables = new ArrayList<Table>(NightTables.of(night));
    tables.addAll(MonthFiles.of(night));
    return tables;
  }

  double seconds() {
    return read + reckoned + written;
  }
}
