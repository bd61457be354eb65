package gambrel.trade.rows;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/** Plain decimal numbers as scales print them: no exponent, no thousands marks. */
public final class DecimalText {
  /** The most digits before the point, and after it. */
  private static final int MOST_DIGITS = 12;

  private static final Pattern PLAIN =
      Pattern.compile("[+-]?(\\d{1,%1$d}(\\.\\d{0,%1$d})?|\\.\\d{1,%1$d})".formatted(MOST_DIGITS));

  private DecimalText() {}

  /** The number that a text gives; empty if it is no plain decimal number. */
  public static Optional<BigDecimal> of(String text) {
    return PLAIN.matcher(text).matches() ? Optional.of(new BigDecimal(text)) : Optional.empty();
  }

  /** One text for equal numbers: {@code 1.50}, {@code +1.5} and {@code 01.5} are 1.5. */
  public static String canonical(String text) {
    return of(text).map(number -> number.stripTrailingZeros().toPlainString()).orElse(text);
  }
}
