package gambrel.intake;

import java.math.BigDecimal;
import java.util.regex.Pattern;

/** Plain decimal numbers: no thousands marks, no exponents. */
final class Numbers {
  private static final Pattern PLAIN = Pattern.compile("[+-]?(\\d+(\\.\\d*)?|\\.\\d+)");
  private static final int MOST_DIGITS = 12;

  /** What is longer is not even looked at: to read it would take long. */
  private static final int LONGEST = 100;

  private Numbers() {}

  /**
   * The number that a text denotes.
   *
   * @param decimalComma whether a comma may stand for the decimal point
   * @throws BadCell if it is none, or has more than 12 digits before or after the point
   */
  static BigDecimal read(String text, boolean decimalComma) {
    String plain = decimalComma ? text.replace(',', '.') : text;
    if (SpreadsheetDamage.isExponent(text)) {
      throw new BadCell("EXPONENT");
    }
    if (!PLAIN.matcher(plain).matches()) {
      throw new BadCell("NOT_PLAIN");
    }
    if (plain.length() > LONGEST) {
      throw new BadCell("TOO_MANY_DIGITS");
    }
    var number = new BigDecimal(plain);
    if (number.precision() - number.scale() > MOST_DIGITS || number.scale() > MOST_DIGITS) {
      throw new BadCell("TOO_MANY_DIGITS");
    }
    return number;
  }
}
