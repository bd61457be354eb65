package gambrel.insight.month.findings;

import gambrel.insight.month.bodies.BodyFigure;
import gambrel.insight.month.bodies.MonthBody;
import gambrel.insight.month.bodies.MonthRecords;
import gambrel.insight.month.bodies.Ownership;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Money;
import gambrel.trade.measure.Weight;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Currency;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/** Weights and costs of a loss by owner; those of different owners are never added. */
public final class OwnerCosts {
  private OwnerCosts() {}

  /**
   * The sum of a weight over the bodies of each owner, in the shop's unit.
   *
   * @param weight of one body; empty if unknown
   */
  public static Map<Ownership, BigFraction> weights(
      Collection<MonthBody> bodies, Function<MonthBody, Optional<Weight>> weight) {
    var sums = new EnumMap<Ownership, BigFraction>(Ownership.class);
    for (var body : bodies) {
      weight.apply(body).ifPresent(w -> sums.merge(body.whose(), w.fraction(), BigFraction::add));
    }
    return sums;
  }

  /** A percentage of the weight that a loss is a share of, by owner, without its sign. */
  public static Map<Ownership, BigFraction> lost(
      Collection<MonthBody> bodies, BodyFigure loss, BigFraction percent) {
    var lost = weights(bodies, body -> body.share(loss).map(share -> share.whole()));
    lost.replaceAll((whose, whole) -> whole.multiply(percent).divide(100).abs());
    return lost;
  }

  /** The cost of weights lost on the rail; none where values are missing. */
  public static List<Evidence.Cost> onRail(
      Map<Ownership, BigFraction> weights, Species species, MonthRecords records) {
    return costs(weights, records.rail().of(species), records.settings().currency());
  }

  /** The weights as evidence. */
  public static Evidence.Borne borne(Map<Ownership, BigFraction> weights) {
    var borne = new EnumMap<Ownership, Weight>(Ownership.class);
    weights.forEach((whose, weight) -> borne.put(whose, Weight.of(weight)));
    return new Evidence.Borne(borne);
  }

  /**
   * The cost to each owner whose weight is not zero.
   *
   * @param rate money in the major unit for a unit of weight; if it is empty, there are no costs
   */
  public static List<Evidence.Cost> costs(
      Map<Ownership, BigFraction> weights, Optional<BigFraction> rate, Currency currency) {
    var costs = new ArrayList<Evidence.Cost>();
    weights.forEach(
        (whose, weight) ->
            rate.filter(r -> weight.signum() != 0)
                .map(r -> new Evidence.Cost(whose, Money.of(weight.multiply(r), currency)))
                .ifPresent(costs::add));
    return costs;
  }

  /** A cost to the shop alone. */
  public static List<Evidence.Cost> ofShop(Money money) {
    return List.of(new Evidence.Cost(Ownership.OWN, money));
  }
}
