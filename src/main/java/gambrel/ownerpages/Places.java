package gambrel.ownerpages;

import gambrel.balance.BodyBalance;
import gambrel.measure.Weight;
import gambrel.measure.WeightUnit;
import gambrel.weighing.Weighing;
import gambrel.wording.Decimals;
import gambrel.wording.Formats;
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
record Places(Formats formats, WeightUnit unit, int hung, int cut, int prose) {

  /** For the weights of {@code bodies}. */
  static Places of(Collection<BodyBalance> bodies, Formats formats, WeightUnit unit) {
    var rail = weighings(bodies, b -> b.weighings().rail());
    int hung = Decimals.of(rail, unit);
    int boning = Decimals.of(weighings(bodies, BodyBalance::boningWeighings), unit);
    int out = Decimals.of(weighings(bodies, b -> b.weighings().out()), unit);
    int cut = Math.max(boning, out);
    return new Places(formats, unit, hung, cut, rail.isEmpty() ? cut : Math.min(hung, cut));
  }

  private static List<Weighing> weighings(
      Collection<BodyBalance> bodies, Function<BodyBalance, List<Weighing>> which) {
    return bodies.stream().flatMap(body -> which.apply(body).stream()).toList();
  }

  /** Rail weights for a column; empty where not known. */
  String hung(Optional<Weight> weight) {
    return weight.map(w -> formats.bareWeight(w, hung)).orElse("");
  }

  /** What came off the block, for a column; empty where not known. */
  String cut(Optional<Weight> weight) {
    return weight.map(w -> formats.bareWeight(w, cut)).orElse("");
  }

  /** The weight of a body into the boning room, for a column; empty where not known. */
  String boning(Optional<BodyBalance> balance) {
    return balance
        .flatMap(
            b ->
                b.boning()
                    .map(w -> formats.bareWeight(w, Decimals.of(b.boningWeighings(), unit))))
        .orElse("");
  }

  /** A sum with its unit and no more decimals than it has, {@code least} at least. */
  String sum(Weight weight, int least) {
    return formats.weight(weight, Decimals.fitting(least, List.of(weight)));
  }

  /** A weight with its unit in a sentence, rounded to what a rail scale shows. */
  String inProse(Weight weight) {
    return formats.weight(weight, prose);
  }
}
