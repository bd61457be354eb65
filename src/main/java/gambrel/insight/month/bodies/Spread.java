package gambrel.insight.month.bodies;

import gambrel.trade.measure.Share;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Median and middle half of some values.
 *
 * <p>Quartiles lie at position (n − 1)·p + 1 of the sorted values, between two of them in
 * proportion (type 7 of Hyndman and Fan, Sample Quantiles in Statistical Packages, 1996).
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
  public static Optional<Spread> ofPercent(Collection<Share> shares) {
    return of(shares.stream().sorted(Spread::compareShares).toList(), Share::percent);
  }

  /**
   * Which of two is the smaller share, exactly: parts times the other's whole, in 128 bits. Neither
   * whole may be zero.
   */
  static int compareShares(Share one, Share other) {
    int bySize =
        compareProducts(
            one.part().hundredThousandths(),
            other.whole().hundredThousandths(),
            other.part().hundredThousandths(),
            one.whole().hundredThousandths());
    return one.whole().isNegative() == other.whole().isNegative() ? bySize : -bySize;
  }

  private static int compareProducts(long a, long b, long c, long d) {
    int high = Long.compare(Math.multiplyHigh(a, b), Math.multiplyHigh(c, d));
    return high == 0 ? Long.compareUnsigned(a * b, c * d) : high;
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
