package gambrel.insight.month.figures;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Median and middle half of some values.
 *
 * <p>A quartile lies at position (n − 1)·p + 1 of the sorted values; between two positions it is
 * interpolated (type 7 of Hyndman and Fan, Sample Quantiles in Statistical Packages, 1996).
 *
 * @param lower first quartile
 * @param median middle value
 * @param upper third quartile
 * @param number how many values
 */
public record Spread(BigFraction lower, BigFraction median, BigFraction upper, int number) {

  /** The spread of {@code values}; empty if there are none. */
  public static Optional<Spread> of(Collection<BigFraction> values) {
    var sorted = values.stream().sorted().toList();
    return sorted.isEmpty()
        ? Optional.empty()
        : Optional.of(new Spread(at(sorted, 1), at(sorted, 2), at(sorted, 3), sorted.size()));
  }

  /** The value below which so many quarters of the values lie. */
  private static BigFraction at(List<BigFraction> sorted, int quarters) {
    int position = (sorted.size() - 1) * quarters;
    var value = sorted.get(position / 4);
    if (position % 4 == 0) {
      return value;
    }
    var step = sorted.get(position / 4 + 1).subtract(value);
    return value.add(step.multiply(BigFraction.of(position % 4, 4)));
  }
}
