package gambrel.oracle;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;

/** Exact numbers: reading, converting, printing. */
final class Num {
  static final BigFraction HUNDRED = BigFraction.of(100);

  private static final BigFraction POUND = of("0.45359237");
  private static final Map<String, BigFraction> KILOGRAMS =
      Map.of(
          "kg", BigFraction.ONE, "g", BigFraction.of(1, 1000), "lb", POUND, "oz", POUND.divide(16));

  private Num() {}

  static BigFraction of(String decimal) {
    return of(new BigDecimal(decimal.trim()));
  }

  static BigFraction of(BigDecimal value) {
    return value.scale() >= 0
        ? BigFraction.of(value.unscaledValue(), BigInteger.TEN.pow(value.scale()))
        : BigFraction.of(value.toBigIntegerExact());
  }

  /** The number in a cell, or null where it is blank. */
  static BigFraction ofCell(String cell) {
    return cell.isBlank() ? null : of(cell);
  }

  static boolean isNumber(String cell) {
    return cell.trim().matches("[+-]?\\d+(\\.\\d+)?");
  }

  static boolean isUnit(String unit) {
    return KILOGRAMS.containsKey(unit);
  }

  /** How many of {@code to} one {@code from} is. */
  static BigFraction factor(String from, String to) {
    return KILOGRAMS.get(from).divide(KILOGRAMS.get(to));
  }

  /** Rounded half away from zero. */
  static BigDecimal round(BigFraction value, int decimals) {
    return new BigDecimal(value.getNumerator())
        .divide(new BigDecimal(value.getDenominator()), decimals, RoundingMode.HALF_UP);
  }

  static BigFraction rounded(BigFraction value, int decimals) {
    return of(round(value, decimals));
  }

  /** The value in whole steps of 10^-decimals, rounded half away from zero. */
  static BigInteger steps(BigFraction value, int decimals) {
    return round(value, decimals).unscaledValue();
  }

  static BigFraction ofSteps(BigInteger steps, int decimals) {
    return of(new BigDecimal(steps, decimals));
  }

  /** Printed with three decimals, blank for null. */
  static String text(BigFraction value) {
    return text(value, 3);
  }

  static String text(BigFraction value, int decimals) {
    return value == null ? "" : round(value, decimals).toPlainString();
  }

  /** part / whole in percent; null where either is unknown or the whole is nothing. */
  static BigFraction percent(BigFraction part, BigFraction whole) {
    return part == null || whole == null || whole.signum() == 0
        ? null
        : part.multiply(HUNDRED).divide(whole);
  }

  /** The square root of a rational with three decimals, correctly rounded; blank for null. */
  static String root(BigFraction square) {
    if (square == null) {
      return "";
    }
    // floor(1000r + 1/2) = floor((floor(2000r) + 1) / 2)
    var scaled = square.multiply(BigInteger.valueOf(4_000_000));
    var twice = scaled.getNumerator().divide(scaled.getDenominator()).sqrt();
    return new BigDecimal(twice.add(BigInteger.ONE).shiftRight(1), 3).toPlainString();
  }

  /** Whether {@code value} is greater than the root of {@code square}. */
  static boolean exceedsRoot(BigFraction value, BigFraction square) {
    return value.signum() > 0 && value.multiply(value).compareTo(square) > 0;
  }
}
