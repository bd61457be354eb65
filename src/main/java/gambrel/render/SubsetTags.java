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

  private static final Pattern NAME =
      Pattern.compile("/(?:BaseFont|FontName) ?/([A-Z]{6})\\+IBMPlexSans");

  private SubsetTags() {}

  /** Replaces the tags in place and returns the same array. */
  static byte[] normalise(byte[] pdf) {
    Map<String, byte[]> tags = new HashMap<>();
    var matcher = NAME.matcher(new String(pdf, StandardCharsets.ISO_8859_1));
    while (matcher.find()) {
      var fixed = tags.computeIfAbsent(matcher.group(1), random -> tag(tags.size()));
      System.arraycopy(fixed, 0, pdf, matcher.start(1), fixed.length);
    }
    return pdf;
  }

  private static byte[] tag(int number) {
    return ("AAAAA" + (char) ('A' + number)).getBytes(StandardCharsets.US_ASCII);
  }
}
