package gambrel.shrink;

import gambrel.measure.Exact;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Mean and standard deviation of some values, without a rounding on the way.
 *
 * @param values at least one
 */
public record Sample(List<BigFraction> values) {
  private static final int DECIMALS = 30;

  /** Copies the values. */
  public Sample {
    values = List.copyOf(values);
  }

  /** The sample of {@code values}. */
  public static Sample of(Collection<BigFraction> values) {
    return new Sample(List.copyOf(values));
  }

  /** How many values there are. */
  public int number() {
    return values.size();
  }

  /** The mean. */
  public BigFraction mean() {
    return values.stream().reduce(BigFraction.ZERO, BigFraction::add).divide(number());
  }

  /** The sum of squared distances from the mean over n − 1; needs two values. */
  public BigFraction variance() {
    var mean = mean();
    return values.stream()
        .map(value -> value.subtract(mean))
        .map(distance -> distance.multiply(distance))
        .reduce(BigFraction.ZERO, BigFraction::add)
        .divide(number() - 1);
  }

  /** The root of {@link #variance()}, to thirty decimals. */
  public BigDecimal standardDeviation() {
    return Exact.sqrt(variance(), DECIMALS);
  }
}
