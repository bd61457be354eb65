package gambrel.insight.month.change;

import gambrel.insight.month.change.ChangeExplanation.Part;
import gambrel.insight.month.figures.MonthBody;
import gambrel.trade.weighing.Weighing;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A thing that may have changed figures of bodies, from some day on.
 *
 * @param factor what kind of thing
 * @param level which one
 * @param series the figures that it may have changed
 * @param exposures of each body of each series, by level and by day, how far it was exposed; 1 in
 *     full
 */
record Suspect(
    Factor factor,
    String level,
    List<Series> series,
    Map<Series, List<Map<String, Map<LocalDate, Double>>>> exposures) {

  /** The suspects of a kind; the figures are all of one measure. */
  static Stream<Suspect> of(Factor factor, List<Series> series) {
    return all(
        factor,
        series,
        one ->
            body -> {
              var full = Map.of(one.measure().day(body), 1.0);
              return factor.levels(body).stream()
                  .collect(Collectors.toMap(level -> level, level -> full));
            });
  }

  /** That the month's bodies were weighed late, all of them. */
  static Stream<Suspect> late(List<Series> series) {
    var full = Map.of("", Map.of(LocalDate.MAX, 1.0));
    return all(
        Factor.LATE,
        series,
        one -> {
          var late = Set.copyOf(one.ofMonth());
          return body -> late.contains(body) ? full : Map.of();
        });
  }

  /**
   * Scales, each under all bodies, and under those alone that are not hot. If one reads light, a
   * loss rises by the part of the whole that left on it, less the part that came in on it.
   */
  static Stream<Suspect> scales(List<Series> series) {
    var hot =
        series.stream()
            .filter(Suspect::isHot)
            .flatMap(one -> one.ofMonth().stream().flatMap(body -> came(one, body).stream()))
            .map(weighing -> weighing.scale().id())
            .collect(Collectors.toSet());
    return Stream.concat(
        all(Factor.SCALE, series, one -> body -> moves(one, body, true)),
        all(Factor.SCALE, series, one -> body -> moves(one, body, !isHot(one)))
            .filter(suspect -> hot.contains(suspect.level())));
  }

  /** By scale what left on it, and if asked for less what came in on it. */
  private static Map<String, Map<LocalDate, Double>> moves(
      Series series, MonthBody body, boolean withCame) {
    double whole = body.share(series.measure().figure()).orElseThrow().whole().hundredThousandths();
    var moves = new HashMap<String, Map<LocalDate, Double>>();
    add(moves, left(series, body), 1 / whole);
    add(moves, withCame ? came(series, body) : List.of(), -1 / whole);
    return moves;
  }

  private static void add(
      Map<String, Map<LocalDate, Double>> moves, List<Weighing> weighings, double factor) {
    for (var weighing : weighings) {
      moves
          .computeIfAbsent(weighing.scale().id(), scale -> new HashMap<>())
          .merge(weighing.date(), factor * weighing.net().hundredThousandths(), Double::sum);
    }
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

  /** A suspect for each level that a body of the month has, in their order. */
  private static Stream<Suspect> all(
      Factor factor,
      List<Series> series,
      Function<Series, Function<MonthBody, Map<String, Map<LocalDate, Double>>>> exposures) {
    var all = new IdentityHashMap<Series, List<Map<String, Map<LocalDate, Double>>>>();
    var levels = new TreeSet<String>();
    for (var one : series) {
      var its = one.bodies().stream().map(exposures.apply(one)).toList();
      its.stream().skip(one.baseline()).forEach(of -> levels.addAll(of.keySet()));
      all.put(one, its);
    }
    return levels.stream().map(level -> new Suspect(factor, level, series, all));
  }

  /** Whether it has never to do with a body of its figures. */
  boolean misses(Series one, int place) {
    return exposures.containsKey(one) && !exposures.get(one).get(place).containsKey(level);
  }

  /** The explanation that it changed on a day; empty if the figures do not show it. */
  Optional<ChangeExplanation> since(LocalDate day) {
    var parts = series.stream().flatMap(one -> Part.of(one, exposure(one, day)).stream()).toList();
    return ChangeExplanation.of(this, day, parts);
  }

  private double[] exposure(Series one, LocalDate since) {
    return exposures.get(one).stream()
        .mapToDouble(
            its -> {
              double sum = 0;
              for (var of : its.getOrDefault(level, Map.of()).entrySet()) {
                sum += of.getKey().isBefore(since) ? 0 : of.getValue();
              }
              return sum;
            })
        .toArray();
  }
}
