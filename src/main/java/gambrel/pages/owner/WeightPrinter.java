package gambrel.pages.owner;

import gambrel.pages.words.Formats;
import gambrel.pages.words.WeightDecimals;
import gambrel.trade.balance.BodyBalance;
import gambrel.trade.measure.Weight;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.weighing.Weighing;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Weights with as many decimals as the finest scale behind them shows.
 *
 * @param formats how numbers are printed
 * @param unit the shop's unit
 * @param hung decimals of rail weights
 * @param cut decimals of everything that came off the block, and of the bench loss
 * @param prose decimals in a sentence: those of the rail, where there is one
 */
public record WeightPrinter(Formats formats, WeightUnit unit, int hung, int cut, int prose) {

  /** For the weights of {@code bodies}. */
  public static WeightPrinter of(Collection<BodyBalance> bodies, Formats formats, WeightUnit unit) {
    var rail = weighings(bodies, b -> b.weighings().rail());
    int hung = WeightDecimals.of(rail, unit);
    int boning = WeightDecimals.of(weighings(bodies, BodyBalance::boningWeighings), unit);
    int out = WeightDecimals.of(weighings(bodies, b -> b.weighings().out()), unit);
    int cut = Math.max(boning, out);
    return new WeightPrinter(formats, unit, hung, cut, rail.isEmpty() ? cut : Math.min(hung, cut));
  }

  private static List<Weighing> weighings(
      Collection<BodyBalance> bodies, Function<BodyBalance, List<Weighing>> which) {
    return bodies.stream().flatMap(body -> which.apply(body).stream()).toList();
  }

  /** Rail weights for a column; empty where not known. */
  public String hung(Optional<Weight> weight) {
    return weight.map(w -> formats.bareWeight(w, hung)).orElse("");
  }

  /** What came off the block, for a column; empty where not known. */
  public String cut(Optional<Weight> weight) {
    return weight.map(w -> formats.bareWeight(w, cut)).orElse("");
  }

  /** The weight of a body into the boning room, for a column; empty where not known. */
  public String boning(Optional<BodyBalance> balance) {
    return balance
        .flatMap(
            b ->
                b.boning()
                    .map(w -> formats.bareWeight(w, WeightDecimals.of(b.boningWeighings(), unit))))
        .orElse("");
  }

  /** A sum with its unit and no more decimals than it has, {@code least} at least. */
  public String sum(Weight weight, int least) {
    return formats.weight(weight, WeightDecimals.fitting(least, List.of(weight)));
  }

  /** A weight with its unit in a sentence, rounded to what a rail scale shows. */
  public String inProse(Weight weight) {
    return formats.weight(weight, prose);
  }
}
