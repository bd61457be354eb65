package gambrel.pages.render.pdf;

import java.text.Normalizer;
import java.util.function.IntPredicate;
import java.util.regex.Pattern;

/**
 * Makes any text printable: it removes invisible characters, which could reorder or hide text, and
 * substitutes characters for which the font has no glyph, as {@code hasGlyph} tests code points.
 */
public record PrintableText(IntPredicate hasGlyph) {
  /** Printed in place of a character without a glyph. */
  private static final String MARK = "\uFFFD";

  private static final Pattern PLAIN = Pattern.compile("[\n -~]*");
  private static final Pattern SEPARATOR = Pattern.compile("[\\p{Cc}\\p{Zl}\\p{Zp}&&[^\t\n]]");

  /** Format characters and variation selectors. */
  private static final Pattern INVISIBLE =
      Pattern.compile("[\\p{Cf}\\uFE00-\\uFE0F\\x{E0100}-\\x{E01EF}]");

  private static final Pattern SURROGATE = Pattern.compile("\\p{Cs}");
  private static final Pattern NOT_XML = Pattern.compile("[\\x00-\\x1F\\uFFFE\\uFFFF&&[^\t\n\r]]");

  /** The text in printable characters, with visible substitutes for those without a glyph. */
  public String print(String text) {
    if (PLAIN.matcher(text).matches()) {
      return text;
    }
    var clean = withoutControls(Normalizer.normalize(text, Normalizer.Form.NFC));
    var out = new StringBuilder(clean.length());
    clean.codePoints().forEach(c -> printOne(c, out));
    return out.toString();
  }

  /** The text with spaces for control characters, and without other invisible characters. */
  static String withoutControls(String text) {
    var spaced = SEPARATOR.matcher(SURROGATE.matcher(text).replaceAll(MARK)).replaceAll(" ");
    return INVISIBLE.matcher(spaced).replaceAll("");
  }

  /** The text with substitutes for characters that XML 1.0 excludes (production 2, Char). */
  public static String forXml(String text) {
    if (isPlain(text)) {
      return text;
    }
    return NOT_XML.matcher(SURROGATE.matcher(text).replaceAll(MARK)).replaceAll(" ");
  }

  /** Whether all characters are in XML, and none needs a look at its neighbour. */
  private static boolean isPlain(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c >= Character.MIN_SURROGATE || c < ' ' && c != '\n' && c != '\t' && c != '\r') {
        return false;
      }
    }
    return true;
  }

  private void printOne(int c, StringBuilder out) {
    if (c == '\t' || c == '\n' || hasGlyph.test(c)) {
      out.appendCodePoint(c);
    } else if (Character.getType(c) == Character.SPACE_SEPARATOR) {
      out.append(c == 0x202F || c == 0x2007 ? '\u00A0' : ' ');
    } else {
      var simpler = Normalizer.normalize(Character.toString(c), Normalizer.Form.NFKC);
      out.append(simpler.codePoints().allMatch(hasGlyph) ? simpler : MARK);
    }
  }
}
