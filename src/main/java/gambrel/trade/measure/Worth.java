package gambrel.trade.measure;

import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Adds up what weights are worth, exactly. The sum is reduced to lowest terms once at its end;
 * doing so at each step takes most of the time of a long sum.
 */
public final class Worth {
  private BigInteger numerator = BigInteger.ZERO;
  private BigInteger denominator = BigInteger.ONE;

  /**
   * Adds a weight.
   *
   * @param value money for a unit of it
   */
  public void add(Weight weight, BigFraction value) {
    var parts = value.getDenominator();
    if (!denominator.equals(parts)) {
      var common = denominator.gcd(parts);
      var factor = parts.divide(common);
      numerator = numerator.multiply(factor);
      denominator = denominator.multiply(factor);
    }
    numerator =
        numerator.add(
            value
                .getNumerator()
                .multiply(denominator.divide(parts))
                .multiply(BigInteger.valueOf(weight.hundredThousandths())));
  }

  /** The sum so far, in the unit of the values. */
  public BigFraction sum() {
    return BigFraction.of(numerator, denominator.multiply(Weight.UNIT));
  }
}
