package gambrel.weighing;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/** Plain decimal numbers as scales print them: no exponent, no thousands marks. */
final class Decimals {
  private static final Pattern PLAIN = Pattern.compile("[+-]?(\\d{1,12}(\\.\\d{0,12})?|\\.\\d{1,12})");

  private Decimals() {}

  static Optional<BigDecimal> of(String text) {
    return PLAIN.matcher(text).matches() ? Optional.of(new BigDecimal(text)) : Optional.empty();
  }
}
