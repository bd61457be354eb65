package gambrel.pages.words;

import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Weight;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Rounds the parts of a whole so that they add up as printed: all are rounded down, then the rest
 * goes to the largest remainders, of equal ones to the first.
 */
public final class PrintedShares {
  private static final BigFraction THOUSAND = BigFraction.of(1000);

  private PrintedShares() {}

  /** A weight's share of {@code whole} in tenths of a percent, rounded half away from zero. */
  public static long tenths(Weight part, Weight whole) {
    return Exact.units(part.percentOf(whole), 1);
  }

  /**
   * The shares of parts in tenths of a percent of {@code whole}.
   *
   * @param total what they add up to, in tenths: the printed share of the sum of the parts
   */
  public static List<Long> tenths(long total, List<Weight> parts, Weight whole) {
    var exact =
        parts.stream()
            .map(part -> part.fraction().multiply(THOUSAND).divide(whole.fraction()))
            .toList();
    return rounded(total, exact);
  }

  /** The weights with {@code decimals} places, so that they add up to their rounded sum. */
  public static List<Weight> weights(List<Weight> parts, int decimals) {
    var unit = BigFraction.of(BigInteger.TEN.pow(decimals));
    long total = Exact.units(Weight.sum(parts).fraction(), decimals);
    var exact = parts.stream().map(part -> part.fraction().multiply(unit)).toList();
    return rounded(total, exact).stream()
        .map(units -> Weight.of(BigDecimal.valueOf(units, decimals)))
        .toList();
  }

  private static List<Long> rounded(long total, List<BigFraction> exact) {
    var rounded = new ArrayList<Long>();
    exact.forEach(
        value -> rounded.add(value.bigDecimalValue(0, RoundingMode.FLOOR).longValueExact()));
    long left = total - rounded.stream().mapToLong(Long::longValue).sum();
    var up =
        IntStream.range(0, exact.size())
            .boxed()
            .sorted(
                Comparator.comparing((Integer i) -> exact.get(i).subtract(rounded.get(i)))
                    .reversed())
            .limit(Math.max(0, left))
            .toList();
    up.forEach(i -> rounded.set(i, rounded.get(i) + 1));
    return rounded;
  }
}
