package gambrel.laws;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import gambrel.files.publish.HastyDisk;
import gambrel.night.Inputs;
import gambrel.night.NightOutcome;
import gambrel.night.NightlyRun;
import gambrel.night.PlainDocuments;
import gambrel.night.RefusedException;
import gambrel.night.Trees;
import gambrel.oracle.CsvTrees;
import gambrel.oracle.RandomShop;
import gambrel.pages.owner.morning.MorningReport;
import gambrel.trade.reckoning.Progress;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/** A random shop that is changed in a way about which the contract says what must follow. */
public final class LawShop {
  /** How many shops each law is tried on. */
  private static final int SEEDS = Integer.getInteger("seeds", 3);

  private final Path folder;
  private final OffsetDateTime asOf;
  private int nights;

  /** Writes the shop of a seed into an empty folder. */
  public LawShop(Path folder, long seed) {
    this.folder = folder;
    try {
      asOf = RandomShop.write(folder, seed, CsvTrees::of).get(3);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The seeds to try; {@code -Dseeds=500} tries more. */
  public static IntStream seeds() {
    return IntStream.range(0, SEEDS);
  }

  /** Where it lies. */
  public Path folder() {
    return folder;
  }

  /** When all is over. */
  public OffsetDateTime asOf() {
    return asOf;
  }

  /** Runs a night into a new output folder. */
  MorningReport run() {
    return run(folder.resolveSibling(folder.getFileName() + "-out" + nights++));
  }

  /** Runs a night into an output folder. */
  MorningReport run(Path out) {
    try {
      var outcome =
          new NightlyRun(
                  Inputs.read(folder, Progress.NONE),
                  new PlainDocuments(),
                  new HastyDisk(),
                  Progress.NONE)
              .run(out, asOf, List.of());
      return assertInstanceOf(NightOutcome.Done.class, outcome).report();
    } catch (RefusedException e) {
      throw new AssertionError(e);
    }
  }

  /** Runs a night into a new output folder and returns its tables. */
  NightTables night() {
    var out = folder.resolveSibling(folder.getFileName() + "-out" + nights++);
    run(out);
    return new NightTables(out.resolve("data"));
  }

  /** A file of the folder. */
  CsvFile file(String path) {
    return CsvFile.read(folder.resolve(path));
  }

  /** Changes a file that is there. */
  void change(String path, UnaryOperator<CsvFile> change) {
    if (Files.exists(folder.resolve(path))) {
      write(path, change.apply(file(path)).text());
    }
  }

  /** Writes a file. */
  public void write(String path, String text) {
    try {
      Files.createDirectories(folder.resolve(path).getParent());
      Files.writeString(folder.resolve(path), text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Removes a file. */
  void remove(String path) {
    try {
      Files.deleteIfExists(folder.resolve(path));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Corrections that name a place would move with the lines; they are taken out. */
  void correctByTicketOnly() {
    change("corrections.csv", f -> f.where(row -> !row.get("ticket").contains(":")));
  }

  /** The exports by path, in path order. */
  SortedMap<String, CsvFile> exports() {
    var exports = new TreeMap<String, CsvFile>();
    for (var path : Trees.files(folder)) {
      if (path.startsWith("exports/")) {
        exports.put(path, file(path));
      }
    }
    return exports;
  }

  /** Puts these exports in place of those that are there. */
  void exports(SortedMap<String, CsvFile> others) {
    exports().keySet().forEach(this::remove);
    others.forEach((path, file) -> write(path, file.text()));
  }
}
