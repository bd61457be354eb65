package gambrel.pages.render.pdf;

import java.text.Normalizer;
import java.util.function.IntPredicate;

/**
 * Makes any text printable: it removes invisible characters, which could reorder or hide text, and
 * substitutes characters for which the font has no glyph.
 */
public final class PrintableText {

  /** Printed in place of a character without a glyph. */
  static final char SUBSTITUTE = '\uFFFD';

  private final IntPredicate hasGlyph;

  /** Text for a font; {@code hasGlyph} tests whether the font has a code point. */
  public PrintableText(IntPredicate hasGlyph) {
    this.hasGlyph = hasGlyph;
  }

  /** The text in printable characters, with visible substitutes for those without a glyph. */
  public String print(String text) {
    if (isPlain(text)) {
      return text;
    }
    var clean = withoutControls(Normalizer.normalize(text, Normalizer.Form.NFC));
    var out = new StringBuilder(clean.length());
    clean.codePoints().forEach(c -> printOne(c, out));
    return out.toString();
  }

  /** The text with spaces for control characters, and without other invisible characters. */
  static String withoutControls(String text) {
    if (isPlain(text)) {
      return text;
    }
    var out = new StringBuilder(text.length());
    text.codePoints().forEach(c -> keepVisible(c, out));
    return out.toString();
  }

  /** The text with substitutes for characters that XML 1.0 excludes (production 2, Char). */
  public static String forXml(String text) {
    if (text.codePoints().allMatch(PrintableText::isXml)) {
      return text;
    }
    var out = new StringBuilder(text.length());
    text.codePoints().forEach(c -> out.appendCodePoint(isXml(c) ? c : surrogate(c)));
    return out.toString();
  }

  private static boolean isXml(int c) {
    return c == '\t'
        || c == '\n'
        || c == '\r'
        || c >= 0x20 && c <= 0xD7FF
        || c >= 0xE000 && c <= 0xFFFD
        || c >= 0x10000;
  }

  private static int surrogate(int c) {
    return Character.getType(c) == Character.SURROGATE ? SUBSTITUTE : ' ';
  }

  private static boolean isPlain(String text) {
    for (int i = 0; i < text.length(); i++) {
      int c = text.charAt(i);
      if ((c < ' ' || c > '~') && c != '\n') {
        return false;
      }
    }
    return true;
  }

  private static void keepVisible(int c, StringBuilder out) {
    switch (Character.getType(c)) {
      case Character.CONTROL, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR ->
          out.append(c == '\t' || c == '\n' ? (char) c : ' ');
      case Character.SURROGATE -> out.append(SUBSTITUTE);
      case Character.FORMAT -> {}
      default -> {
        if (!isVariationSelector(c)) {
          out.appendCodePoint(c);
        }
      }
    }
  }

  private static boolean isVariationSelector(int c) {
    return c >= 0xFE00 && c <= 0xFE0F || c >= 0xE0100 && c <= 0xE01EF;
  }

  private void printOne(int c, StringBuilder out) {
    if (c == '\t' || c == '\n' || hasGlyph.test(c)) {
      out.appendCodePoint(c);
    } else if (Character.getType(c) == Character.SPACE_SEPARATOR) {
      out.append(c == 0x202F || c == 0x2007 ? '\u00A0' : ' ');
    } else {
      var simpler = Normalizer.normalize(Character.toString(c), Normalizer.Form.NFKC);
      out.append(simpler.codePoints().allMatch(hasGlyph) ? simpler : String.valueOf(SUBSTITUTE));
    }
  }
}
