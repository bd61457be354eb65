package gambrel.insight.statistics;

import gambrel.trade.measure.Exact;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The mean of values, computed with fifty digits: exact sums of the ratios of hundreds of bodies
 * would have very long denominators.
 */
public final class Mean {
  /** Fifty digits: results of thirty are rounded from it correctly. */
  static final MathContext CARRIED = new MathContext(50, RoundingMode.HALF_UP);

  private static final int DECIMALS = 30;

  private Mean() {}

  /** The mean of {@code values}, at least one, to thirty decimals. */
  public static BigFraction of(List<BigFraction> values) {
    var mean = ofDecimals(values.stream().map(Mean::decimal).toList());
    return Exact.fraction(mean.setScale(DECIMALS, RoundingMode.HALF_UP));
  }

  /** The mean of decimals, at least one, to fifty digits. */
  static BigDecimal ofDecimals(List<BigDecimal> values) {
    return values.stream()
        .reduce(BigDecimal.ZERO, BigDecimal::add)
        .divide(BigDecimal.valueOf(values.size()), CARRIED);
  }

  /** A fraction as a decimal of fifty digits. */
  static BigDecimal decimal(BigFraction value) {
    return new BigDecimal(value.getNumerator())
        .divide(new BigDecimal(value.getDenominator()), CARRIED);
  }
}
