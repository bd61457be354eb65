package gambrel.trade.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;

/** Exact arithmetic on rational numbers; every rounding is half away from zero and named here. */
public final class Exact {
  /** One hundred, for percentages. */
  public static final BigFraction HUNDRED = BigFraction.of(100);

  private Exact() {}

  /** {@code value} as an exact fraction. */
  public static BigFraction fraction(BigDecimal value) {
    return value.scale() <= 0
        ? BigFraction.of(value.toBigIntegerExact())
        : BigFraction.of(value.unscaledValue(), BigInteger.TEN.pow(value.scale()));
  }

  /** A statistic as the exact fraction of its shortest decimal text. */
  public static BigFraction ofStatistic(double value) {
    return fraction(BigDecimal.valueOf(value));
  }

  /** {@code value} to {@code decimals} places, half away from zero. */
  public static BigDecimal round(BigFraction value, int decimals) {
    return new BigDecimal(value.getNumerator())
        .divide(new BigDecimal(value.getDenominator()), decimals, RoundingMode.HALF_UP);
  }

  /** {@code value} in whole units of 10^-{@code decimals}, half away from zero. */
  public static long units(BigFraction value, int decimals) {
    return round(value, decimals).unscaledValue().longValueExact();
  }

  /** The square root of a non-negative number to {@code decimals} places, correctly rounded. */
  public static BigDecimal sqrt(BigFraction square, int decimals) {
    if (square.signum() < 0) {
      throw new ArithmeticException("square root of a negative number");
    }
    // floor((floor(2 r) + 1) / 2) is the nearest integer to r; 2 r is the root of 4 r².
    BigInteger fourfold =
        square.getNumerator().multiply(BigInteger.TEN.pow(2 * decimals)).shiftLeft(2);
    BigInteger twice = fourfold.divide(square.getDenominator()).sqrt();
    return new BigDecimal(twice.add(BigInteger.ONE).shiftRight(1), decimals);
  }

  /** {@code part} as a percentage of {@code whole}; {@code whole} must not be zero. */
  public static BigFraction percent(BigFraction part, BigFraction whole) {
    return part.multiply(HUNDRED).divide(whole);
  }

  /** The larger of two numbers. */
  public static BigFraction max(BigFraction a, BigFraction b) {
    return a.compareTo(b) >= 0 ? a : b;
  }
}
