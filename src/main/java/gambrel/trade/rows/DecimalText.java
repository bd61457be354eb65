package gambrel.trade.rows;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/** Plain decimal numbers as scales print them: no exponent, no thousands marks. */
public final class DecimalText {
  /** At most 12 digits before the point and after it, at least one of all. */
  private static final Pattern PLAIN =
      Pattern.compile("(?=[+-]?\\.?\\d)[+-]?\\d{0,12}+(?:\\.\\d{0,12}+)?");

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
