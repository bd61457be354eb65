package gambrel.insight.month.loss;

import gambrel.insight.month.figures.BodyFigure;
import gambrel.insight.month.figures.Compared;
import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.month.figures.MonthRecords;
import gambrel.insight.month.figures.Spread;
import gambrel.insight.statistics.ControlChart;
import gambrel.insight.statistics.ShrinkSeries;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Exact;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * An individuals and moving-range chart of a loss of one species, month by month in order of kill.
 * The bodies of the twelve months before give centre and limits; the month's bodies follow. The
 * centre is their median; the limits lie around their mean.
 *
 * @param loss the loss
 * @param species the species
 * @param points the baseline's bodies, then the month's
 * @param baseline how many bodies are the baseline's
 * @param centre median of the baseline; centre and limits are empty if the baseline has fewer than
 *     {@link MonthRecords#ENOUGH} bodies
 * @param lower lower limit; it may be below zero
 * @param upper upper limit
 */
public record LossChart(
    BodyFigure loss,
    Species species,
    List<Point> points,
    int baseline,
    Optional<BigDecimal> centre,
    Optional<BigDecimal> lower,
    Optional<BigDecimal> upper) {
  /** If a species was not killed for more days, the chart restarts. */
  private static final int GAP_DAYS = 60;

  private static final int DECIMALS = 20;

  /**
   * One body.
   *
   * @param account the body
   * @param day the day of its kill for a loss on the rail, else the day of its last cut
   * @param percent its loss
   * @param movingRange distance from the body before it; empty where the chart restarts
   * @param signals codes of the chart's rules that it breaks; none without limits
   */
  public record Point(
      MonthBody account,
      LocalDate day,
      BigFraction percent,
      Optional<BigDecimal> movingRange,
      List<String> signals) {
    /** Its id. */
    public String body() {
      return account.body().id();
    }
  }

  /** The chart of every species of which the month has a body with that loss. */
  public static List<LossChart> of(MonthRecords records, BodyFigure loss) {
    return records.charted(loss).stream()
        .map(bodies -> of(loss, bodies.species(), bodies.map(some -> known(loss, some))))
        .filter(chart -> !chart.ofMonth().isEmpty())
        .toList();
  }

  private static LossChart of(BodyFigure loss, Species species, Compared<List<MonthBody>> bodies) {
    int baseline = bodies.before().size();
    var all = Compared.all(bodies);
    boolean enough = baseline >= MonthRecords.ENOUGH;
    var percents = all.stream().map(body -> body.percent(loss).orElseThrow()).toList();
    var chart = new ControlChart(percents, restarts(all), enough ? baseline : 0);
    var points =
        IntStream.range(0, all.size())
            .mapToObj(
                i ->
                    new Point(
                        all.get(i),
                        day(loss, all.get(i)),
                        percents.get(i),
                        chart.movingRange(i),
                        chart.signals(i)))
            .toList();
    var median =
        Spread.of(percents.subList(0, baseline)).map(s -> Exact.round(s.median(), DECIMALS));
    return new LossChart(
        loss, species, points, baseline, median.filter(m -> enough), chart.lower(), chart.upper());
  }

  private static List<MonthBody> known(BodyFigure loss, List<MonthBody> bodies) {
    return bodies.stream()
        .filter(a -> a.body().killed().isPresent() && a.share(loss).isPresent())
        .sorted(
            Comparator.comparing((MonthBody a) -> YearMonth.from(day(loss, a)))
                .thenComparing(MonthBody::balance, ShrinkSeries.ORDER_OF_KILL))
        .toList();
  }

  private static BitSet restarts(List<MonthBody> all) {
    var killed = all.stream().map(body -> body.body().killed().orElseThrow()).toList();
    return IntStream.range(1, all.size())
        .filter(i -> ChronoUnit.DAYS.between(killed.get(i - 1), killed.get(i)) > GAP_DAYS)
        .collect(BitSet::new, BitSet::set, BitSet::or);
  }

  private static LocalDate day(BodyFigure loss, MonthBody account) {
    return (loss.isOnRail() ? account.body().killed() : account.lastDay()).orElseThrow();
  }

  /** The baseline's points. */
  public List<Point> before() {
    return points.subList(0, baseline);
  }

  /** The month's points. */
  public List<Point> ofMonth() {
    return points.subList(baseline, points.size());
  }

  /** How far a point lies above the centre, in per cent; needs limits. */
  public BigFraction aboveCentre(Point point) {
    return point.percent().subtract(Exact.fraction(centre.orElseThrow()));
  }

  /** Orders points by their distance from the centre; needs limits. */
  public Comparator<Point> farthestFirst() {
    return Comparator.comparing((Point point) -> aboveCentre(point).abs()).reversed();
  }

  /** Whether there are limits. */
  public boolean hasLimits() {
    return lower.isPresent();
  }
}
