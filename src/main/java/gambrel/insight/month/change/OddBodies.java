package gambrel.insight.month.change;

import gambrel.insight.month.figures.AlarmRates;
import gambrel.insight.month.figures.BodyFigure;
import gambrel.insight.month.figures.Evidence;
import gambrel.insight.month.figures.Finding;
import gambrel.insight.month.figures.MonthRecords;
import gambrel.insight.statistics.DayValues.Value;
import gambrel.insight.statistics.Moments;
import gambrel.insight.statistics.UsualValue;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Groups;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Single bodies that lost far more or far less than like bodies before. A body is odd if it lies
 * outside the interval in which all the month's bodies lie unless something is wrong with one: the
 * median of its kind ± t · spread, with the rate of false alarms divided among the bodies of the
 * month (Bonferroni). Since losses have a long upper end, it must lie outside on the scale of
 * square roots too.
 */
final class OddBodies {
  private static final int MOST_BODIES = 3;
  private static final int FEWEST_OF_KIND = 20;

  /** The median of so many values adds π/2 / 20 to the variance of a body's distance from it. */
  private static final double OF_MEDIAN = Math.sqrt(1 + Math.PI / 2 / FEWEST_OF_KIND);

  /** The least spread, in per cent: finer than what a scale shows. */
  private static final double FINEST = 0.01;

  private OddBodies() {}

  /**
   * A body far from the usual.
   *
   * @param known what of its loss is explained
   * @param expected what it should have lost, with that
   * @param half half the width of the interval
   * @param times by how many half widths it lies off
   */
  private record Odd(
      Series series, int place, double known, double expected, double half, double times) {
    Finding finding(MonthRecords records) {
      var body = series.bodies().get(place);
      var figure = series.measure().figure();
      double value = series.listed().get(place).value();
      double distance = Math.abs(value - expected);
      var lost = figure.lost(List.of(body), Exact.ofStatistic(distance));
      var evidence = new HashMap<String, Evidence>();
      evidence.put("body", new Evidence.Bodies(List.of(body.id())));
      evidence.put("loss", Evidence.percent(Math.abs(value)));
      evidence.put("species", new Evidence.Kind(series.species()));
      evidence.put("difference", Evidence.percent(distance));
      // A loss below zero is a gain, which is not expected: the limit is printed as zero.
      evidence.put("lower", Evidence.percent(Math.max(0, expected - half)));
      evidence.put("upper", Evidence.percent(expected + half));
      evidence.put("bodies_before", new Evidence.Count(series.baseline()));
      if (Math.abs(known) >= FINEST) {
        evidence.put("explained", Evidence.percent(known));
      }
      return Finding.likely(
          figure == BodyFigure.CHILL ? Finding.Kind.CHILLED_BODIES : Finding.Kind.BENCH_BODIES,
          value < 0 ? "gain" : value > expected ? "above" : "below",
          List.of(body.id()),
          evidence,
          Finding.Cost.onRail(lost, series.species(), records));
    }
  }

  /**
   * The farthest bodies, on the rail and on the bench each. What is held waits for a person anyway
   * and is not judged on the bench.
   *
   * @param all the series
   * @param explained what is explained already: it is taken off before, and late bodies are left
   *     out
   */
  static List<Finding> findings(
      MonthRecords records, List<Series> all, Collection<ChangeExplanation> explained) {
    int number = all.stream().mapToInt(series -> series.ofMonth().size()).sum();
    return Groups.inOrder(all.stream(), Series::measure).values().stream()
        .flatMap(
            some ->
                some.stream()
                    .flatMap(series -> odd(series, explained, AlarmRates.BODIES / number))
                    .sorted(Comparator.comparingDouble(Odd::times).reversed())
                    .limit(MOST_BODIES))
        .map(one -> one.finding(records))
        .toList();
  }

  private static Stream<Odd> odd(
      Series series, Collection<ChangeExplanation> explained, double falseAlarms) {
    var late =
        explained.stream()
            .filter(one -> one.factor() == Factor.LATE)
            .flatMap(one -> one.bodies().stream())
            .collect(Collectors.toSet());
    var values = new ArrayList<Value>();
    for (int i = 0; i < series.bodies().size(); i++) {
      int place = i;
      double known = explained.stream().mapToDouble(one -> one.explains(series, place)).sum();
      var listed = series.listed().get(i);
      values.add(listed.with(listed.value() - known));
    }
    boolean isOfChill = series.measure() == Measure.CHILL;
    var judge = Judge.of(series, alike(values, series.baseline()), falseAlarms);
    return IntStream.range(series.baseline(), values.size())
        .filter(i -> !late.contains(series.bodies().get(i)))
        .filter(i -> isOfChill || series.bodies().get(i).account().isSettled())
        .mapToObj(judge::odd)
        .flatMap(Optional::stream);
  }

  /** Traits that few bodies before have become one. */
  private static List<Value> alike(List<Value> values, int baseline) {
    var numbers = new HashMap<String, Integer>();
    values.subList(0, baseline).stream()
        .flatMap(OddBodies::traits)
        .forEach(trait -> numbers.merge(trait, 1, Integer::sum));
    return values.stream()
        .map(
            v ->
                new Value(
                    traits(v)
                        .map(t -> numbers.getOrDefault(t, 0) < FEWEST_OF_KIND ? "" : t)
                        .toList(),
                    v.day(),
                    v.value(),
                    v.covariate()))
        .toList();
  }

  /** The traits of a value, each with its place. */
  private static Stream<String> traits(Value value) {
    return IntStream.range(0, value.kind().size()).mapToObj(i -> i + value.kind().get(i));
  }

  /** The usual values of a series, as they are and as square roots. */
  private record Judge(
      Series series, List<Value> values, double t, UsualValue usual, UsualValue roots) {
    static Judge of(Series series, List<Value> values, double falseAlarms) {
      var before = values.subList(0, series.baseline());
      var usual = UsualValue.of(before);
      var roots = before.stream().filter(v -> v.value() > 0).map(Judge::root).toList();
      double t = OF_MEDIAN * Moments.studentsAbove(usual.degrees(), falseAlarms / 2);
      return new Judge(series, values, t, usual, UsualValue.of(roots));
    }

    private static Value root(Value value) {
      return value.with(Math.sqrt(value.value()));
    }

    private double half(UsualValue of, Value value) {
      return t * Math.max(FINEST, of.spreadAt(value));
    }

    /** By how many half widths of the interval a value lies off; 0 if nothing is usual. */
    private double times(UsualValue of, Value value) {
      var expected = of.expected(value);
      return expected.isEmpty()
          ? 0
          : Math.abs(value.value() - expected.getAsDouble()) / half(of, value);
    }

    Optional<Odd> odd(int place) {
      var value = values.get(place);
      double times = times(usual, value);
      if (times <= 1 || value.value() > 0 && times(roots, root(value)) <= 1) {
        return Optional.empty();
      }
      double known = series.listed().get(place).value() - value.value();
      double expected = usual.expected(value).orElseThrow() + known;
      return Optional.of(new Odd(series, place, known, expected, half(usual, value), times));
    }
  }
}
