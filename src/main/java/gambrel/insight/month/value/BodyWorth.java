package gambrel.insight.month.value;

import gambrel.insight.month.bodies.BodyValue;
import gambrel.insight.month.bodies.ItemValues;
import gambrel.insight.month.bodies.MonthBody;
import gambrel.insight.month.bodies.Spread;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Weight;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What a body's take-home is worth on a unit of its cold weight.
 *
 * @param account the body
 * @param worth its take-home at the values of one day, money in the major unit
 * @param cold its cold weight
 * @param rate money in the major unit for a unit of cold weight
 */
public record BodyWorth(MonthBody account, BigFraction worth, Weight cold, BigFraction rate) {

  /**
   * Of every body of a species of which cold weight and value are known, least first, then by id.
   */
  public static List<BodyWorth> of(
      Collection<MonthBody> bodies, Species species, ItemValues values) {
    return bodies.stream()
        .filter(body -> body.body().species() == species)
        .flatMap(account -> of(account, values).stream())
        .sorted(
            Comparator.comparing(BodyWorth::rate)
                .thenComparing(worth -> worth.account().body().id()))
        .toList();
  }

  private static Optional<BodyWorth> of(MonthBody account, ItemValues values) {
    var value = BodyValue.of(account, values);
    return account
        .balance()
        .cold()
        .filter(cold -> !cold.isZero() && value.isEnough())
        .map(cold -> of(account, value.value(), cold));
  }

  private static BodyWorth of(MonthBody account, BigFraction worth, Weight cold) {
    return new BodyWorth(account, worth, cold, worth.divide(cold.fraction()));
  }

  /** All worth over all cold weight; empty without bodies. */
  public static Optional<BigFraction> rateOf(Collection<BodyWorth> bodies) {
    var cold = Weight.sum(bodies.stream().map(BodyWorth::cold).toList());
    return cold.isZero()
        ? Optional.empty()
        : Optional.of(
            bodies.stream()
                .map(BodyWorth::worth)
                .reduce(BigFraction.ZERO, BigFraction::add)
                .divide(cold.fraction()));
  }

  /** The spread of the bodies' rates. */
  public static Optional<Spread> spreadOf(Collection<BodyWorth> bodies) {
    return Spread.of(bodies.stream().map(BodyWorth::rate).toList());
  }
}
