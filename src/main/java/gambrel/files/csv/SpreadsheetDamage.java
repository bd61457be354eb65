package gambrel.files.csv;

import java.util.regex.Pattern;

/** Recognises ids and shares that a spreadsheet has turned into numbers and dates. */
public final class SpreadsheetDamage {
  private static final Pattern EXPONENT = Pattern.compile("(?i)[+-]?\\d+([.,]\\d*)?E[+-]?\\d+");
  private static final Pattern SIGNED_EXPONENT = Pattern.compile("(?i)\\d+([.,]\\d*)?E[+-]\\d+");
  private static final Pattern DATE =
      Pattern.compile(
          "\\d{1,2}[-. /]\\p{L}{3,9}\\.?(?:[-. /]\\d{2,4})?"
              + "|\\p{L}{3,9}\\.?[-. /]\\d{1,4}"
              + "|\\d{4}-\\d{2}-\\d{2}(?:[T ].*)?"
              + "|\\d{1,2}([-./])\\d{1,2}\\1\\d{2,4}");

  private SpreadsheetDamage() {}

  /** Whether a text is a number with an exponent. */
  public static boolean isExponent(String text) {
    return EXPONENT.matcher(text).matches();
  }

  /** Whether a spreadsheet has turned an id into a number with an exponent: {@code 1.23E+14}. */
  public static boolean isLostId(String text) {
    return SIGNED_EXPONENT.matcher(text).matches();
  }

  /** Whether a text is a date, as {@code 1/2} becomes {@code 1-Feb} or {@code 2026-02-01}. */
  public static boolean isDate(String text) {
    return DATE.matcher(text).matches();
  }
}
