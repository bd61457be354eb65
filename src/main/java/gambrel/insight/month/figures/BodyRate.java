package gambrel.insight.month.figures;

import gambrel.trade.cuts.Species;
import java.util.Collection;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * An amount of money of one body, and the weight that it is divided by.
 *
 * @param body the body
 * @param money in the major unit
 * @param weight in the shop's unit, more than zero
 */
public record BodyRate(MonthBody body, BigFraction money, BigFraction weight) {
  /** Money for a unit of weight. */
  public BigFraction rate() {
    return money.divide(weight);
  }

  /** Money for a unit of weight of all bodies together; empty without bodies. */
  public static Optional<BigFraction> of(Collection<BodyRate> bodies) {
    return bodies.isEmpty()
        ? Optional.empty()
        : Optional.of(sum(bodies, BodyRate::money).divide(sum(bodies, BodyRate::weight)));
  }

  /** The sum of money or weight over some bodies. */
  public static BigFraction sum(
      Collection<BodyRate> bodies, Function<BodyRate, BigFraction> amount) {
    return bodies.stream().map(amount).reduce(BigFraction.ZERO, BigFraction::add);
  }

  /** The figure of a month's bodies together, compared with that of the bodies before. */
  public static MonthFigure figure(
      FigureName name,
      Species species,
      MonthFigure.Group group,
      Collection<BodyRate> month,
      Collection<BodyRate> before) {
    return MonthFigure.of(name, species, group, month.size(), of(month))
        .withSpread(spread(month))
        .with(new MonthFigure.Comparison(before.size(), of(before), spread(before)));
  }

  private static Optional<Spread> spread(Collection<BodyRate> bodies) {
    return Spread.of(bodies.stream().map(BodyRate::rate).toList());
  }
}
