package gambrel.insight.month.loss;

import gambrel.insight.month.figures.AlarmRates;
import gambrel.insight.month.figures.BodyFigure;
import gambrel.insight.month.figures.Compared;
import gambrel.insight.month.figures.Evidence;
import gambrel.insight.month.figures.Finding;
import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.month.figures.MonthRecords;
import gambrel.insight.month.figures.Ownership;
import gambrel.insight.month.figures.Spread;
import gambrel.insight.statistics.DayValues;
import gambrel.insight.statistics.Moments;
import gambrel.insight.statistics.Trend;
import gambrel.insight.statistics.UsualValue;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Weight;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Ageing shrink on days hung, of bodies of a species killed in a month or in the twelve before it.
 *
 * @param compared the bodies whose days hung and ageing shrink are known
 * @param trend the line of ageing shrink, % of cold, on days hung; empty where bodies or different
 *     numbers of days are too few
 */
public record Hanging(Compared<List<MonthBody>> compared, Optional<Trend> trend) {
  /** The least number of bodies for a line. */
  public static final int ENOUGH_BODIES = 8;

  /** The least number of different days hung for a line. */
  public static final int ENOUGH_DAYS = 3;

  /** The confidence of the intervals. */
  static final double CONFIDENCE = 0.95;

  /** Every species that has a line. */
  public static List<Hanging> of(MonthRecords records) {
    return all(records).stream().filter(hanging -> hanging.trend().isPresent()).toList();
  }

  /** Every species; it may have no bodies. */
  static List<Hanging> all(MonthRecords records) {
    return records.with(BodyFigure.AGEING).stream()
        .map(
            bodies ->
                of(bodies.map(all -> all.stream().filter(b -> point(b).isPresent()).toList())))
        .toList();
  }

  private static Hanging of(Compared<List<MonthBody>> known) {
    var points = Compared.all(known).stream().flatMap(body -> point(body).stream()).toList();
    boolean enough =
        points.size() >= ENOUGH_BODIES
            && points.stream().map(Trend.Point::x).distinct().count() >= ENOUGH_DAYS;
    return new Hanging(known, enough ? Trend.of(points) : Optional.empty());
  }

  private static Optional<Trend.Point> point(MonthBody body) {
    return body.percent(BodyFigure.AGEING)
        .filter(percent -> body.balance().daysHung().isPresent())
        .map(percent -> new Trend.Point(days(body), percent));
  }

  /** The bodies of one owner alone. */
  Hanging of(Ownership whose) {
    return of(compared.map(whose::of));
  }

  /** The species. */
  public Species species() {
    return compared.species();
  }

  /** The bodies, oldest month first. */
  public List<MonthBody> bodies() {
    return Compared.all(compared);
  }

  /** The days that a body hung. */
  private static BigFraction days(MonthBody body) {
    return BigFraction.of(body.balance().daysHung().orElseThrow());
  }

  /** Spread of the days hung; needs a body. */
  public Spread days() {
    return spread(Hanging::days);
  }

  /** Spread of the cold weights of the aged parts, in the shop's unit; needs a body. */
  Spread cold() {
    return spread(Hanging::cold);
  }

  private Spread spread(Function<MonthBody, BigFraction> figure) {
    return Spread.of(bodies().stream().map(figure).toList()).orElseThrow();
  }

  /** The cold weight of the aged parts of a body, in the shop's unit. */
  private static BigFraction cold(MonthBody body) {
    return body.share(BodyFigure.AGEING).orElseThrow().whole().fraction();
  }

  private Trend line() {
    return trend.orElseThrow();
  }

  /** Whether a day on the rail surely costs weight: the slope's 95 % interval lies above zero. */
  private boolean isSure() {
    return line().slope() > line().slopeMargin(CONFIDENCE);
  }

  /** Per cent of cold weight lost a day, to four decimals; needs a line. */
  private BigFraction percentADay() {
    return decimal(line().slope());
  }

  /** A number of the line as an exact one, to four decimals. */
  static BigFraction decimal(double value) {
    return Exact.fraction(BigDecimal.valueOf(value).setScale(4, RoundingMode.HALF_UP));
  }

  /**
   * The shop's own bodies that were left hanging, and the cost of the days beyond the usual ones;
   * empty if there are none; needs a line. The limit is the median of the days that bodies of the
   * twelve months before hung, and t times their spread (see {@link UsualValue}), which counts as
   * at least one day. The rate of false alarms is divided among the month's own bodies
   * (Bonferroni).
   */
  public Optional<Finding> finding(MonthRecords records) {
    return limits()
        .map(limits -> finding(records, limits.left(compared.month()), limits))
        .filter(finding -> !finding.subjects().isEmpty());
  }

  /** The ids of the shop's own bodies of thirteen months that hung beyond that limit. */
  public Stream<String> left() {
    return limits().stream().flatMap(limits -> limits.left(bodies()).stream()).map(MonthBody::id);
  }

  /**
   * How many days bodies hang.
   *
   * @param usual as a rule
   * @param most own bodies that are not forgotten
   */
  private record Limits(double usual, double most) {
    List<MonthBody> left(List<MonthBody> bodies) {
      return Ownership.OWN.of(bodies).stream()
          .filter(body -> days(body).doubleValue() > most)
          .toList();
    }
  }

  private Optional<Limits> limits() {
    int own = Ownership.OWN.of(compared.month()).size();
    var before =
        compared.before().stream()
            .map(b -> new DayValues.Value(List.of(""), LocalDate.MIN, days(b).doubleValue(), 0))
            .toList();
    if (before.size() < MonthRecords.ENOUGH || own == 0 || !isSure()) {
      return Optional.empty();
    }
    var spread = UsualValue.of(before);
    double usual = spread.expected(before.get(0)).orElseThrow();
    double t = Moments.studentsAbove(spread.degrees(), AlarmRates.DAYS_HUNG / own);
    return Optional.of(new Limits(usual, usual + t * Math.max(1, spread.spread())));
  }

  private Finding finding(MonthRecords records, List<MonthBody> late, Limits limits) {
    var median = Exact.ofStatistic(limits.usual());
    var days = BigFraction.ZERO;
    var lost = BigFraction.ZERO;
    for (var body : late) {
      var over = days(body).subtract(median);
      days = days.add(over);
      lost = lost.add(cold(body).multiply(over).multiply(percentADay()).divide(100));
    }
    return Finding.likely(
        Finding.Kind.HANGING,
        "",
        late.stream().map(body -> body.id()).toList(),
        Map.of(
            "bodies", new Evidence.Count(late.size()),
            "species", new Evidence.Kind(species()),
            "usual", new Evidence.Number(median, 0),
            "limit", new Evidence.Number(Exact.ofStatistic(limits.most()), 0),
            "days", new Evidence.Number(days, 0),
            "weight", new Evidence.Mass(Weight.of(lost)),
            "loss", new Evidence.Percent(percentADay(), 2)),
        records.worth(species(), lost).map(Finding.Cost::ofShop).orElse(List.of()));
  }
}
