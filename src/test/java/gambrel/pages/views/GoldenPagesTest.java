package gambrel.pages.views;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import gambrel.pages.render.PageRenderer;
import gambrel.pages.render.template.Templates;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Pages that somebody has looked at. {@code -Dpages.accept=true} keeps what is printed now. */
class GoldenPagesTest {
  private static final Path KEPT = Path.of("src/test/resources/gambrel/pages");
  private static final Path FOUND = Path.of("target/pages");
  private static final boolean ACCEPT = Boolean.getBoolean("pages.accept");
  private static final String CURE =
      "; look at target/pages, and if it is right, run -Dtest=GoldenPagesTest -Dpages.accept=true";

  private static final Map<String, byte[]> PAGES = new LinkedHashMap<>();

  @BeforeAll
  static void print(@TempDir Path folder) throws Exception {
    PAGES.putAll(GoldenSet.samples(new PageRenderer(Templates.of(SampleWords.FOLDER))));
    PAGES.putAll(GoldenSet.sampleShop(folder.resolve("shop")));
    if (ACCEPT) {
      Files.createDirectories(FOUND);
      for (var page : PAGES.entrySet()) {
        Files.write(FOUND.resolve(page.getKey() + ".pdf"), page.getValue());
      }
    }
  }

  static Stream<String> names() {
    return PAGES.keySet().stream();
  }

  @ParameterizedTest
  @MethodSource("names")
  void stillSaysTheSame(String name) throws IOException {
    var file = KEPT.resolve(name + ".txt");
    var text = PagePictures.text(PAGES.get(name));
    if (ACCEPT) {
      Files.writeString(file, text);
    }
    assertTrue(Files.exists(file), () -> file + " is missing" + CURE);
    if (!Files.readString(file).equals(text)) {
      Files.createDirectories(FOUND);
      Files.writeString(FOUND.resolve(name + ".txt"), text);
    }
    assertEquals(Files.readString(file), text, () -> name + CURE);
  }

  @ParameterizedTest
  @MethodSource("names")
  void stillLooksTheSame(String name) throws IOException {
    for (var sheet : PagePictures.pictures(PAGES.get(name)).entrySet()) {
      var picture = name + "-" + sheet.getKey();
      var file = KEPT.resolve(picture + ".png");
      if (ACCEPT) {
        ImageIO.write(sheet.getValue(), "png", file.toFile());
      }
      assertTrue(Files.exists(file), () -> file + " is missing" + CURE);
      var kept = ImageIO.read(file.toFile());
      var differences = PagePictures.differences(kept, sheet.getValue());
      if (differences > 0) {
        show(picture, kept, sheet.getValue());
      }
      assertEquals(0, differences, () -> picture + " looks different" + CURE);
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void bringsEveryFontWithIt(String name) throws IOException {
    try (var document = Loader.loadPDF(PAGES.get(name))) {
      for (var sheet : document.getPages()) {
        for (var font : sheet.getResources().getFontNames()) {
          assertTrue(sheet.getResources().getFont(font).isEmbedded(), font::getName);
        }
      }
    }
  }

  @Test
  void isTheSameToTheByteWhenItIsPrintedAgain() {
    var renderer = new PageRenderer(Templates.of(SampleWords.FOLDER));
    GoldenSet.samples(renderer)
        .forEach((name, bytes) -> assertArrayEquals(PAGES.get(name), bytes, name));
  }

  @Test
  void isKeptForNothingElse() throws IOException {
    assumeFalse(ACCEPT);
    var kept = new TreeSet<String>();
    try (var files = Files.list(KEPT)) {
      files
          .map(file -> file.getFileName().toString())
          .filter(file -> file.endsWith(".txt"))
          .forEach(file -> kept.add(file.replace(".txt", "")));
    }
    assertEquals(new TreeSet<>(PAGES.keySet()), kept);
  }

  @ParameterizedTest
  @CsvSource({
    "page.css, '.figures .number { text-align: right;', '.figures .number { text-align: left;'",
    "page.css, '.flow .bar { width: 60mm; }', '.flow .bar { width: 60mm; padding-left: 2mm; }'",
    "parts.ftlh, 'fill=\"#000000\"', 'fill=\"#808080\"'",
    "parts.ftlh, '<@bar row=row/>', ''"
  })
  void looksDifferentWhenItIsDamaged(String file, String from, String to, @TempDir Path folder)
      throws IOException {
    var template = Files.readString(SampleWords.FOLDER.resolve(file));
    assertTrue(template.contains(from), from);
    Files.writeString(folder.resolve(file), template.replace(from, to));
    var damaged = Preview.render(new PageRenderer(Templates.of(folder)), SampleBeef.full());

    var differences =
        PagePictures.pictures(damaged).entrySet().stream()
            .collect(Collectors.summingInt(sheet -> differences("beef-full", sheet)));

    assertTrue(differences > 10, () -> "only " + differences);
  }

  private static int differences(String name, Map.Entry<Integer, BufferedImage> sheet) {
    try {
      var kept = ImageIO.read(KEPT.resolve(name + "-" + sheet.getKey() + ".png").toFile());
      return Math.min(10_000, PagePictures.differences(kept, sheet.getValue()));
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static void show(String name, BufferedImage kept, BufferedImage found)
      throws IOException {
    Files.createDirectories(FOUND);
    ImageIO.write(kept, "png", FOUND.resolve(name + "-expected.png").toFile());
    ImageIO.write(found, "png", FOUND.resolve(name + "-actual.png").toFile());
    ImageIO.write(
        PagePictures.difference(kept, found), "png", FOUND.resolve(name + "-diff.png").toFile());
  }
}
