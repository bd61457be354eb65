package gambrel.insight.month.figures;

import gambrel.trade.measure.Share;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
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
    return of(values, value -> value);
  }

  /** The spread of shares, in per cent; empty if there are none. */
  public static Optional<Spread> ofShares(Collection<Share> shares) {
    return of(shares, Share::percent);
  }

  private static <T extends Comparable<T>> Optional<Spread> of(
      Collection<T> values, Function<T, BigFraction> number) {
    var sorted = values.stream().sorted().toList();
    return sorted.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Spread(
                at(sorted, 1, number),
                at(sorted, 2, number),
                at(sorted, 3, number),
                sorted.size()));
  }

  /** The value below which so many quarters of the values lie. */
  private static <T> BigFraction at(List<T> sorted, int quarters, Function<T, BigFraction> number) {
    int position = (sorted.size() - 1) * quarters;
    var value = number.apply(sorted.get(position / 4));
    if (position % 4 == 0) {
      return value;
    }
    var step = number.apply(sorted.get(position / 4 + 1)).subtract(value);
    return value.add(step.multiply(BigFraction.of(position % 4, 4)));
  }
}
