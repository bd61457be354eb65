package gambrel.render;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * Replaces the random tags of subset font names (ISO 32000-1, 9.6.4) by AAAAAA, AAAAAB and so on in
 * order of appearance. The length stays, so that no offset in the file moves.
 */
final class SubsetTags {

  private static final String FONT = "+IBMPlexSans";
  private static final int LENGTH = 6;

  /** What stands before the font's name, its tag last. */
  private static final Pattern BEFORE = Pattern.compile("(?s).*/(?:BaseFont|FontName) ?/[A-Z]{6}");

  private static final int LONGEST = "/FontName /".length() + LENGTH;

  private SubsetTags() {}

  /** Replaces the tags in place and returns the same array. */
  static byte[] normalise(byte[] pdf) {
    Map<String, byte[]> tags = new HashMap<>();
    var text = new String(pdf, StandardCharsets.ISO_8859_1);
    for (int at = text.indexOf(FONT); at >= 0; at = text.indexOf(FONT, at + 1)) {
      var before = text.substring(Math.max(0, at - LONGEST), at);
      if (BEFORE.matcher(before).matches()) {
        var random = before.substring(before.length() - LENGTH);
        var fixed = tags.computeIfAbsent(random, r -> tag(tags.size()));
        System.arraycopy(fixed, 0, pdf, at - LENGTH, LENGTH);
      }
    }
    return pdf;
  }

  private static byte[] tag(int number) {
    return ("AAAAA" + (char) ('A' + number)).getBytes(StandardCharsets.US_ASCII);
  }
}
