package gambrel.insight.month.change;

import gambrel.trade.weighing.Weighing;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The search for the explanation that covers most of what changed in some figures. Every thing that
 * may explain it is tried from every day of the month on, and from the first day of the month
 * before. The rate of false alarms is divided among all that were tried (Bonferroni). What explains
 * most has the largest t. An explanation that is about all bodies is preferred to one about some of
 * them, unless the latter fits better by odds of about twenty to one: by 6 in the square of t,
 * which is twice the logarithm of the ratio of likelihoods.
 *
 * @param series the figures
 * @param factors what may explain a change
 * @param first the first day of the month
 * @param falseAlarms the rate of false alarms of the whole search
 */
record Search(List<Series> series, Set<Factor> factors, LocalDate first, double falseAlarms) {
  private static final double MARGIN = 6;

  /** The explanations of what changed, at most one for each figure; the strongest first. */
  List<Explanation> found() {
    var tried = tried();
    var beyond =
        tried.stream()
            .map(one -> one.of(tried.size(), falseAlarms))
            .filter(Explanation::isBeyondLimit)
            .collect(Collectors.toCollection(ArrayList::new));
    var found = new ArrayList<Explanation>();
    while (!beyond.isEmpty()) {
      var best = best(beyond);
      found.add(best);
      beyond.removeIf(
          other -> other.parts().stream().anyMatch(p -> best.changes(p.series().measure())));
    }
    return found;
  }

  private static double fit(Explanation explanation) {
    return explanation.effect().strength() * explanation.effect().strength();
  }

  private static Explanation best(Collection<Explanation> all) {
    var byFit = Comparator.comparingDouble(Search::fit);
    var best = all.stream().max(byFit).orElseThrow();
    return all.stream()
        .filter(other -> other.factor().isGeneral() && fit(other) >= fit(best) - MARGIN)
        .min(Comparator.comparing(Explanation::factor).thenComparing(byFit.reversed()))
        .orElse(best);
  }

  private List<Explanation> tried() {
    var tried = new ArrayList<Explanation>();
    for (var measure : Measure.values()) {
      var own = series.stream().filter(s -> s.measure() == measure).toList();
      if (measure == Measure.CHILL && factors.contains(Factor.LATE)) {
        late(own).ifPresent(tried::add);
      }
      for (var factor : factors) {
        if (factor != Factor.SCALE && factor != Factor.LATE && measure.isExplainedBy(factor)) {
          byLevel(factor, own).forEach(tried::add);
        }
      }
    }
    if (factors.contains(Factor.SCALE)) {
      scales().forEach(tried::add);
    }
    return tried;
  }

  private Optional<Explanation> late(List<Series> chill) {
    var late = chill.stream().flatMap(s -> s.late().stream()).toList();
    var parts =
        late.stream()
            .map(s -> new Explanation.Part(s, s.exposure(i -> i < s.baseline() ? 0 : 1)))
            .toList();
    return Explanation.of(Factor.LATE, "", first, parts);
  }

  /** The first day of the month before, and every day of the month with a body. */
  private List<LocalDate> days(Collection<Series> some) {
    return Stream.concat(
            Stream.of(first.minusMonths(1)), some.stream().flatMap(Series::daysOfMonth))
        .distinct()
        .sorted()
        .toList();
  }

  private static Set<String> levels(Factor factor, Collection<Series> some) {
    var levels = new TreeSet<String>();
    some.stream()
        .flatMap(s -> s.ofMonth().stream())
        .forEach(body -> levels.addAll(factor.levels(body)));
    return levels;
  }

  private Stream<Explanation> byLevel(Factor factor, List<Series> some) {
    // Classes of one name in two species have nothing in common.
    return factor == Factor.CLASS || factor == Factor.BONER || factor == Factor.SUPPLIER
        ? some.stream().flatMap(one -> among(factor, List.of(one)))
        : among(factor, some);
  }

  private Stream<Explanation> among(Factor factor, List<Series> some) {
    var levels = levels(factor, some);
    boolean tells = factor == Factor.EVERYTHING || levels.size() > 1;
    return levels.stream()
        .filter(level -> tells)
        .flatMap(
            level ->
                days(some).stream().flatMap(since -> since(factor, level, since, some).stream()));
  }

  private static Optional<Explanation> since(
      Factor factor, String level, LocalDate since, List<Series> some) {
    return Explanation.of(
        factor,
        level,
        since,
        some.stream()
            .map(
                s ->
                    new Explanation.Part(
                        s, s.exposure(i -> isSince(factor, level, since, s, i) ? 1 : 0)))
            .toList());
  }

  private static boolean isSince(
      Factor factor, String level, LocalDate since, Series series, int place) {
    return !series.listed().get(place).day().isBefore(since)
        && factor.levels(series.bodies().get(place)).contains(level);
  }

  private Stream<Explanation> scales() {
    return levels(Factor.SCALE, series).stream()
        .flatMap(
            scale ->
                days(series).stream()
                    .flatMap(since -> Stream.of(true, false).map(h -> scale(scale, since, h))))
        .flatMap(Optional::stream);
  }

  /**
   * That a scale reads light from a day on.
   *
   * @param hot whether under hot bodies too, or under cold ones alone
   */
  private Optional<Explanation> scale(String scale, LocalDate since, boolean hot) {
    var parts =
        series.stream()
            .map(s -> new Explanation.Part(s, s.exposure(i -> light(scale, since, hot, s, i))))
            .toList();
    return Explanation.of(Factor.SCALE, scale, since, parts);
  }

  /**
   * By how many points a loss rises for each per cent by which a scale reads light: the part of the
   * whole that left on it, less the part that came in on it.
   */
  private static double light(
      String scale, LocalDate since, boolean hot, Series series, int place) {
    var body = series.bodies().get(place);
    var balance = body.balance();
    var whole = body.share(series.measure().figure()).orElseThrow().whole();
    boolean chill = series.measure() == Measure.CHILL;
    var left = chill ? balance.rail().cold().weighings() : balance.outOfBoning();
    var came = chill ? balance.rail().hot().weighings() : balance.boningWeighings();
    double in = chill && !hot ? 0 : on(scale, since, came);
    return (on(scale, since, left) - in) / whole.hundredThousandths();
  }

  private static double on(String scale, LocalDate since, List<Weighing> weighings) {
    double sum = 0;
    for (var weighing : weighings) {
      if (weighing.scale().id().equals(scale) && !weighing.date().isBefore(since)) {
        sum += weighing.net().hundredThousandths();
      }
    }
    return sum;
  }
}
