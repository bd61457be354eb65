package gambrel.insight.cause;

import java.util.List;

/**
 * The usual values of a figure in this shop.
 *
 * @param middle the median, in millionths
 * @param spread about one standard deviation, in millionths, above zero
 */
record UsualRange(long middle, long spread) {
  private static final long MOST_SPREADS = 10;

  /** The strain of a value ten or more spreads from the middle. */
  static final long MOST_STRAIN = strainOf(MOST_SPREADS);

  /** The strain of a value so many spreads from the middle. */
  static long strainOf(long spreads) {
    return 100 * spreads * spreads;
  }

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
      return MOST_STRAIN;
    }
    long tenths = distance * 10 / spread;
    return tenths * tenths;
  }
}
