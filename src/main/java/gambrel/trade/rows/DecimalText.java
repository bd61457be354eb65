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

  /** Whether a text is digits with at most one point among them, after at most one sign. */
  private static boolean isPlain(String text) {
    int number = 0;
    int run = 0;
    boolean point = false;
    for (int i = text.startsWith("-") || text.startsWith("+") ? 1 : 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '.' && !point) {
        point = true;
        run = 0;
      } else if (c < '0' || c > '9' || ++run > MOST_DIGITS) {
        return false;
      } else {
        number++;
      }
    }
    return number > 0;
  }

  /** One text for equal numbers: {@code 1.50}, {@code +1.5} and {@code 01.5} are 1.5. */
  public static String canonical(String text) {
    return of(text).map(number -> number.stripTrailingZeros().toPlainString()).orElse(text);
  }
}
