package gambrel.insight.month.change;

import gambrel.insight.month.change.ChangeExplanation.Part;
import gambrel.insight.month.figures.MonthBody;
import gambrel.trade.weighing.Weighing;
import java.time.LocalDate;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A thing that may have changed figures of bodies, from some day on.
 *
 * @param factor what kind of thing
 * @param level which one
 * @param series the figures that it may have changed
 * @param marks how far each body of each series is exposed, and since when
 */
record Suspect(
    Factor factor, String level, List<Series> series, Map<Series, List<List<Mark>>> marks) {

  /**
   * That a body is exposed.
   *
   * @param day the day on which it was
   * @param exposure how far; 1 in full
   */
  private record Mark(LocalDate day, double exposure) {}

  /** The suspects of a kind; the figures are all of one measure. */
  static Stream<Suspect> of(Factor factor, List<Series> series) {
    var levels = new TreeSet<String>();
    series.forEach(one -> one.ofMonth().forEach(body -> levels.addAll(factor.levels(body))));
    return levels.stream()
        .map(
            level ->
                of(
                    factor,
                    level,
                    series,
                    one ->
                        body -> {
                          var day = one.measure().day(body);
                          boolean is = factor.levels(body).contains(level);
                          return is ? List.of(new Mark(day, 1)) : List.of();
                        }));
  }

  /** That the month's bodies were weighed late, all of them. */
  static Suspect late(List<Series> series) {
    return of(
        Factor.LATE,
        "",
        series,
        one -> {
          var late = Set.copyOf(MonthBody.ids(one.ofMonth()));
          var mark = List.of(new Mark(LocalDate.MAX, 1));
          return body -> late.contains(body.id()) ? mark : List.of();
        });
  }

  /**
   * Scales, each under all bodies, and under those alone that are not hot. If one reads light, a
   * loss rises by the part of the whole that left on it, less the part that came in on it.
   */
  static Stream<Suspect> scales(List<Series> series) {
    var hot = new TreeSet<String>();
    var all = new TreeSet<String>();
    for (var one : series) {
      for (var body : one.ofMonth()) {
        left(one, body).forEach(weighing -> all.add(weighing.scale().id()));
        came(one, body).forEach(w -> (isHot(one) ? hot : all).add(w.scale().id()));
      }
    }
    all.addAll(hot);
    return Stream.concat(
        all.stream().map(name -> of(Factor.SCALE, name, series, moves(name, true))),
        hot.stream().map(name -> of(Factor.SCALE, name, series, moves(name, false))));
  }

  private static Function<Series, Function<MonthBody, List<Mark>>> moves(
      String scale, boolean hot) {
    return series ->
        body -> {
          double whole =
              body.share(series.measure().figure()).orElseThrow().whole().hundredThousandths();
          var came = hot || !isHot(series) ? came(series, body) : List.<Weighing>of();
          return Stream.concat(
                  marks(left(series, body), scale, 1 / whole), marks(came, scale, -1 / whole))
              .toList();
        };
  }

  private static Stream<Mark> marks(List<Weighing> weighings, String scale, double factor) {
    return weighings.stream()
        .filter(weighing -> weighing.scale().id().equals(scale))
        .map(w -> new Mark(w.date(), factor * w.net().hundredThousandths()));
  }

  /** Whether what comes into the whole of its bodies is hot. */
  private static boolean isHot(Series series) {
    return series.measure() == Measure.CHILL;
  }

  private static List<Weighing> left(Series series, MonthBody body) {
    var balance = body.balance();
    return isHot(series) ? balance.rail().cold().weighings() : balance.outOfBoning();
  }

  private static List<Weighing> came(Series series, MonthBody body) {
    var balance = body.balance();
    return isHot(series) ? balance.rail().hot().weighings() : balance.boningWeighings();
  }

  private static Suspect of(
      Factor factor,
      String level,
      List<Series> series,
      Function<Series, Function<MonthBody, List<Mark>>> marks) {
    var all = new IdentityHashMap<Series, List<List<Mark>>>();
    series.forEach(one -> all.put(one, one.bodies().stream().map(marks.apply(one)).toList()));
    return new Suspect(factor, level, series, all);
  }

  /** Whether it has never to do with a body of its figures. */
  boolean misses(Series one, int place) {
    return marks.containsKey(one) && marks.get(one).get(place).isEmpty();
  }

  /** The explanation that it changed on a day; empty if the figures do not show it. */
  Optional<ChangeExplanation> since(LocalDate day) {
    var parts = series.stream().flatMap(one -> Part.of(one, exposure(one, day)).stream()).toList();
    return ChangeExplanation.of(this, day, parts);
  }

  private double[] exposure(Series one, LocalDate since) {
    return marks.get(one).stream()
        .mapToDouble(
            its -> {
              double sum = 0;
              for (var mark : its) {
                sum += mark.day().isBefore(since) ? 0 : mark.exposure();
              }
              return sum;
            })
        .toArray();
  }
}
