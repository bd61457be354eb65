package gambrel.files.layout;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Adds the escapes of the properties format to lines of a layout. The format ends a key at its
 * first blank and drops single backslashes, but {@code value.status.VOID SALE=void} and {@code
 * ignore=^\d+} are meant as they stand.
 */
final class LayoutEscapes {
  private static final Pattern EXPRESSION = Pattern.compile("\\s*ignore\\s*[=:].*");
  private static final Pattern FOREIGN =
      Pattern.compile("\\s*(value\\.(?:[^=\\\\]|\\\\.)*?)\\s*=(.*)");
  private static final Pattern LONE_BACKSLASH =
      Pattern.compile("\\\\\\\\|\\\\(?=[^\\\\tnrfu:=#! ])");
  private static final Pattern BARE_BLANK = Pattern.compile("\\\\.|[\\s:]");

  private static final int LONGEST = 1000;

  private LayoutEscapes() {}

  /** The line in the properties format. */
  static String line(String line) {
    if (line.length() > LONGEST) {
      return line;
    }
    if (EXPRESSION.matcher(line).matches()) {
      return LONE_BACKSLASH.matcher(line).replaceAll("\\\\\\\\");
    }
    var foreign = FOREIGN.matcher(line);
    if (!foreign.matches()) {
      return line;
    }
    String key =
        BARE_BLANK
            .matcher(foreign.group(1))
            .replaceAll(found -> Matcher.quoteReplacement(escaped(found.group())));
    return key + '=' + foreign.group(2);
  }

  private static String escaped(String text) {
    return text.length() > 1 ? text : '\\' + text;
  }
}
