package gambrel.insight.month.change;

import gambrel.insight.month.figures.Compared;
import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.month.figures.MonthRecords;
import gambrel.insight.month.figures.Spread;
import gambrel.insight.statistics.DayValues;
import gambrel.trade.cuts.Species;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A measure of a species' bodies of thirteen months.
 *
 * @param measure what is measured
 * @param species the species
 * @param bodies those of the twelve months before, then those of the month
 * @param baseline how many are of the twelve months before
 * @param listed the values of the bodies
 * @param values the same as a linear model
 */
record Series(
    Measure measure,
    Species species,
    List<MonthBody> bodies,
    int baseline,
    List<DayValues.Value> listed,
    DayValues values) {
  private static final int LEAST_DAYS = 10;

  /** Bodies are compared within so many hours on either side of the usual ones. */
  private static final int HOURS_ALIKE = 6;

  /** At most one in so many bodies before was weighed cold as late as one that is called late. */
  private static final int ONE_IN = 20;

  /** The series of a measure, of every species with enough bodies and days before the month. */
  static List<Series> of(MonthRecords records, Measure measure, Predicate<MonthBody> counted) {
    return measure.bodies(records).stream()
        .map(bodies -> bodies.map(all -> all.stream().filter(counted).toList()))
        .filter(bodies -> !bodies.month().isEmpty())
        .flatMap(bodies -> of(measure, bodies, alike(measure, bodies.before())).stream())
        .toList();
  }

  /** The series of some bodies; empty if too few bodies or days are before the month. */
  private static Optional<Series> of(
      Measure measure, Compared<List<MonthBody>> bodies, ToDoubleFunction<MonthBody> alike) {
    var before = bodies.before();
    if (before.size() < MonthRecords.ENOUGH
        || before.stream().map(measure::day).distinct().count() < LEAST_DAYS) {
      return Optional.empty();
    }
    var all = Compared.all(bodies);
    var listed = all.stream().map(body -> value(measure, body, alike)).toList();
    var values = new DayValues(listed, before.size());
    return Optional.of(new Series(measure, bodies.species(), all, before.size(), listed, values));
  }

  private static DayValues.Value value(
      Measure measure, MonthBody body, ToDoubleFunction<MonthBody> alike) {
    var kind = new ArrayList<>(measure.kind(body));
    kind.add(String.valueOf(alike.applyAsDouble(body)));
    return new DayValues.Value(
        kind,
        measure.day(body),
        measure.value(body).orElseThrow().doubleValue(),
        measure.covariate(body));
  }

  /** Of chill shrink, in steps of twice six hours how much later than usual it was weighed. */
  private static ToDoubleFunction<MonthBody> alike(Measure measure, List<MonthBody> before) {
    double usual = measure == Measure.CHILL ? hours(before) : 0;
    return body ->
        measure == Measure.CHILL ? Math.rint((hours(body) - usual) / (2 * HOURS_ALIKE)) : 0;
  }

  /** The usual hours between hot and cold weighing; 0 if unknown. */
  static double hours(List<MonthBody> bodies) {
    return Spread.of(bodies.stream().flatMap(b -> b.balance().hoursChilled().stream()).toList())
        .map(spread -> spread.median().doubleValue())
        .orElse(0.0);
  }

  private static double hours(MonthBody body) {
    return body.balance().hoursChilled().map(BigFraction::doubleValue).orElse(0.0);
  }

  /**
   * The month's bodies that were weighed cold late, with those before that were not; empty if there
   * are too few. Late is an hour or more beyond the time in which 19 of 20 bodies before were.
   */
  Optional<Series> late() {
    var before = bodies.subList(0, baseline).stream().map(Series::hours).sorted().toList();
    double limit = before.get(baseline - 1 - baseline / ONE_IN) + 1;
    var late = ofMonth().stream().filter(body -> hours(body) > limit).toList();
    var others = bodies.subList(0, baseline).stream().filter(body -> hours(body) <= limit).toList();
    return of(measure, new Compared<>(species, late, others), body -> 0);
  }

  /** The bodies of the month. */
  List<MonthBody> ofMonth() {
    return bodies.subList(baseline, bodies.size());
  }
}
