package gambrel.insight.month.loss;

import gambrel.insight.month.bodies.BodyGroup;
import gambrel.insight.month.bodies.FigureRange;
import gambrel.insight.month.bodies.MonthRecords;
import gambrel.insight.month.bodies.Ownership;
import gambrel.insight.month.bodies.Spread;
import gambrel.insight.month.findings.FigureName;
import gambrel.insight.month.findings.MonthFigure;
import gambrel.insight.statistics.Trend;
import gambrel.trade.account.Billing;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Exact;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What one day more on the rail takes from a body of middle weight, and what it brings or would
 * have to bring: on customers' bodies what the shop charges for it, on the shop's own the rise of
 * price that makes it up. Drawn from each owner's bodies alone; those with shares of both are
 * neither's.
 *
 * @param species whose
 * @param whose customers' or the shop's own
 * @param sample the bodies, at least one
 * @param trend ageing shrink on days hung, % of cold; empty where too few bodies tell
 * @param charge minor units of money that the day adds to the bill of each of them, without tax, at
 *     the prices of the month's last day; empty for own bodies and where nothing is known to charge
 * @param worth money in the major unit for a unit of weight on the rail; empty where values are
 *     missing
 */
public record FurtherDay(
    Species species,
    Ownership whose,
    HangingSample sample,
    Optional<Trend> trend,
    Optional<Spread> charge,
    Optional<BigFraction> worth) {

  /** Every species, customers' bodies before own ones, so far as any hung. */
  public static List<FurtherDay> of(MonthRecords records) {
    return Stream.of(Ownership.CUSTOMERS, Ownership.OWN)
        .flatMap(whose -> Stream.of(Species.values()).flatMap(s -> of(records, s, whose).stream()))
        .toList();
  }

  private static Optional<FurtherDay> of(MonthRecords records, Species species, Ownership whose) {
    var sample = HangingSample.of(records, species).of(whose);
    return sample.bodies().isEmpty()
        ? Optional.empty()
        : Optional.of(
            new FurtherDay(
                species,
                whose,
                sample,
                sample.trend(),
                whose == Ownership.OWN ? Optional.empty() : charge(records, sample),
                records.rail().of(species)));
  }

  private static Optional<Spread> charge(MonthRecords records, HangingSample sample) {
    var billing = new Billing(records.night().shop());
    var prices = records.baseline().lastDay();
    return Spread.of(
        sample.bodies().stream()
            .flatMap(a -> billing.furtherDay(a.balance(), prices).stream())
            .map(money -> BigFraction.of(money.minor()))
            .toList());
  }

  /**
   * Lost in the day, % of cold: the slope of the line and its 95 % confidence interval. An interval
   * that reaches below nothing does not tell whether anything is lost.
   */
  public Optional<FigureRange> loss() {
    return trend.map(
        line -> {
          double margin = line.slopeMargin(Hanging.CONFIDENCE);
          return new FigureRange(
              Hanging.decimal(line.slope() - margin),
              Hanging.decimal(line.slope()),
              Hanging.decimal(line.slope() + margin));
        });
  }

  /** The same of the middle cold weight, in the shop's unit. */
  public Optional<FigureRange> weight() {
    var cold = sample.cold().median();
    return loss().map(range -> range.map(percent -> cold.multiply(percent).divide(100)));
  }

  /**
   * What that weight is worth on the rail, money in the major unit; empty where values are missing.
   */
  public Optional<FigureRange> weightWorth() {
    return worth.flatMap(rate -> weight().map(range -> range.map(rate::multiply)));
  }

  /** Lost by the middle of the days hung, % of cold, on the line. */
  public Optional<BigFraction> before() {
    double days = sample.days().median().doubleValue();
    return trend.map(line -> Hanging.decimal(line.at(days)));
  }

  /**
   * By how many per cent the price of the meat must rise for the day to be made up, after the
   * middle of the days hung. The interval is the slope's: an error of a whole point in what was
   * lost before changes the rise by a hundredth of itself. Empty where nothing would be left to
   * sell.
   */
  public Optional<FigureRange> rise() {
    return loss()
        .flatMap(
            range ->
                before()
                    .filter(s -> range.high().add(s).compareTo(Exact.HUNDRED) < 0)
                    .map(s -> range.map(r -> rise(s, r))));
  }

  /** The same in money of the major unit for a unit of weight as it leaves the rail. */
  public Optional<FigureRange> priceRise() {
    return worth.flatMap(
        price -> rise().map(range -> range.map(p -> price.multiply(p).divide(100))));
  }

  /**
   * The rise of price, in per cent, that makes up a further loss. A body of cold weight W that has
   * lost s % sells as W·(1 − s/100) at price p. After a further r % of W it must bring the same
   * money: W·(1 − (s + r)/100)·p′ = W·(1 − s/100)·p, hence (p′ − p)/p = r / (100 − s − r).
   *
   * @param before s, per cent of cold weight lost so far
   * @param further r, per cent of cold weight lost beyond that; s + r under 100
   */
  public static BigFraction rise(BigFraction before, BigFraction further) {
    return Exact.percent(further, Exact.HUNDRED.subtract(before).subtract(further));
  }

  /**
   * What the day takes, and what it brings or would have to bring.
   *
   * @param minorUnits of the shop's currency in its major unit
   */
  public List<MonthFigure> figures(long minorUnits) {
    var figures = new ArrayList<MonthFigure>();
    loss().ifPresent(range -> figures.add(figure(FigureName.FURTHER_DAY_PCT, range)));
    weight().ifPresent(range -> figures.add(figure(FigureName.FURTHER_DAY_WEIGHT, range)));
    if (whose == Ownership.OWN) {
      rise().ifPresent(r -> figures.add(figure(FigureName.FURTHER_DAY_PRICE_RISE_PCT, r)));
      priceRise().ifPresent(r -> figures.add(figure(FigureName.FURTHER_DAY_PRICE_RISE, r)));
    } else {
      weightWorth().ifPresent(r -> figures.add(figure(FigureName.FURTHER_DAY_VALUE, r)));
      charge.ifPresent(
          spread -> {
            var range =
                new FigureRange(spread.lower(), spread.median(), spread.upper())
                    .map(minor -> minor.divide(BigFraction.of(minorUnits)));
            var kind = MonthFigure.Interval.Kind.MIDDLE_HALF;
            figures.add(figure(FigureName.FURTHER_DAY_CHARGE, spread.number(), range, kind));
          });
    }
    return figures;
  }

  private MonthFigure figure(FigureName name, FigureRange range) {
    return figure(name, sample.bodies().size(), range, MonthFigure.Interval.Kind.CONFIDENCE);
  }

  private MonthFigure figure(
      FigureName name, int bodies, FigureRange range, MonthFigure.Interval.Kind kind) {
    return MonthFigure.of(name, species, BodyGroup.ALL, bodies, Optional.of(range.middle()))
        .with(whose)
        .with(new MonthFigure.Interval(kind, range.low(), range.high()));
  }
}
