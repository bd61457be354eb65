package gambrel.night;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.files.publish.HastyDisk;
import gambrel.trade.reckoning.Progress;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A year with a run every night ends like one run over the whole year. {@code -Dyears=10} takes ten
 * years with twice as many bodies.
 */
class YearOfNightsTest {
  private static final int YEARS = Integer.getInteger("years", 0);
  private static final int DAYS_BETWEEN = YEARS > 0 ? 1 : 10;
  private static final int BODIES = YEARS > 0 ? 40 : 20;
  private static final List<String> FIGURES =
      List.of("bodies", "cuts", "pieces", "batches", "shrink", "rows");

  @TempDir private Path folder;

  static LongStream seeds() {
    return LongStream.rangeClosed(1, Math.max(1, YEARS));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void nightByNightEndsAsAllAtOnce(long seed) throws Exception {
    var year = new YearShop(seed, BODIES);
    var lived = folder.resolve("lived");
    SortedMap<String, String> sent = new TreeMap<>();
    for (var night = YearShop.START; ; night = night.plusDays(DAYS_BETWEEN)) {
      run(year, night.isAfter(YearShop.END) ? YearShop.END : night, lived);
      var statements = Trees.published(lived.resolve("statements"));
      assertEquals(sent, shared(statements, sent), "statements of nights before " + night);
      sent = statements;
      if (!night.isBefore(YearShop.END)) {
        break;
      }
    }

    var once = folder.resolve("once");
    run(year, YearShop.END, once);

    assertEquals(figures(once), figures(lived));
    assertEquals(latest(once), latestOf(lived, latest(once)));
    assertEquals(Trees.published(once.resolve("held")), Trees.published(lived.resolve("held")));
    long revisions = sent.keySet().stream().filter(file -> !file.endsWith("-r1.pdf")).count();
    long held = Trees.files(once.resolve("held")).size();
    assertTrue(
        sent.size() - revisions > BODIES / 2 && revisions > 3 && held > 0,
        sent.size() + " statements, " + revisions + " of them revisions, " + held + " held");
    if (YEARS > 0) {
      System.err.println(
          "year " + seed + ": " + sent.size() + " statements, " + revisions + " revisions");
    }
  }

  private void run(YearShop year, LocalDate night, Path out) throws Exception {
    var shop = year.before(night, folder.resolve("shop"));
    var outcome =
        new NightlyRun(
                Inputs.read(shop.write(), Progress.NONE),
                new TinyDocuments(),
                new HastyDisk(),
                Progress.NONE)
            .run(out, NightShop.moment(night + "T02:00"), List.of());
    assertTrue(outcome.exitCode() <= 1, outcome::toString);
  }

  private static SortedMap<String, String> shared(
      SortedMap<String, String> tree, SortedMap<String, String> other) {
    var shared = new TreeMap<>(tree);
    shared.keySet().retainAll(other.keySet());
    return shared;
  }

  private static SortedMap<String, String> figures(Path out) {
    var figures = new TreeMap<String, String>();
    FIGURES.forEach(table -> figures.put(table, Trees.text(out.resolve("data/" + table + ".csv"))));
    return figures;
  }

  /** The figures of each latest statement, by customer and body. */
  private static SortedMap<String, String> latest(Path out) {
    var latest = new TreeMap<String, String>();
    for (var line : Trees.lines(out.resolve("data/statements.csv"))) {
      var cells = line.split(",");
      latest.put(
          cells[0] + ' ' + cells[1],
          String.join(",", cells[4], cells[5], cells[6], cells[7], cells[8], cells[12]));
    }
    return latest;
  }

  /** As above, without statements that were issued and are held now. */
  private static SortedMap<String, String> latestOf(Path out, SortedMap<String, String> known) {
    return shared(latest(out), known);
  }
}
