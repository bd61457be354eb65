package gambrel.month;

import gambrel.shrink.Sample;
import gambrel.shrink.Students;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A loss that changed from a day of the month on. What is compared is the mean of each day, since the
 * bodies of a day share a chiller and a bench: the days from a day on against the baseline's days, by
 * Student's t. Every day of the month is tried as the first; the one that stands out most is kept, and
 * the probability of a false alarm, a hundredth, is shared among the days tried (Bonferroni).
 *
 * @param from the first day
 * @param excess per cent more than the baseline's days, on average; negative for less
 * @param mean of the days from it on
 * @param before mean of the baseline's days
 * @param subjects the bodies from it on
 */
public record Shift(
    LocalDate from,
    BigFraction excess,
    BigFraction mean,
    BigFraction before,
    List<LossChart.Point> subjects) {
  private static final double FALSE_ALARMS = 0.01;
  private static final int LEAST_DAYS = 10;
  private static final int LEAST_BODIES = 3;

  /** Copies the bodies. */
  public Shift {
    subjects = List.copyOf(subjects);
  }

  /**
   * The shift in the month, upwards or downwards; empty where nothing stands out, or where the
   * baseline has fewer than twenty bodies or ten days.
   */
  static Optional<Shift> of(
      Collection<LossChart.Point> baseline, Collection<LossChart.Point> month) {
    var before = means(baseline);
    var now = byDay(month);
    if (baseline.size() < Baseline.ENOUGH || before.size() < LEAST_DAYS || now.isEmpty()) {
      return Optional.empty();
    }
    var usual = Sample.of(before);
    double deviation = usual.standardDeviation().doubleValue();
    double limit = Students.above(usual.number() - 1, FALSE_ALARMS / now.size() / 2);
    Optional<Shift> most = Optional.empty();
    double strongest = limit;
    for (var day : now.keySet()) {
      var shift = from(day, now, usual.mean());
      int days = now.tailMap(day).size();
      double error = deviation * Math.sqrt(1.0 / days + 1.0 / usual.number());
      double t = Math.abs(shift.excess.doubleValue()) / error;
      if (shift.subjects.size() >= LEAST_BODIES && t > strongest) {
        strongest = t;
        most = Optional.of(shift);
      }
    }
    return most;
  }

  private static SortedMap<LocalDate, List<LossChart.Point>> byDay(
      Collection<LossChart.Point> points) {
    return points.stream()
        .collect(
            Collectors.groupingBy(LossChart.Point::day, TreeMap::new, Collectors.toList()));
  }

  private static List<BigFraction> means(Collection<LossChart.Point> points) {
    return byDay(points).values().stream().map(Shift::mean).toList();
  }

  private static BigFraction mean(List<LossChart.Point> points) {
    return Sample.of(points.stream().map(LossChart.Point::percent).toList()).mean();
  }

  private static Shift from(
      LocalDate day, SortedMap<LocalDate, List<LossChart.Point>> days, BigFraction before) {
    var subjects = new ArrayList<LossChart.Point>();
    var means = new ArrayList<BigFraction>();
    for (Map.Entry<LocalDate, List<LossChart.Point>> of : days.tailMap(day).entrySet()) {
      subjects.addAll(of.getValue());
      means.add(mean(of.getValue()));
    }
    var mean = Sample.of(means).mean();
    return new Shift(day, mean.subtract(before), mean, before, subjects);
  }

  /** Whether more was lost. */
  public boolean isMore() {
    return excess.signum() > 0;
  }

  /** Ids of the bodies. */
  public List<String> bodies() {
    return subjects.stream().map(LossChart.Point::body).toList();
  }
}
