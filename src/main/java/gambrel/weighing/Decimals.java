package gambrel.weighing;

import java.math.BigDecimal;
import java.util.Optional;

/** Plain decimal numbers as scales print them: no exponent, no thousands marks. */
final class Decimals {
  /** The most digits before the point, and after it. */
  private static final int MOST_DIGITS = 12;

  /** So many digits always fit. */
  private static final int MOST_IN_LONG = 18;

  private Decimals() {}

  static Optional<BigDecimal> of(String text) {
    if (!isPlain(text)) {
      return Optional.empty();
    }
    return Optional.of(text.length() <= MOST_IN_LONG ? small(text) : new BigDecimal(text));
  }

  /** What the JDK makes of a plain text, without its copies of the characters. */
  private static BigDecimal small(String text) {
    long digits = 0;
    int decimals = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '.') {
        decimals = text.length() - i - 1;
      } else if (c >= '0') {
        digits = digits * 10 + (c - '0');
      }
    }
    return BigDecimal.valueOf(text.charAt(0) == '-' ? -digits : digits, decimals);
  }

  /** One text for equal numbers: {@code 1.50}, {@code +1.5} and {@code 01.5} are 1.5. */
  static String canonical(String text) {
    if (!isPlain(text)) {
      return text;
    }
    char first = text.charAt(0);
    boolean usual = first > '0' && first <= '9' || text.startsWith("0.");
    return usual
        ? withoutTrailingZeros(text)
        : new BigDecimal(text).stripTrailingZeros().toPlainString();
  }

  private static String withoutTrailingZeros(String text) {
    if (text.indexOf('.') < 0) {
      return text;
    }
    int end = text.length();
    while (text.charAt(end - 1) == '0') {
      end--;
    }
    return text.substring(0, text.charAt(end - 1) == '.' ? end - 1 : end);
  }

  /** Looks at every character once: this is asked several times of every row. */
  private static boolean isPlain(String text) {
    int start = text.startsWith("-") || text.startsWith("+") ? 1 : 0;
    int point = text.indexOf('.', start);
    int whole = (point < 0 ? text.length() : point) - start;
    int decimals = point < 0 ? 0 : text.length() - point - 1;
    if (whole > MOST_DIGITS || decimals > MOST_DIGITS || whole + decimals == 0) {
      return false;
    }
    for (int i = start; i < text.length(); i++) {
      if (i != point && (text.charAt(i) < '0' || text.charAt(i) > '9')) {
        return false;
      }
    }
    return true;
  }
}
