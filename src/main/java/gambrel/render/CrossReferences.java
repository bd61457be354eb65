package gambrel.render;

import java.nio.charset.StandardCharsets;

/**
 * Writes the cross-reference table (ISO 32000-1, 7.5.4) in ASCII digits.
 *
 * <p>The PDF library writes it in the digits of the machine's locale, cut to one byte each, which
 * in Arabic, say, makes a damaged file.
 */
final class CrossReferences {

  private static final int ENTRY = 20;
  private static final int OFFSET_DIGITS = 10;
  private static final int GENERATION_DIGITS = 5;

  private CrossReferences() {}

  /** Replaces the digits in place and returns the same array. */
  static byte[] normalise(byte[] pdf) {
    var text = new String(pdf, StandardCharsets.ISO_8859_1);
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
    return pdf;
  }

  private static void toAscii(byte[] pdf, int from, int length, byte zero) {
    for (var i = from; i < from + length; i++) {
      pdf[i] = (byte) ('0' + pdf[i] - zero);
    }
  }
}
