package gambrel.month;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Median and middle half of some values.
 *
 * <p>Quartiles lie at position (n − 1)·p + 1 of the sorted values, between two of them in proportion
 * (type 7 of Hyndman and Fan, Sample Quantiles in Statistical Packages, 1996).
 *
 * @param lower first quartile
 * @param median middle value
 * @param upper third quartile
 * @param least smallest value
 * @param most largest value
 * @param number how many values
 */
public record Spread(
    BigFraction lower,
    BigFraction median,
    BigFraction upper,
    BigFraction least,
    BigFraction most,
    int number) {

  /** The spread of {@code values}; empty if there are none. */
  public static Optional<Spread> of(Collection<BigFraction> values) {
    if (values.isEmpty()) {
      return Optional.empty();
    }
    var sorted = values.stream().sorted().toList();
    return Optional.of(
        new Spread(
            at(sorted, 1),
            at(sorted, 2),
            at(sorted, 3),
            sorted.get(0),
            sorted.get(sorted.size() - 1),
            sorted.size()));
  }

  private static BigFraction at(List<BigFraction> sorted, int quarters) {
    int position = (sorted.size() - 1) * quarters;
    int index = position / 4;
    var value = sorted.get(index);
    return position % 4 == 0
        ? value
        : value.add(
            sorted.get(index + 1).subtract(value).multiply(BigFraction.of(position % 4, 4)));
  }
}
