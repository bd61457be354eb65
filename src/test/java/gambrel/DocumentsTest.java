package gambrel;

import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.insight.cause.Cause;
import gambrel.insight.month.figures.Finding;
import gambrel.trade.decision.ReasonCode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class DocumentsTest {
  private static final Path README = Path.of("README.md");
  private static final Path DEVELOPERS = Path.of("DEVELOPERS.md");
  private static final Path MANUAL = Path.of("src/site/markdown");
  private static final Path SAMPLE = Path.of("sample-exports");

  private static final Pattern LINK = Pattern.compile("\\]\\(([^)\\s]+)\\)");
  private static final Pattern HEADING = Pattern.compile("(?m)^#+ (.+)$");
  private static final Pattern BLOCK = Pattern.compile("(?ms)^\\s*```.*?^\\s*```$");

  private static String text(Path page) throws IOException {
    return Files.readString(page);
  }

  private static List<Path> manual() throws IOException {
    try (var files = Files.list(MANUAL)) {
      return files.sorted().toList();
    }
  }

  private static List<Path> pages() throws IOException {
    var pages = new ArrayList<>(List.of(README, DEVELOPERS, Path.of("templates/README.md")));
    pages.addAll(manual());
    return pages;
  }

  /** The names under which a page's headings are linked to. */
  private static Set<String> anchors(Path page) throws IOException {
    var anchors = new HashSet<String>();
    HEADING
        .matcher(BLOCK.matcher(text(page)).replaceAll(""))
        .results()
        .map(heading -> heading.group(1).toLowerCase(Locale.ROOT))
        .map(heading -> heading.replaceAll("[^\\p{L}\\p{N} _-]", "").replace(' ', '-'))
        .forEach(anchors::add);
    return anchors;
  }

  private static List<String> links(Path page) throws IOException {
    return LINK.matcher(BLOCK.matcher(text(page)).replaceAll(""))
        .results()
        .map(link -> link.group(1))
        .toList();
  }

  private static Path target(Path page, String link) {
    var path = link.replaceFirst("#.*", "");
    return path.isEmpty() ? page : page.resolveSibling(path).normalize();
  }

  /** What stands under a heading, up to the next of its level or above. */
  private static String section(Path page, String heading) throws IOException {
    var section =
        Pattern.compile("(?ms)^(##+) " + Pattern.quote(heading) + "$(.*?)(?=^## |^\\1 |\\z)");
    var found = section.matcher(text(page));
    assertTrue(found.find(), page + " has no " + heading);
    return found.group(2);
  }

  @Test
  void areShortEnoughToBeReadInOneGo() throws IOException {
    assertTrue(Files.size(README) <= 10_000, "README.md has " + Files.size(README));
    assertTrue(Files.size(DEVELOPERS) <= 14_000, "DEVELOPERS.md has " + Files.size(DEVELOPERS));
  }

  @Test
  void linkToPagesAndHeadingsThatThereAre() throws IOException {
    for (var page : pages()) {
      for (var link : links(page)) {
        var target = target(page, link);
        assertTrue(Files.exists(target), page + " links to " + link);
        if (link.contains("#")) {
          var anchor = link.substring(link.indexOf('#') + 1);
          assertTrue(anchors(target).contains(anchor), page + " links to " + link);
        }
      }
    }
  }

  @Test
  void areAllLinkedToFromTheManualsFirstPage() throws IOException {
    var first = MANUAL.resolve("index.md");
    for (var page : manual()) {
      var name = page.getFileName().toString();
      assertTrue(page.equals(first) || links(first).contains(name), name);
    }
  }

  @Test
  void nameEveryColumnAndSettingOfTheDemoShop() throws IOException {
    var page = MANUAL.resolve("shop-folder.md");
    try (var files = Files.list(SAMPLE)) {
      for (var file : files.filter(Files::isRegularFile).toList()) {
        var name = file.getFileName().toString();
        var words = Set.copyOf(List.of(section(page, name).split("[^\\w.]+")));
        for (var column : name.endsWith(".csv") ? header(file) : keys(file)) {
          assertTrue(words.contains(column), name + ": " + column);
        }
      }
    }
  }

  private static List<String> header(Path file) throws IOException {
    return List.of(text(file).lines().findFirst().orElseThrow().split(","));
  }

  private static List<String> keys(Path file) throws IOException {
    return text(file)
        .lines()
        .map(line -> line.replaceFirst("=.*", ""))
        .map(key -> key.startsWith("rail.") ? "rail" : key)
        .toList();
  }

  @Test
  void explainEveryReasonFindingAndCause() throws IOException {
    assertNames("statement.md", Stream.of(ReasonCode.values()).map(ReasonCode::id));
    assertNames("month.md", Stream.of(Finding.Kind.values()).map(Finding.Kind::id));
    assertNames("figures.md", Stream.of(Cause.values()).map(Cause::id));
  }

  private static void assertNames(String page, Stream<String> ids) throws IOException {
    var text = text(MANUAL.resolve(page));
    ids.forEach(id -> assertTrue(text.contains("`" + id + "`"), page + ": " + id));
  }
}
