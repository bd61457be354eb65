package gambrel.insight.statistics;

import gambrel.trade.measure.Exact;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Mean and standard deviation of some values, carried to fifty digits: sums of exact ratios of
 * hundreds of bodies would have denominators without end.
 *
 * @param values at least one
 */
public record Sample(List<BigFraction> values) {
  private static final MathContext CARRIED = new MathContext(50, RoundingMode.HALF_UP);
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

  /** The mean, to thirty decimals. */
  public BigFraction mean() {
    return Exact.fraction(carriedMean().setScale(DECIMALS, RoundingMode.HALF_UP));
  }

  private BigDecimal carriedMean() {
    return values.stream()
        .map(Sample::decimal)
        .reduce(BigDecimal.ZERO, BigDecimal::add)
        .divide(BigDecimal.valueOf(number()), CARRIED);
  }

  private static BigDecimal decimal(BigFraction value) {
    return new BigDecimal(value.getNumerator())
        .divide(new BigDecimal(value.getDenominator()), CARRIED);
  }

  /** The root of the squared distances from the mean over n − 1; needs two values. */
  public BigDecimal standardDeviation() {
    var mean = carriedMean();
    return values.stream()
        .map(value -> decimal(value).subtract(mean))
        .map(distance -> distance.multiply(distance))
        .reduce(BigDecimal.ZERO, BigDecimal::add)
        .divide(BigDecimal.valueOf(number() - 1L), CARRIED)
        .sqrt(CARRIED);
  }
}
