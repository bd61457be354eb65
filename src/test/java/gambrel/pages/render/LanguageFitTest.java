package gambrel.pages.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.pages.render.pdf.Fonts;
import gambrel.pages.render.pdf.PrintableText;
import gambrel.pages.views.Words;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LanguageFitTest {
  private static final Path FOLDER = Path.of("templates");
  private static final float POINTS_PER_MM = 72 / 25.4f;

  /** Left padding of a cell of the tight table, in millimetres. */
  private static final float PADDING = 1.4f;

  private static final float HEAD = 6.5f;
  private static final float CELL = 7;

  private static Map<String, String> texts(String file) throws IOException {
    return Words.of(List.of(Files.readString(FOLDER.resolve(file)))).texts();
  }

  @ParameterizedTest
  @ValueSource(strings = {"words_en", "words_fr", "words_de", "words_es"})
  void haveAGlyphForEachLetter(String file) throws IOException {
    assertPrintable(texts(file + ".properties"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"cuts_fr", "cuts_de", "cuts_es"})
  void haveAGlyphForEachLetterOfTheCuts(String file) throws IOException {
    assertPrintable(texts(file + ".properties"));
  }

  private static void assertPrintable(Map<String, String> texts) {
    var printed = new PrintableText(Fonts::hasGlyph);
    texts.forEach((key, text) -> assertEquals(text, printed.print(text), key));
  }

  @ParameterizedTest
  @ValueSource(strings = {"Tūhoe Ngātiwai", "Łukasz Żółć Gęsia", "Nguyễn Thảo Đỗ Phượng"})
  void haveNeighboursWhoseNamesPrint(String name) {
    assertEquals(name, new PrintableText(Fonts::hasGlyph).print(name));
  }

  /** The table of all bodies has columns of fixed width, in which a long word would run over. */
  @ParameterizedTest
  @ValueSource(strings = {"en", "fr", "de", "es"})
  void fitTheColumnsOfTheTableOfBodies(String language) throws IOException {
    var words = texts("words_" + language + ".properties");
    var tooWide = new ArrayList<String>();
    for (var key : List.of("hot", "cold", "boning", "home", "bench_loss")) {
      tooWide.addAll(tooWide(words.get(key) + ", kg", "weight", HEAD));
    }
    for (var key : List.of("chill_percent", "bench_percent", "home_percent")) {
      tooWide.addAll(tooWide(words.get(key), "percent", HEAD));
    }
    tooWide.addAll(tooWide(words.get("killed"), "day", HEAD));
    tooWide.addAll(tooWide(words.get("state"), "state", HEAD));
    for (var word : words.entrySet()) {
      if (word.getKey().startsWith("summary.state.")) {
        tooWide.addAll(tooWide(word.getValue(), "state", CELL));
      }
    }
    assertEquals(List.of(), tooWide);
  }

  private static List<String> tooWide(String text, String column, float size) throws IOException {
    float room = (width(column) - PADDING) * POINTS_PER_MM;
    return List.of(text.split("(?<=-)| ")).stream()
        .filter(word -> Fonts.REGULAR.getWidthPoint(word, size) > room)
        .toList();
  }

  private static float width(String column) throws IOException {
    var css = Files.readString(FOLDER.resolve("page.css"));
    var rule =
        Pattern.compile("\\.bodies \\." + column + " \\{ width: ([\\d.]+)mm; }").matcher(css);
    assertTrue(rule.find(), column);
    return Float.parseFloat(rule.group(1));
  }
}
