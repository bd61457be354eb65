package gambrel.pages.views;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.pages.render.PageRenderer;
import gambrel.pages.render.template.Templates;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is read on a statement can be read without glasses, and lies on the sheet. */
class StatementTypeTest {
  private static final PageRenderer RENDERER = new PageRenderer(Templates.of(SampleWords.FOLDER));

  /** A margin of a sheet in points: 15 mm, less the width of a rule. */
  private static final float MARGIN = 15 * 72 / 25.4f - 1;

  static Stream<String> samples() {
    return SampleViews.statements().keySet().stream();
  }

  private static byte[] print(StatementView view) {
    return Preview.render(RENDERER, view);
  }

  /** A letter as it is printed. */
  private record Letter(String text, float size, float right, float width) {}

  /** The letters of a PDF. That across a draft is the largest and no text to be read. */
  private static List<Letter> letters(byte[] pdf) throws IOException {
    var letters = new ArrayList<Letter>();
    try (var document = Loader.loadPDF(pdf)) {
      new PDFTextStripper() {
        @Override
        protected void processTextPosition(TextPosition at) {
          float right = at.getXDirAdj() + at.getWidthDirAdj();
          if (at.getDir() == 0 && !at.getUnicode().isBlank()) {
            letters.add(
                new Letter(at.getUnicode(), at.getFontSizeInPt(), right, at.getPageWidth()));
          }
        }
      }.getText(document);
    }
    return letters;
  }

  @ParameterizedTest
  @MethodSource("samples")
  void isNowhereSmallerThanNinePointsAndMostlyTen(String sample) throws IOException {
    var sizes = new TreeMap<Float, Integer>();
    for (var letter : letters(print(SampleViews.statements().get(sample)))) {
      sizes.merge(Math.round(letter.size() * 10) / 10f, 1, Integer::sum);
    }
    assertTrue(sizes.firstKey() >= 9, () -> "letters by size: " + sizes);
    var sizesRead = sizes.tailMap(10f);
    assertTrue(!sizesRead.isEmpty(), () -> "letters by size: " + sizes);
  }

  /** A name of one word of 60 letters, wherever a name may stand. */
  @ParameterizedTest
  @ValueSource(strings = {"Wmxwimwlwqwawkwwmxwimwlwqwawkwwmxwimwlwqwawkwwmxwimwlwqwawkw"})
  void breaksALongWordAndPrintsItOnTheSheet(String word) throws IOException {
    assertEquals(60, word.length());
    var cuts = new SampleCuts().group(word);
    for (int i = 0; i < 10; i++) {
      cuts.cut(i % 3 == 0 ? word : "Rump steaks", i % 3 == 1 ? word : "", 12, "10.24");
    }
    var sample = new SampleStatement(SampleWords.ENGLISH, word, word, word);
    sample.known(word, "Tuesday 10 March 2026").issued("28 March 2026", 1);
    sample.note = word;
    sample.address = word;
    sample.answer("packs", word, word).answer("owe", word, word + ' ' + word);
    sample.flow = new SampleFlow("kg", "10").stage(word, "10").off(word, "8", "2").view(word);
    sample.boxes = cuts.view("kg", null, word);
    sample.pending.add(new Fact(word, word));
    sample.charges =
        new ChargesView(
            "AUD",
            "In all",
            List.of(
                new ChargesView.Section(
                    word,
                    List.of(new ChargesView.Row(word, "331.2 kg", "1.10", "364.32", "364.32")),
                    List.of(new ChargesView.Sum(word, "364.32", true)))),
            List.of(word));
    sample.keeping("4 °C", "−18 °C", "steaks").cautions.add(word);
    for (var letter : letters(print(sample.view()))) {
      assertTrue(letter.right() <= letter.width() - MARGIN, letter::toString);
    }
  }
}
