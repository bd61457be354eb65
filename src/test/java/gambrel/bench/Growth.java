package gambrel.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Locale;

/** Prints how the pass from exports to data files grows with the number of rows, as a table. */
public final class Growth {
  private static final int PASSES = 3;

  /** So many rows take minutes: a pass is enough, and the first is no longer cold. */
  private static final long MANY = 5_000_000;

  private static final int BODIES_A_DAY = 24;
  private static final long SEED = 20161;

  private Growth() {}

  /** {@code FOLDER ROWS...}: made-up shops are kept in the folder for the next time. */
  public static void main(String[] args) throws Exception {
    var folder = Path.of(args[0]);
    System.out.println(
        "| rows | bodies | read, rows/s | reckon, bodies/s | data files, s | all, s | us a row"
            + " | heap, MB | plain sums, s | times |");
    System.out.println("|---|---|---|---|---|---|---|---|---|---|");
    for (int i = 1; i < args.length; i++) {
      long rows = Long.parseLong(args[i]);
      System.out.println(line(shop(folder, rows), rows < MANY ? PASSES : 1));
    }
  }

  private static Path shop(Path folder, long rows) throws IOException {
    var shop = folder.resolve("rows-" + rows);
    if (!Files.exists(shop)) {
      BenchShop.write(shop, rows, BODIES_A_DAY, SEED);
    }
    return shop;
  }

  private static String line(Path shop, int number) throws Exception {
    var passes = new ArrayList<DataPass>();
    var sums = new ArrayList<Double>();
    for (int i = 0; i < number; i++) {
      passes.add(DataPass.over(shop));
      sums.add(PlainSums.isThere() ? PlainSums.seconds(shop) : Double.NaN);
    }
    passes.sort(Comparator.comparing(DataPass::seconds));
    sums.sort(Comparator.naturalOrder());
    var pass = passes.get(number / 2);
    double plain = sums.get(number / 2);
    return String.format(
        Locale.ROOT,
        "| %,d | %,d | %,.0f | %,.0f | %.2f | %.2f | %.1f | %,d | %s | %s |",
        pass.rows(),
        pass.bodies(),
        pass.rows() / pass.read(),
        pass.bodies() / pass.reckoned(),
        pass.written(),
        pass.seconds(),
        pass.seconds() * 1e6 / pass.rows(),
        pass.heap() >> 20,
        Double.isNaN(plain) ? "" : String.format(Locale.ROOT, "%.2f", plain),
        Double.isNaN(plain) ? "" : String.format(Locale.ROOT, "%.0f", pass.seconds() / plain));
  }
}
