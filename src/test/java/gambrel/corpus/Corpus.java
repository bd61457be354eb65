package gambrel.corpus;

import gambrel.files.publish.Csv;
import gambrel.night.AsOf;
import gambrel.night.Documents;
import gambrel.night.Inputs;
import gambrel.night.NightOutcome;
import gambrel.night.NightlyRun;
import gambrel.night.PdfDocuments;
import gambrel.night.PlainDocuments;
import gambrel.night.RefusedException;
import gambrel.night.Trees;
import gambrel.pages.owner.morning.MorningReport;
import gambrel.trade.reckoning.Progress;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The folders under {@code gambrel/corpus}, one a notice code. A folder holds
 *
 * <ul>
 *   <li>{@code nights.txt}: the moments of one night or more, one a line
 *   <li>{@code shop/}: what the first night's shop folder has beside or instead of the files of
 *       {@code gambrel/corpus-base}; {@code night-2/} and so on: what is changed before a later
 *       night, published documents too
 *   <li>{@code expected/}: {@code notices.csv}, {@code rows.csv} and {@code bodies.csv} after the
 *       last night; a column that is blank in every row is left out of the last
 * </ul>
 */
final class Corpus {
  private static final Path RESOURCES = Path.of("src/test/resources/gambrel");
  private static final Path BASE = RESOURCES.resolve("corpus-base");

  /** The tables that are compared. */
  static final List<String> TABLES = List.of("notices", "rows", "bodies");

  private Corpus() {}

  /** Where the corpus lies. */
  static Path top() {
    return RESOURCES.resolve("corpus");
  }

  /**
   * Writes every expected file anew; whoever does so reads what changed.
   *
   * @param codes the folders, or none for all
   */
  public static void main(String... codes) throws IOException, RefusedException {
    try (var all = Files.list(top())) {
      for (var folder : all.sorted().toList()) {
        String code = folder.getFileName().toString();
        if (codes.length == 0 || List.of(codes).contains(code)) {
          var data = run(folder, Files.createTempDirectory("corpus"));
          Files.createDirectories(folder.resolve("expected"));
          for (String table : TABLES) {
            Files.writeString(expected(folder, table), shown(table, data));
          }
        }
      }
    }
  }

  /** The file that says what a table should hold. */
  static Path expected(Path folder, String table) {
    return folder.resolve("expected").resolve(table + ".csv");
  }

  /** A table of a run as the expected file shows it. */
  static String shown(String table, Path data) throws IOException {
    byte[] bytes = Files.readAllBytes(data.resolve(table + ".csv"));
    var shown = new StringBuilder();
    var rows = Csv.records(bytes);
    for (var row : rows) {
      var cells =
          IntStream.range(0, row.size())
              .filter(i -> !table.equals("bodies") || isSaid(rows, i))
              .mapToObj(row::get)
              .toList();
      shown.append(Csv.line(cells)).append('\n');
    }
    return shown.toString();
  }

  private static boolean isSaid(List<List<String>> rows, int column) {
    return rows.stream().skip(1).anyMatch(row -> !row.get(column).isEmpty());
  }

  /** Runs the nights of a folder in a work folder; returns the data folder. */
  static Path run(Path folder, Path work) throws IOException, RefusedException {
    report(folder, work);
    return work.resolve("reports/data");
  }

  /** Runs the nights of a folder in a work folder; returns what the last night reports. */
  static MorningReport report(Path folder, Path work) throws IOException, RefusedException {
    copy(BASE, work);
    copy(folder.resolve("shop"), work);
    MorningReport report = null;
    int night = 1;
    for (String asOf : Files.readAllLines(folder.resolve("nights.txt"))) {
      if (night > 1) {
        copy(folder.resolve("night-" + night), work);
      }
      report = run(work, asOf);
      night++;
    }
    return report;
  }

  private static MorningReport run(Path shop, String asOf) throws RefusedException {
    var inputs = Inputs.read(shop, Progress.NONE);
    var settings = inputs.shop().settings();
    // Only templates of the shop's own are worth the time that real pages take.
    Documents documents =
        settings.templates().isPresent() ? PdfDocuments.of(shop, settings) : new PlainDocuments();
    var when = AsOf.read(asOf, settings.zone());
    var outcome = new NightlyRun(inputs, documents).run(shop.resolve("reports"), when, List.of());
    if (outcome instanceof NightOutcome.Done done) {
      return done.report();
    }
    throw new AssertionError(outcome);
  }

  private static void copy(Path from, Path to) throws IOException {
    for (String file : Trees.files(from)) {
      Files.createDirectories(to.resolve(file).getParent());
      Files.copy(from.resolve(file), to.resolve(file), StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
