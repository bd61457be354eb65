package gambrel.pages.words;

import gambrel.trade.measure.Division;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Weight;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/** Percentages of a printed table, in tenths, that add up to exactly 100.0. */
public final class Shares100 {
  private static final long WHOLE = 1000;

  private Shares100() {}

  /**
   * The weights with so many decimals, by largest remainder, so that they add up to their printed
   * sum. With a negative weight each is rounded alone.
   */
  public static List<Weight> rounded(List<Weight> weights, int decimals) {
    if (weights.isEmpty() || weights.stream().anyMatch(Weight::isNegative)) {
      return weights.stream()
          .map(w -> printed(Exact.units(w.fraction(), decimals), decimals))
          .toList();
    }
    var sizes = byPlace(weights);
    long whole = Exact.units(Weight.sum(weights).fraction(), decimals);
    return Division.divide(whole, sizes).values().stream().map(u -> printed(u, decimals)).toList();
  }

  private static Weight printed(long units, int decimals) {
    return Weight.of(BigDecimal.valueOf(units, decimals));
  }

  /** Sizes under keys that sort as the weights are listed. */
  private static TreeMap<String, BigFraction> byPlace(List<Weight> weights) {
    var sizes = new TreeMap<String, BigFraction>();
    weights.forEach(w -> sizes.put(String.format("%09d", sizes.size()), w.fraction()));
    return sizes;
  }

  /**
   * Each weight's share of their sum, in tenths of a percent, by largest remainder. With a negative
   * weight each share is rounded alone. If the sum is not positive, all shares are 0.
   */
  public static List<Long> tenths(List<Weight> weights) {
    var sum = Weight.sum(weights);
    if (sum.hundredThousandths() <= 0) {
      return weights.stream().map(weight -> 0L).toList();
    }
    if (weights.stream().anyMatch(Weight::isNegative)) {
      return weights.stream().map(w -> Exact.units(w.percentOf(sum), 1)).toList();
    }
    return new ArrayList<>(Division.divide(WHOLE, byPlace(weights)).values());
  }
}
