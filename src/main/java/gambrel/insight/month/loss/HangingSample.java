package gambrel.insight.month.loss;

import gambrel.insight.month.bodies.BodyFigure;
import gambrel.insight.month.bodies.Loss;
import gambrel.insight.month.bodies.MonthBody;
import gambrel.insight.month.bodies.MonthRecords;
import gambrel.insight.month.bodies.Ownership;
import gambrel.insight.month.bodies.Spread;
import gambrel.insight.statistics.Trend;
import gambrel.trade.cuts.Species;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Bodies of a species of which both the days hung and the ageing shrink are known, killed in a
 * month or in the twelve before it, oldest month first.
 *
 * @param bodies may be none
 */
public record HangingSample(List<MonthBody> bodies) {
  /** Fewer bodies than this make no line. */
  public static final int ENOUGH_BODIES = 8;

  /** Of fewer different numbers of days hung no line is drawn. */
  public static final int ENOUGH_DAYS = 3;

  /** Copies the list. */
  public HangingSample {
    bodies = List.copyOf(bodies);
  }

  /** Those of all owners. */
  public static HangingSample of(MonthRecords records, Species species) {
    return new HangingSample(
        Stream.concat(
                records.baseline().of(Loss.AGEING).stream(), records.bodies().killed().stream())
            .filter(a -> a.body().species() == species)
            .filter(a -> point(a).isPresent())
            .toList());
  }

  /** Those of one owner. */
  public HangingSample of(Ownership whose) {
    return new HangingSample(whose.of(bodies));
  }

  /** Ageing shrink, in per cent of cold, on days hung; empty where bodies or days are too few. */
  public Optional<Trend> trend() {
    var points = bodies.stream().map(a -> point(a).orElseThrow()).toList();
    long days = points.stream().map(Trend.Point::x).distinct().count();
    return points.size() < ENOUGH_BODIES || days < ENOUGH_DAYS
        ? Optional.empty()
        : Trend.of(points);
  }

  /** Spread of the days hung; needs a body. */
  public Spread days() {
    return spread(account -> BigFraction.of(account.balance().daysHung().orElseThrow()));
  }

  /** Spread of the cold weights of what was aged, in the shop's unit; needs a body. */
  public Spread cold() {
    return spread(HangingSample::cold);
  }

  /** The cold weight of the parts of a body that were aged, in the shop's unit. */
  static BigFraction cold(MonthBody body) {
    return body.share(BodyFigure.AGEING).orElseThrow().whole().fraction();
  }

  private Spread spread(Function<MonthBody, BigFraction> figure) {
    return Spread.of(bodies.stream().map(figure).toList()).orElseThrow();
  }

  private static Optional<Trend.Point> point(MonthBody account) {
    var days = account.balance().daysHung();
    var lost = Loss.AGEING.percent(account);
    return days.isEmpty() || lost.isEmpty()
        ? Optional.empty()
        : Optional.of(new Trend.Point(BigFraction.of(days.get()), lost.get()));
  }
}
