package gambrel.shrink;

import gambrel.measure.Exact;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * An individuals and moving-range control chart: centre is the mean, limits are the centre ± 3 · mean
 * moving range / 1.128 (NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2). Signals are the
 * Western Electric rules of section 6.3.2.
 */
public final class ControlChart {
  /** Carried far beyond three decimals, so that the last rounding is right. */
  private static final MathContext CARRIED = new MathContext(50, RoundingMode.HALF_UP);

  private static final MathContext SETTLED = new MathContext(30, RoundingMode.HALF_UP);
  private static final BigDecimal D2 = new BigDecimal("1.128");
  private static final BigDecimal THREE = BigDecimal.valueOf(3);

  private final List<BigDecimal> values;
  private final Optional<BigDecimal> centre;
  private final Optional<BigDecimal> sigma;

  private ControlChart(List<BigDecimal> values) {
    this.values = values;
    this.centre = mean(values);
    this.sigma = mean(movingRanges(values)).map(range -> range.divide(D2, CARRIED));
  }

  /** The chart of {@code values} in order. */
  public static ControlChart of(List<BigFraction> values) {
    return new ControlChart(values.stream().map(ControlChart::decimal).toList());
  }

  private static BigDecimal decimal(BigFraction value) {
    return new BigDecimal(value.getNumerator())
        .divide(new BigDecimal(value.getDenominator()), CARRIED);
  }

  private static Optional<BigDecimal> mean(List<BigDecimal> values) {
    return values.isEmpty()
        ? Optional.empty()
        : Optional.of(
            values.stream()
                .reduce(BigDecimal.ZERO, BigDecimal::add)
                .divide(BigDecimal.valueOf(values.size()), CARRIED));
  }

  private static List<BigDecimal> movingRanges(List<BigDecimal> values) {
    var ranges = new ArrayList<BigDecimal>();
    for (int i = 1; i < values.size(); i++) {
      ranges.add(values.get(i).subtract(values.get(i - 1)).abs());
    }
    return ranges;
  }

  /** The mean; empty without values. */
  public Optional<BigDecimal> centre() {
    return centre.map(value -> value.round(SETTLED));
  }

  /** The lower limit, not clipped; empty with fewer than two values. */
  public Optional<BigDecimal> lower() {
    return limit(THREE.negate());
  }

  /** The upper limit; empty with fewer than two values. */
  public Optional<BigDecimal> upper() {
    return limit(THREE);
  }

  private Optional<BigDecimal> limit(BigDecimal sigmas) {
    return sigma.map(s -> centre.orElseThrow().add(s.multiply(sigmas)).round(SETTLED));
  }

  /** The rules that the value at {@code index} breaks, by their codes. */
  public List<String> signals(int index) {
    if (sigma.isEmpty() || sigma.get().signum() == 0) {
      return List.of();
    }
    var signals = new ArrayList<String>();
    addRun(signals, "beyond-limits", index, 1, 3, 1);
    addRun(signals, "two-of-three", index, 3, 2, 2);
    addRun(signals, "four-of-five", index, 5, 1, 4);
    addRun(signals, "eight-on-one-side", index, 8, 0, 8);
    return signals;
  }

  private void addRun(
      List<String> signals, String code, int index, int window, int sigmas, int least) {
    if (beyond(index, window, sigmas, 1) >= least || beyond(index, window, sigmas, -1) >= least) {
      signals.add(code);
    }
  }

  /** How many of the last {@code window} values lie beyond so many sigmas; 0 if the last does not. */
  private int beyond(int index, int window, int sigmas, int side) {
    if (index + 1 < window || !isBeyond(index, sigmas, side)) {
      return 0;
    }
    int found = 0;
    for (int i = index - window + 1; i <= index; i++) {
      found += isBeyond(i, sigmas, side) ? 1 : 0;
    }
    return found;
  }

  private boolean isBeyond(int index, int sigmas, int side) {
    var distance = values.get(index).subtract(centre.orElseThrow());
    var limit = sigma.orElseThrow().multiply(BigDecimal.valueOf(sigmas));
    return distance.multiply(BigDecimal.valueOf(side)).compareTo(limit) > 0;
  }

  /** {@code value} with three decimals, half away from zero, as data files print it. */
  public static BigDecimal output(BigDecimal value) {
    return Exact.round(Exact.fraction(value), 3);
  }
}
