package gambrel.pages.words;

import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Weight;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.shop.Scale;
import gambrel.trade.weighing.Weighing;
import java.math.BigDecimal;
import java.util.Collection;

/**
 * Decides with how many decimals weights are printed: as many as the finest of their scales shows,
 * and more only if a weight needs them, so that printed parts add up to a printed whole.
 */
public final class WeightDecimals {
  private static final int MOST = Weight.OUTPUT_DECIMALS;

  private WeightDecimals() {}

  /** The decimals of the finest scale of {@code weighings}; 0 without weighings. */
  public static int of(Collection<Weighing> weighings, WeightUnit unit) {
    return weighings.stream().mapToInt(w -> of(w.scale(), unit)).max().orElse(0);
  }

  /** The decimals of a scale's division in the shop's unit; three at most. */
  private static int of(Scale scale, WeightUnit unit) {
    if (scale.unit() == unit) {
      return of(scale.division());
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
    return weights.stream().mapToInt(w -> of(w.decimal())).reduce(least, Math::max);
  }

  private static int of(BigDecimal number) {
    return Math.max(0, Math.min(MOST, number.stripTrailingZeros().scale()));
  }
}
