package gambrel.trade.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Collection;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A weight, or a signed difference of weights, in hundred-thousandths of the shop's unit.
 *
 * @param hundredThousandths the value times 100 000
 */
public record Weight(long hundredThousandths) implements Comparable<Weight> {
  /** Decimals kept for a single weighing. */
  public static final int DECIMALS = 5;

  /** Decimals of every weight in output data, and the step of every division. */
  public static final int OUTPUT_DECIMALS = 3;

  /** A weight of zero. */
  public static final Weight ZERO = new Weight(0);

  /** The nearest weight to {@code value} of the shop's unit, half away from zero. */
  public static Weight of(BigFraction value) {
    return new Weight(Exact.units(value, DECIMALS));
  }

  /** The nearest weight to {@code value} of the shop's unit, half away from zero. */
  public static Weight of(BigDecimal value) {
    return new Weight(
        value.setScale(DECIMALS, RoundingMode.HALF_UP).unscaledValue().longValueExact());
  }

  /** A weight of whole thousandths of the shop's unit (grams in a kilogram shop). */
  public static Weight ofThousandths(long thousandths) {
    return new Weight(Math.multiplyExact(thousandths, 100L));
  }

  /** The sum of {@code weights}. */
  public static Weight sum(Collection<Weight> weights) {
    long sum = 0;
    for (var weight : weights) {
      sum = Math.addExact(sum, weight.hundredThousandths);
    }
    return new Weight(sum);
  }

  /** The sum of this and {@code other}. */
  public Weight plus(Weight other) {
    return new Weight(Math.addExact(hundredThousandths, other.hundredThousandths));
  }

  /** This less {@code other}; may be negative. */
  public Weight minus(Weight other) {
    return new Weight(Math.subtractExact(hundredThousandths, other.hundredThousandths));
  }

  /** The exact value in the shop's unit. */
  public BigFraction fraction() {
    return BigFraction.of(hundredThousandths, 100_000);
  }

  /** This as an exact percentage of {@code whole}, which must not be zero. */
  public BigFraction percentOf(Weight whole) {
    return BigFraction.of(
        BigInteger.valueOf(hundredThousandths).multiply(BigInteger.valueOf(100)),
        BigInteger.valueOf(whole.hundredThousandths));
  }

  /** Whole thousandths of the shop's unit, half away from zero. */
  public long thousandths() {
    long half = hundredThousandths < 0 ? -50 : 50;
    return Math.addExact(hundredThousandths, half) / 100;
  }

  /** The value in the shop's unit with all five decimals. */
  public BigDecimal decimal() {
    return BigDecimal.valueOf(hundredThousandths, DECIMALS);
  }

  /** The value in the shop's unit with three decimals, as every data file prints it. */
  public BigDecimal output() {
    return BigDecimal.valueOf(thousandths(), OUTPUT_DECIMALS);
  }

  /** Whether this is zero. */
  public boolean isZero() {
    return hundredThousandths == 0;
  }

  /** Whether this is below zero. */
  public boolean isNegative() {
    return hundredThousandths < 0;
  }

  @Override
  public int compareTo(Weight other) {
    return Long.compare(hundredThousandths, other.hundredThousandths);
  }

  @Override
  public String toString() {
    return output().toPlainString();
  }
}
