package gambrel.pages.words;

import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Weight;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.shop.Scale;
import gambrel.trade.weighing.Weighing;
import java.util.Collection;

/**
 * With how many decimals weights are printed: as many as the finest of their scales shows, and more
 * only where a weight needs them, so that printed parts add up to a printed whole.
 */
public final class WeightDecimals {
  private static final int MOST = Weight.OUTPUT_DECIMALS;

  private WeightDecimals() {}

  /** WeightDecimals of the finest of the scales of {@code weighings}; none where there are none. */
  public static int of(Collection<Weighing> weighings, WeightUnit unit) {
    return weighings.stream().mapToInt(w -> of(w.scale(), unit)).max().orElse(0);
  }

  /** WeightDecimals of a scale's division, in the shop's unit; three at most. */
  public static int of(Scale scale, WeightUnit unit) {
    if (scale.unit() == unit) {
      return Math.max(0, Math.min(MOST, scale.division().stripTrailingZeros().scale()));
    }
    var division = scale.unit().convert(scale.division(), unit);
    int decimals = 0;
    while (decimals < MOST && Exact.round(division, decimals).signum() == 0) {
      decimals++;
    }
    return decimals;
  }

  /** The fewest decimals, from {@code least} to three, at which no weight is rounded. */
  public static int fitting(int least, Collection<Weight> weights) {
    return weights.stream().mapToInt(WeightDecimals::of).reduce(least, Math::max);
  }

  private static int of(Weight weight) {
    return Math.max(0, Math.min(MOST, weight.decimal().stripTrailingZeros().scale()));
  }
}
