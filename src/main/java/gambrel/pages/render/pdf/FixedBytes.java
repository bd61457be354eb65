package gambrel.pages.render.pdf;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * Replaces the random tags of subset font names (ISO 32000-1, 9.6.4) by AAAAAA, AAAAAB and so on in
 * order of appearance.
 */
public final class FixedBytes {

  private static final Pattern SUBSET =
      Pattern.compile("/(?:BaseFont|FontName) ?/([A-Z]{6})\\+IBMPlexSans");

  private FixedBytes() {}

  /** Changes the array in place and returns it. Offsets in the file stay the same. */
  public static byte[] of(byte[] pdf) {
    var names = SUBSET.matcher(new String(pdf, StandardCharsets.ISO_8859_1));
    Map<String, byte[]> tags = new HashMap<>();
    while (names.find()) {
      var fixed = tags.computeIfAbsent(names.group(1), random -> tag(tags.size()));
      System.arraycopy(fixed, 0, pdf, names.start(1), fixed.length);
    }
    return pdf;
  }

  private static byte[] tag(int number) {
    return ("AAAAA" + (char) ('A' + number)).getBytes(StandardCharsets.US_ASCII);
  }
}
