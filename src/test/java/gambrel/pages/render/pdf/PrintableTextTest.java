package gambrel.pages.render.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PrintableTextTest {

  private static final PrintableText TEXT = new PrintableText(Fonts::hasGlyph);

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Ng\u0101 mihi, W\u012bremu \u014ct\u016b",
        "Za\u017c\u00f3\u0142\u0107 g\u0119\u015bl\u0105 ja\u017a\u0144",
        "Th\u1ecbt b\u00f2 \u0111\u00e3 c\u00e2n, b\u1ed1n c\u00e2n r\u01b0\u1ee1i",
        "12\u00bd \u20ac \u2212 3\u00a0\u00b0"
      })
  void lettersOfTheFontStay(String text) {
    assertEquals(text, TEXT.print(text));
  }

  @Test
  void lettersTypedInPartsAreJoined() {
    assertEquals("M\u0101ori", TEXT.print("Ma\u0304ori"));
  }

  @Test
  void directionMarksAreLeftOut() {
    assertEquals("Smith evil", TEXT.print("Smith\u202E \u2066evil\u2069\u200F"));
  }

  @Test
  void controlCharactersBecomeSpaces() {
    assertEquals("a b c d", TEXT.print("a\u0000b\u0007c\u0085d"));
  }

  @ParameterizedTest
  @CsvSource({"\uD83D\uDC02, \uFFFD", "\u05E9\u05DC, \uFFFD\uFFFD", "\uD83D\uDC02x\uFE0F, \uFFFDx"})
  void whatTheFontLacksLeavesAMark(String text, String printed) {
    assertEquals(printed, TEXT.print(text));
  }

  @Test
  void aCompatibleFormIsBetterThanAMark() {
    assertEquals("12", TEXT.print("\uFF11\uFF12"));
  }

  @Test
  void spacesOfAnyWidthStaySpaces() {
    assertEquals("1 234", TEXT.print("1\u205F234"));
  }

  @Test
  void halfACharacterBecomesAMark() {
    assertEquals("a\uFFFDb", PrintableText.forXml("a\uD83Db"));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void anyTextBecomesPrintable(long seed) {
    var random = new SplittableRandom(seed);
    for (var round = 0; round < 200; round++) {
      var text =
          random
              .ints(12, 0, 0x3000)
              .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append);

      var printed = TEXT.print(text.toString());

      assertTrue(
          printed.codePoints().allMatch(c -> c == '\t' || c == '\n' || Fonts.hasGlyph(c)), printed);
    }
  }
}
