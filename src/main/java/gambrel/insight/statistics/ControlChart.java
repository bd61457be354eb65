package gambrel.insight.statistics;

import gambrel.trade.measure.Exact;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * An individuals and moving-range control chart: centre is the mean, limits are the centre ± 3 ·
 * mean moving range / 1.128 (NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2). Signals are
 * the Western Electric rules of section 6.3.2.
 */
public final class ControlChart {
  /** The code of the rule that a value lies beyond a limit. */
  public static final String BEYOND_LIMITS = "beyond-limits";

  private static final MathContext SETTLED = new MathContext(30, RoundingMode.HALF_UP);

  /** Distances from the centre count to so many decimals: a mean of equal values is not exact. */
  private static final int DECIMALS = 30;

  /** The zone of a value beyond a limit. */
  private static final int BEYOND = 4;

  private static final BigDecimal D2 = new BigDecimal("1.128");
  private static final BigDecimal THREE = BigDecimal.valueOf(3);

  private final List<BigDecimal> values;
  private final BitSet starts = new BitSet();
  private final Optional<BigDecimal> centre;
  private final Optional<BigDecimal> sigma;

  /** Of 0, 1, 2 and 3 sigmas, beyond how many each value lies; negative below the centre. */
  private final int[] zones;

  /**
   * The chart of {@code values} in order, with limits from the first ones alone.
   *
   * @param restarts the values before which it is too long ago that the last one was taken: no
   *     moving range and no run includes both
   * @param baseline how many values the limits are computed from
   */
  public ControlChart(List<BigFraction> values, BitSet restarts, int baseline) {
    this.values = values.stream().map(Mean::decimal).toList();
    this.starts.or(restarts);
    this.starts.set(0);
    this.centre = mean(this.values.subList(0, baseline));
    this.sigma = mean(movingRanges(baseline)).map(range -> range.divide(D2, Mean.CARRIED));
    this.zones = this.values.stream().mapToInt(this::zone).toArray();
  }

  private int zone(BigDecimal value) {
    if (sigma.isEmpty()) {
      return 0;
    }
    var distance = value.subtract(centre.orElseThrow()).setScale(DECIMALS, RoundingMode.HALF_UP);
    int zone = distance.signum();
    if (sigma.get().signum() == 0) {
      return zone * BEYOND;
    }
    for (var limit = sigma.get();
        Math.abs(zone) <= 3 && distance.abs().compareTo(limit) > 0;
        limit = limit.add(sigma.get())) {
      zone += distance.signum();
    }
    return zone;
  }

  /** A chart without restarts. */
  public static ControlChart of(List<BigFraction> values, int baseline) {
    return new ControlChart(values, new BitSet(), baseline);
  }

  private static Optional<BigDecimal> mean(List<BigDecimal> values) {
    return Optional.of(values).filter(some -> !some.isEmpty()).map(Mean::ofDecimals);
  }

  private List<BigDecimal> movingRanges(int number) {
    return IntStream.range(0, number)
        .mapToObj(this::movingRange)
        .flatMap(Optional::stream)
        .toList();
  }

  /** Distance of the value at {@code index} from the one before; empty where the chart restarts. */
  public Optional<BigDecimal> movingRange(int index) {
    return starts.get(index)
        ? Optional.empty()
        : Optional.of(values.get(index).subtract(values.get(index - 1)).abs());
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

  /** The codes of the rules that the value at {@code index} breaks. */
  public List<String> signals(int index) {
    var signals = new ArrayList<String>();
    addRun(signals, BEYOND_LIMITS, index, 1, 3, 1);
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

  /**
   * How many of the last {@code window} values lie beyond so many sigmas; 0 if the last one does
   * not, or if the chart restarts within the window.
   */
  private int beyond(int index, int window, int sigmas, int side) {
    int first = index + 1 - window;
    boolean fits = first >= 0 && starts.get(first + 1, index + 1).isEmpty();
    return fits && zones[index] * side > sigmas
        ? (int) IntStream.rangeClosed(first, index).filter(i -> zones[i] * side > sigmas).count()
        : 0;
  }

  /** {@code value} with three decimals, rounded half away from zero, for data files. */
  public static BigDecimal output(BigDecimal value) {
    return Exact.round(Exact.fraction(value), 3);
  }
}
