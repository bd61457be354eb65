package gambrel.insight.month.loss;

import gambrel.insight.month.figures.Evidence;
import gambrel.insight.month.figures.MonthRecords;
import gambrel.insight.statistics.Moments;
import gambrel.trade.measure.Exact;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A loss that changed from a day of the month on. Student's t compares the mean from that day on
 * with the mean of the baseline. Bodies of one day share a chiller and a bench; {@link DayScatter}
 * takes account of that. Every day of the month is tried as the first day, and the day with the
 * largest t is kept. The rate of false alarms, one in a hundred, is divided among the days tried
 * (Bonferroni). The change must also hold without the body that lies farthest in its direction,
 * since a single body is a finding of its own.
 *
 * @param from the first day
 * @param excess mean less that of the baseline, in per cent; negative if less is lost
 * @param mean mean from the first day on, in per cent
 * @param before mean of the baseline, in per cent
 * @param t the absolute value of Student's t of the difference
 * @param limit the t that is exceeded by chance with the probability {@link #FALSE_ALARMS}, divided
 *     by the number of days
 * @param subjects the bodies from the first day on
 * @param baseline how many bodies of the baseline they are compared with
 */
public record MeanShift(
    LocalDate from,
    BigFraction excess,
    BigFraction mean,
    BigFraction before,
    double t,
    double limit,
    List<LossChart.Point> subjects,
    int baseline) {
  private static final double FALSE_ALARMS = 0.01;
  private static final int LEAST_DAYS = 10;
  private static final int LEAST_BODIES = 3;

  /**
   * The change in the month, upwards or downwards; empty if there is none, or if the baseline has
   * fewer than twenty bodies or ten days.
   */
  static Optional<MeanShift> of(
      Collection<LossChart.Point> baseline, Collection<LossChart.Point> month) {
    var before = values(baseline);
    var days = month.stream().map(LossChart.Point::day).distinct().sorted().toList();
    if (baseline.size() < MonthRecords.ENOUGH || before.size() < LEAST_DAYS || days.isEmpty()) {
      return Optional.empty();
    }
    var scatter = DayScatter.of(before.values());
    var usual = scatter.mean(before.values());
    double limit = Moments.studentsAbove(scatter.days() - 1, FALSE_ALARMS / days.size() / 2);
    return days.stream()
        .map(day -> month.stream().filter(p -> !p.day().isBefore(day)).toList())
        .filter(since -> since.size() >= LEAST_BODIES)
        .map(since -> of(since, scatter, usual, limit, baseline.size()))
        .filter(shift -> shift.t() > limit)
        .reduce((one, other) -> other.t() > one.t() ? other : one);
  }

  private static MeanShift of(
      List<LossChart.Point> since,
      DayScatter scatter,
      DayScatter.Mean usual,
      double limit,
      int baseline) {
    var subjects = since.stream().sorted(Comparator.comparing(LossChart.Point::day)).toList();
    var mean = Exact.ofStatistic(scatter.mean(values(since).values()).value());
    var before = Exact.ofStatistic(usual.value());
    double t = strength(since, scatter, usual);
    return new MeanShift(
        subjects.get(0).day(), mean.subtract(before), mean, before, t, limit, subjects, baseline);
  }

  /** The smaller absolute t: with all bodies, or without the farthest; 0 if their signs differ. */
  private static double strength(
      List<LossChart.Point> since, DayScatter scatter, DayScatter.Mean usual) {
    double all = t(since, scatter, usual);
    var farthest = Comparator.comparing(LossChart.Point::percent);
    var others = new ArrayList<>(since);
    others.remove(since.stream().max(all > 0 ? farthest : farthest.reversed()).orElseThrow());
    double rest = t(others, scatter, usual);
    return all * rest > 0 ? Math.min(Math.abs(all), Math.abs(rest)) : 0;
  }

  private static double t(List<LossChart.Point> points, DayScatter scatter, DayScatter.Mean usual) {
    var mean = scatter.mean(values(points).values());
    return (mean.value() - usual.value()) / Math.sqrt(mean.variance() + usual.variance());
  }

  private static SortedMap<LocalDate, List<Double>> values(Collection<LossChart.Point> points) {
    return points.stream()
        .collect(
            Collectors.groupingBy(
                LossChart.Point::day,
                TreeMap::new,
                Collectors.mapping(p -> p.percent().doubleValue(), Collectors.toList())));
  }

  /** The values that decided, by the names that the words of the finding use. */
  Map<String, Evidence> evidence() {
    return Map.of(
        "since", new Evidence.Day(from),
        "bodies", new Evidence.Count(subjects.size()),
        "bodies_before", new Evidence.Count(baseline),
        "loss", new Evidence.Percent(mean, 2),
        "usual", new Evidence.Percent(before, 2),
        "difference", new Evidence.Percent(excess, 2),
        "t", new Evidence.Number(Exact.ofStatistic(t), 2),
        "t_limit", new Evidence.Number(Exact.ofStatistic(limit), 2),
        "false_alarms", Evidence.percent(Exact.ofStatistic(100 * FALSE_ALARMS)));
  }

  /** Whether more was lost than before. */
  public boolean isMore() {
    return excess.signum() > 0;
  }

  /** The ids of the bodies. */
  public List<String> bodies() {
    return subjects.stream().map(LossChart.Point::body).toList();
  }

  /**
   * How bodies scatter within a day, and how days scatter: the moment estimators of the analysis of
   * variance, for a one-way layout of random days with unequal numbers of bodies.
   *
   * @param days how many days the estimate is from
   * @param within variance of the bodies of one day
   * @param between variance that the bodies of one day have in common
   */
  private record DayScatter(int days, double within, double between) {

    /**
     * The mean of some days.
     *
     * @param value the mean, each day weighted by the precision of its own mean
     * @param variance the variance of that mean
     */
    record Mean(double value, double variance) {}

    /** The scatter of two days or more, each with the values of its bodies, at least one. */
    static DayScatter of(Collection<List<Double>> values) {
      var days = values.stream().map(Moments::of).toList();
      double bodies = Moments.number(days);
      double squaredNumbers =
          days.stream().mapToDouble(d -> (double) d.number() * d.number()).sum();
      double degrees = days.size() - 1.0;
      double within =
          bodies > days.size() ? Moments.squaresWithin(days) / (bodies - days.size()) : 0;
      double bodiesADay = (bodies - squaredNumbers / bodies) / degrees;
      double between = Math.max(0, (Moments.squaresBetween(days) / degrees - within) / bodiesADay);
      return new DayScatter(days.size(), within, between);
    }

    /** The mean of some days, each with the values of its bodies. */
    Mean mean(Collection<List<Double>> days) {
      double weights = 0;
      double sum = 0;
      for (var day : days) {
        double variance = between + within / day.size();
        double weight = variance == 0 ? day.size() : 1 / variance;
        weights += weight;
        sum += weight * Moments.of(day).mean();
      }
      return new Mean(sum / weights, between + within == 0 ? 0 : 1 / weights);
    }
  }
}
