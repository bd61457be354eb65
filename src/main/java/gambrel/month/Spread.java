package gambrel.month;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
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
    return of(values.stream().sorted().toList(), Function.identity());
  }

  /**
   * The spread of shares, in per cent; empty if there are none. No whole may be nothing. Shares are
   * many: only those are made fractions that the spread is read off.
   */
  public static Optional<Spread> ofPercent(Collection<Ratio> shares) {
    var sorted = shares.stream().sorted(Ratio::compareShares).toList();
    return of(sorted, share -> share.percent().orElseThrow());
  }

  private static <T> Optional<Spread> of(List<T> sorted, Function<T, BigFraction> value) {
    return sorted.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Spread(
                at(sorted, 1, value),
                at(sorted, 2, value),
                at(sorted, 3, value),
                value.apply(sorted.get(0)),
                value.apply(sorted.get(sorted.size() - 1)),
                sorted.size()));
  }

  private static <T> BigFraction at(
      List<T> sorted, int quarters, Function<T, BigFraction> valueOf) {
    int position = (sorted.size() - 1) * quarters;
    int index = position / 4;
    var value = valueOf.apply(sorted.get(index));
    return position % 4 == 0
        ? value
        : value.add(
            valueOf
                .apply(sorted.get(index + 1))
                .subtract(value)
                .multiply(BigFraction.of(position % 4, 4)));
  }
}
