package gambrel.insight.month.value;

import gambrel.insight.month.bodies.BodyValue;
import gambrel.insight.month.bodies.Compared;
import gambrel.insight.month.bodies.ItemValues;
import gambrel.insight.month.bodies.MonthBody;
import gambrel.insight.month.bodies.MonthRecords;
import gambrel.insight.month.bodies.Spread;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Weight;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What a body's take-home is worth for a unit of its cold weight.
 *
 * @param account the body
 * @param worth its take-home at the values of one day, money in the major unit
 * @param cold its cold weight
 */
public record BodyWorth(MonthBody account, BigFraction worth, Weight cold) {
  private static final Comparator<BodyWorth> LEAST_FIRST =
      Comparator.comparing(BodyWorth::rate).thenComparing(worth -> worth.account().id());

  /** The settled bodies of each species of which the month has a body with a worth. */
  public static List<Compared<List<BodyWorth>>> of(MonthRecords records) {
    var values = records.rail().items();
    return records.settled().stream()
        .map(bodies -> bodies.map(all -> of(all, bodies.species(), values)))
        .filter(worths -> !worths.month().isEmpty())
        .toList();
  }

  /** The bodies of a species whose cold weight and value are known, least first, then by id. */
  public static List<BodyWorth> of(
      Collection<MonthBody> bodies, Species species, ItemValues values) {
    return MonthBody.of(species, bodies).stream()
        .flatMap(body -> of(body, values).stream())
        .sorted(LEAST_FIRST)
        .toList();
  }

  private static Optional<BodyWorth> of(MonthBody body, ItemValues values) {
    var value = BodyValue.of(body, values);
    return body.balance()
        .cold()
        .filter(cold -> !cold.isZero() && value.isEnough())
        .map(cold -> new BodyWorth(body, value.value(), cold));
  }

  /** Money in the major unit for a unit of cold weight. */
  public BigFraction rate() {
    return worth.divide(cold.fraction());
  }

  /** The worth of all bodies over their cold weight; empty without bodies. */
  public static Optional<BigFraction> rateOf(Collection<BodyWorth> bodies) {
    var cold = Weight.sum(bodies.stream().map(BodyWorth::cold).toList());
    var worth = bodies.stream().map(BodyWorth::worth).reduce(BigFraction.ZERO, BigFraction::add);
    return cold.isZero() ? Optional.empty() : Optional.of(worth.divide(cold.fraction()));
  }

  /** The spread of the bodies' rates. */
  public static Optional<Spread> spreadOf(Collection<BodyWorth> bodies) {
    return Spread.of(bodies.stream().map(BodyWorth::rate).toList());
  }
}
