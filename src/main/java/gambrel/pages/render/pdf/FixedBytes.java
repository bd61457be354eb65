package gambrel.pages.render.pdf;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Pattern;

/** Replaces bytes that the PDF library writes at random or in digits of the machine's locale. */
public final class FixedBytes {

  private static final String FONT = "+IBMPlexSans";
  private static final int LENGTH = 6;

  /** The text before a font's name, which ends in its tag. */
  private static final Pattern BEFORE = Pattern.compile("(?s).*/(?:BaseFont|FontName) ?/[A-Z]{6}");

  private static final int LONGEST = "/FontName /".length() + LENGTH;

  private static final int ENTRY = 20;
  private static final int OFFSET_DIGITS = 10;
  private static final int GENERATION_DIGITS = 5;

  private FixedBytes() {}

  /** Changes the array in place and returns it. Offsets in the file stay the same. */
  public static byte[] of(byte[] pdf) {
    var text = new String(pdf, StandardCharsets.ISO_8859_1);
    fixSubsetTags(pdf, text);
    fixCrossReferences(pdf, text);
    return pdf;
  }

  /**
   * Replaces the random tags of subset font names (ISO 32000-1, 9.6.4) by AAAAAA, AAAAAB and so on
   * in order of appearance.
   */
  private static void fixSubsetTags(byte[] pdf, String text) {
    Map<String, byte[]> tags = new HashMap<>();
    for (int at = text.indexOf(FONT); at >= 0; at = text.indexOf(FONT, at + 1)) {
      var before = text.substring(Math.max(0, at - LONGEST), at);
      if (BEFORE.matcher(before).matches()) {
        var random = before.substring(before.length() - LENGTH);
        var fixed = tags.computeIfAbsent(random, r -> tag(tags.size()));
        System.arraycopy(fixed, 0, pdf, at - LENGTH, LENGTH);
      }
    }
  }

  private static byte[] tag(int number) {
    return ("AAAAA" + (char) ('A' + number)).getBytes(StandardCharsets.US_ASCII);
  }

  /**
   * Writes the cross-reference table (ISO 32000-1, 7.5.4) in ASCII digits. The PDF library writes
   * it in the digits of the machine's locale, cut to one byte each.
   */
  private static void fixCrossReferences(byte[] pdf, String text) {
    var position = text.lastIndexOf("\nxref\n") + "\nxref\n".length();
    // entry 0 is 0000000000 65535 f
    var zero = pdf[text.indexOf('\n', position) + 1];
    while (zero != '0' && !text.startsWith("trailer", position)) {
      var entry = text.indexOf('\n', position) + 1;
      var count = text.substring(text.indexOf(' ', position) + 1, entry - 1);
      position = entry + Integer.parseInt(count) * ENTRY;
      for (; entry < position; entry += ENTRY) {
        toAscii(pdf, entry, OFFSET_DIGITS, zero);
        toAscii(pdf, entry + OFFSET_DIGITS + 1, GENERATION_DIGITS, zero);
      }
    }
  }

  private static void toAscii(byte[] pdf, int from, int length, byte zero) {
    for (var i = from; i < from + length; i++) {
      pdf[i] = (byte) ('0' + pdf[i] - zero);
    }
  }
}
