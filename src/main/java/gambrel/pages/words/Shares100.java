package gambrel.pages.words;

import gambrel.trade.measure.Division;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Weight;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/** Percentages of a printed table, in tenths, that add up to exactly 100.0. */
public final class Shares100 {
  private static final long WHOLE = 1000;

  private Shares100() {}

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
    var shares = new TreeMap<String, BigFraction>();
    // Keys that sort as the weights are listed.
    weights.forEach(w -> shares.put(String.format("%09d", shares.size()), w.fraction()));
    return new ArrayList<>(Division.divide(WHOLE, shares).values());
  }
}
