package gambrel.trade.rows;

import java.math.BigDecimal;
import java.util.Optional;

/** Plain decimal numbers as scales print them: no exponent, no thousands marks. */
public final class DecimalText {
  /** The most digits before the point, and after it. */
  private static final int MOST_DIGITS = 12;

  private DecimalText() {}

  /** The number that a text gives; empty if it is no plain decimal number. */
  public static Optional<BigDecimal> of(String text) {
    return isPlain(text) ? Optional.of(new BigDecimal(text)) : Optional.empty();
  }

  private static boolean isPlain(String text) {
    int start = text.startsWith("+") || text.startsWith("-") ? 1 : 0;
    int point = text.indexOf('.', start);
    int end = point < 0 ? text.length() : point;
    int whole = end - start;
    int decimals = Math.max(0, text.length() - end - 1);
    return whole + decimals > 0
        && whole <= MOST_DIGITS
        && decimals <= MOST_DIGITS
        && isDigits(text, start, end)
        && isDigits(text, end + 1, text.length());
  }

  /** Whether only digits stand from one index to another, which is excluded. */
  static boolean isDigits(String text, int from, int to) {
    for (int i = from; i < to; i++) {
      if (text.charAt(i) < '0' || text.charAt(i) > '9') {
        return false;
      }
    }
    return true;
  }

  /** One text for equal numbers: {@code 1.50}, {@code +1.5} and {@code 01.5} are 1.5. */
  public static String canonical(String text) {
    return of(text).map(number -> number.stripTrailingZeros().toPlainString()).orElse(text);
  }
}
