package gambrel.pages.owner.month;

import gambrel.insight.month.figures.BodyFigure;
import gambrel.insight.month.figures.MonthFigure;
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
 * Prints the weights of a month with as many decimals as the finest scale behind them shows.
 *
 * @param formats how numbers are printed
 * @param unit the shop's unit
 * @param hung decimals of rail weights
 * @param boning decimals of weights into the boning room
 * @param cut decimals of weights from the boning room, and of the bench loss
 * @param prose decimals in a sentence: those of the coarser scales, or of the boning room if no
 *     body was weighed on the rail
 */
record WeightPrinter(Formats formats, WeightUnit unit, int hung, int boning, int cut, int prose) {

  /** For the weights of {@code bodies}. */
  static WeightPrinter of(Collection<BodyBalance> bodies, Formats formats, WeightUnit unit) {
    var rail = weighings(bodies, b -> b.weighings().rail());
    var boning = weighings(bodies, BodyBalance::boningWeighings);
    var out = weighings(bodies, b -> b.weighings().out());
    int hung = WeightDecimals.of(rail, unit);
    int into = WeightDecimals.of(boning, unit);
    int cut = Math.max(into, WeightDecimals.of(out, unit));
    int prose = rail.isEmpty() ? cut : Math.min(hung, cut);
    return new WeightPrinter(formats, unit, hung, into, cut, prose);
  }

  private static List<Weighing> weighings(
      Collection<BodyBalance> bodies, Function<BodyBalance, List<Weighing>> which) {
    return bodies.stream().flatMap(body -> which.apply(body).stream()).toList();
  }

  /** A rail weight without its unit; empty if unknown. */
  String hung(Optional<Weight> weight) {
    return weight.map(w -> formats.bareWeight(w, hung)).orElse("");
  }

  /** A weight from the boning room without its unit; empty if unknown. */
  String cut(Optional<Weight> weight) {
    return weight.map(w -> formats.bareWeight(w, cut)).orElse("");
  }

  /** A weight into the boning room without its unit; empty if unknown. */
  String boning(Optional<Weight> weight) {
    return weight.map(w -> formats.bareWeight(w, boning)).orElse("");
  }

  /** A weight lost, without its unit; empty if unknown. */
  String lost(BodyFigure loss, Optional<MonthFigure> figure) {
    var weight = figure.flatMap(MonthFigure::value).map(Weight::of);
    return loss.isOnRail() ? hung(weight) : cut(weight);
  }

  /** A weight with its unit in a sentence. */
  String inProse(Weight weight) {
    return formats.weight(weight, prose);
  }
}
