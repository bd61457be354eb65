package gambrel.insight.cause;

import java.util.List;

/**
 * What is usual of a figure: the middle of the shop's own values and how far they spread.
 *
 * @param middle in millionths
 * @param spread in millionths, above zero
 */
record UsualRange(long middle, long spread) {
  /** With fewer values there is no telling what is usual. */
  static final int LEAST_VALUES = 5;

  /** Strain of one spread. */
  static final long ONE = 100;

  /** Strain is not counted beyond ten spreads. */
  static final long MOST_SPREADS = 10;

  /** Median and median deviation, which a few odd values do not move. */
  static UsualRange of(List<Long> values, long leastSpread) {
    long middle = median(values);
    long deviation = median(values.stream().map(v -> Math.abs(v - middle)).toList());
    // The median deviation of a normal distribution is 0.6745 of its standard deviation.
    return new UsualRange(middle, Math.max(leastSpread, deviation * 3 / 2));
  }

  private static long median(List<Long> values) {
    var sorted = values.stream().sorted().toList();
    int half = sorted.size() / 2;
    return sorted.size() % 2 == 1
        ? sorted.get(half)
        : (sorted.get(half - 1) + sorted.get(half)) / 2;
  }

  /** How odd a value is: the square of its distance in spreads, in hundredths. */
  long strain(long value) {
    long distance = Math.abs(value - middle);
    if (distance >= MOST_SPREADS * spread) {
      return MOST_SPREADS * MOST_SPREADS * ONE;
    }
    long tenths = distance * 10 / spread;
    return tenths * tenths;
  }
}
