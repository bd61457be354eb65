package gambrel.insight.statistics;

import gambrel.trade.measure.Exact;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Mean and standard deviation of some values, computed with fifty digits: exact sums of the ratios
 * of hundreds of bodies would have very long denominators.
 *
 * @param values at least one
 */
public record Sample(List<BigFraction> values) {
  /** Fifty digits: results of thirty are rounded from it correctly. */
  static final MathContext CARRIED = new MathContext(50, RoundingMode.HALF_UP);

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
    return mean(values.stream().map(Sample::decimal).toList());
  }

  /** The mean of decimals, to fifty digits; needs a value. */
  static BigDecimal mean(List<BigDecimal> values) {
    return sum(values).divide(BigDecimal.valueOf(values.size()), CARRIED);
  }

  private static BigDecimal sum(List<BigDecimal> values) {
    return values.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /** A fraction as a decimal of fifty digits. */
  static BigDecimal decimal(BigFraction value) {
    return new BigDecimal(value.getNumerator())
        .divide(new BigDecimal(value.getDenominator()), CARRIED);
  }

  /** The root of the squared distances from the mean over n − 1; needs two values. */
  public BigDecimal standardDeviation() {
    var mean = carriedMean();
    var squares = values.stream().map(value -> decimal(value).subtract(mean).pow(2)).toList();
    return sum(squares).divide(BigDecimal.valueOf(number() - 1L), CARRIED).sqrt(CARRIED);
  }
}
