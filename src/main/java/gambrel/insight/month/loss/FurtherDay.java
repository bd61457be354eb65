package gambrel.insight.month.loss;

import gambrel.insight.month.figures.BodyGroup;
import gambrel.insight.month.figures.FigureName;
import gambrel.insight.month.figures.MonthFigure;
import gambrel.insight.month.figures.MonthFigure.Interval;
import gambrel.insight.month.figures.MonthRecords;
import gambrel.insight.month.figures.Ownership;
import gambrel.insight.month.figures.Spread;
import gambrel.insight.statistics.Trend;
import gambrel.trade.account.Billing;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Exact;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What one day more on the rail takes from a body of median weight, and what it brings or would
 * have to bring: for customers' bodies the charge of that day, for the shop's own the rise of price
 * that makes up the loss. Each owner's figures are drawn from his bodies alone. Bodies that
 * customers share with the shop are left out.
 *
 * @param whose customers' bodies or the shop's own
 * @param hanging the bodies, at least one, with their ageing shrink
 * @param charge money in the major unit that the day adds to the bill of each body, without tax, at
 *     the prices of the month's last day; empty for own bodies and if it is unknown for all
 * @param worth money in the major unit for a unit of weight on the rail; empty where values are
 *     missing
 */
public record FurtherDay(
    Ownership whose, Hanging hanging, Optional<Spread> charge, Optional<BigFraction> worth) {

  /** Every species of which a body hung, customers' bodies before own ones. */
  public static List<FurtherDay> of(MonthRecords records) {
    var all = Hanging.all(records);
    return Stream.of(Ownership.CUSTOMERS, Ownership.OWN)
        .flatMap(whose -> all.stream().map(hanging -> of(records, whose, hanging.of(whose))))
        .filter(day -> !day.hanging().bodies().isEmpty())
        .toList();
  }

  private static FurtherDay of(MonthRecords records, Ownership whose, Hanging hanging) {
    var billing = new Billing(records.night().shop());
    var charges =
        hanging.bodies().stream()
            .filter(body -> whose != Ownership.OWN)
            .flatMap(body -> billing.furtherDay(body.balance(), records.lastDay()).stream())
            .map(money -> money.fraction(records.settings().currency()))
            .toList();
    return new FurtherDay(
        whose, hanging, Spread.of(charges), records.values().onRail(hanging.species()));
  }

  /** The species. */
  public Species species() {
    return hanging.species();
  }

  /**
   * Lost in the day, % of cold: the slope of the line and its 95 % confidence interval; empty
   * without a line. If the interval reaches below zero, it is not sure that anything is lost.
   */
  public Optional<MonthFigure> loss() {
    return hanging.trend().map(this::loss);
  }

  private MonthFigure loss(Trend line) {
    double margin = line.slopeMargin(Hanging.CONFIDENCE);
    var low = Hanging.decimal(line.slope() - margin);
    var high = Hanging.decimal(line.slope() + margin);
    var interval = new Interval(Interval.Kind.CONFIDENCE, low, high);
    int bodies = hanging.bodies().size();
    return figure(FigureName.FURTHER_DAY_PCT, bodies, Hanging.decimal(line.slope()), interval);
  }

  /** The weight that the day takes from a body of median cold weight, in the shop's unit. */
  public Optional<MonthFigure> weight() {
    var cold = hanging.cold().median();
    return loss()
        .map(loss -> loss.map(FigureName.FURTHER_DAY_WEIGHT, p -> cold.multiply(p).divide(100)));
  }

  /** What that weight is worth, money in the major unit; empty where values are missing. */
  public Optional<MonthFigure> weightWorth() {
    var name = FigureName.FURTHER_DAY_VALUE;
    return worth.flatMap(rate -> weight().map(weight -> weight.map(name, rate::multiply)));
  }

  /** Lost at the median of the days hung, % of cold, on the line. */
  public Optional<BigFraction> before() {
    double days = hanging.days().median().doubleValue();
    return hanging.trend().map(line -> Hanging.decimal(line.at(days)));
  }

  /**
   * By how many per cent the price of the meat must rise to make up the day, after the median of
   * the days hung. The interval is the slope's; an error of one point in the loss before changes
   * the rise by only a hundredth of itself. Empty if nothing would be left to sell.
   */
  public Optional<MonthFigure> rise() {
    return loss()
        .flatMap(
            loss ->
                before()
                    .filter(s -> most(loss).add(s).compareTo(Exact.HUNDRED) < 0)
                    .map(s -> loss.map(FigureName.FURTHER_DAY_PRICE_RISE_PCT, r -> rise(s, r))));
  }

  private static BigFraction most(MonthFigure figure) {
    return figure.interval().orElseThrow().upper();
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

  /** The figures of the day: what it takes, and what it brings or would have to bring. */
  public List<MonthFigure> figures() {
    boolean own = whose == Ownership.OWN;
    return Stream.of(
            loss(), weight(), rise().filter(rise -> own), weightWorth(), charge.map(this::charged))
        .flatMap(Optional::stream)
        .toList();
  }

  private MonthFigure charged(Spread money) {
    var middle = new Interval(Interval.Kind.MIDDLE_HALF, money.lower(), money.upper());
    return figure(FigureName.FURTHER_DAY_CHARGE, money.number(), money.median(), middle);
  }

  private MonthFigure figure(FigureName name, int bodies, BigFraction value, Interval interval) {
    return MonthFigure.of(name, species(), BodyGroup.ALL, bodies, Optional.of(value))
        .with(whose)
        .with(Optional.of(interval));
  }
}
