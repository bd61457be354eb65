package gambrel.laws;

import gambrel.oracle.ExactNight;
import gambrel.trade.reckoning.Night;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * Compares every place in which a figure of a body appears with the exact figure: data files,
 * statements and drafts with their attachments, months, the morning sheet and {@code explain}.
 */
public final class EveryPlace {
  private final ExactNight exact;
  private final Path out;
  private final EnglishWords words;
  private final Agreement agreement = new Agreement();

  private EveryPlace(ExactNight exact, Path out, boolean american) {
    this.exact = exact;
    this.out = out;
    words = new EnglishWords(american);
  }

  /**
   * What was compared.
   *
   * @param figures how many figures
   * @param differences the places that print another figure
   */
  public record Compared(int figures, List<String> differences) {}

  /**
   * Compares a night that was published with {@link XhtmlDocuments}.
   *
   * @param exact the exact figures
   * @param night the night itself, for {@code explain}
   * @param out its output folder
   */
  public static Compared compare(ExactNight exact, Night night, Path out) {
    var region = night.shop().settings().region().name();
    var places = new EveryPlace(exact, out, region.equals("US"));
    new DataPlaces(exact, new NightTables(out.resolve("data")), places.agreement).compare();
    places.pages();
    var explain = new ExplainPlaces(exact, places.agreement);
    exact.bodies().forEach(body -> explain.compare(night, body));
    return places.compared();
  }

  /** Compares only the pages of customers. */
  public static Compared compareStatements(ExactNight exact, Night night, Path out) {
    var region = night.shop().settings().region().name();
    var places = new EveryPlace(exact, out, region.equals("US"));
    places.statements();
    return places.compared();
  }

  private Compared compared() {
    return new Compared(agreement.figures(), agreement.differences());
  }

  private void pages() {
    statements();
    var month = new MonthPlaces(exact, words, agreement);
    for (var file : files(out, "summaries")) {
      month.compare(PrintedPage.read(file), file.getFileName().toString().substring(0, 7));
    }
    new WaitingPlaces(exact, words, agreement)
        .waiting(PrintedPage.read(out.resolve("morning.pdf")), "morning");
  }

  private void statements() {
    var statement = new StatementPlaces(exact, words, agreement);
    for (var file : statementFiles(out)) {
      var body = file.getFileName().toString().replaceFirst("(-r\\d+)?\\.pdf$", "");
      var customer = file.getParent().getFileName().toString();
      statement.compare(
          out.relativize(file).toString(),
          PrintedPage.read(file),
          decoded(customer),
          decoded(body));
    }
  }

  /** The statements and drafts in an output folder. */
  static List<Path> statementFiles(Path out) {
    return Stream.of("statements", "held").flatMap(name -> files(out, name).stream()).toList();
  }

  private static String decoded(String name) {
    return URLDecoder.decode(name, StandardCharsets.UTF_8);
  }

  private static List<Path> files(Path out, String folder) {
    if (!Files.isDirectory(out.resolve(folder))) {
      return List.of();
    }
    try (var walk = Files.walk(out.resolve(folder))) {
      return walk.filter(Files::isRegularFile).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
