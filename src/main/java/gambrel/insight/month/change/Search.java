package gambrel.insight.month.change;

import gambrel.insight.month.figures.MonthBody;
import gambrel.trade.weighing.Weighing;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.IntToDoubleFunction;
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
  List<ChangeExplanation> found() {
    var tried = tried();
    var beyond =
        tried.stream()
            .map(one -> one.of(tried.size(), falseAlarms))
            .filter(ChangeExplanation::isBeyondLimit)
            .collect(Collectors.toCollection(ArrayList::new));
    var found = new ArrayList<ChangeExplanation>();
    while (!beyond.isEmpty()) {
      var best = best(beyond);
      found.add(best);
      beyond.removeIf(
          other -> other.parts().stream().anyMatch(p -> best.changes(p.series().measure())));
    }
    return found;
  }

  private static double fit(ChangeExplanation explanation) {
    return explanation.effect().strength() * explanation.effect().strength();
  }

  private static ChangeExplanation best(Collection<ChangeExplanation> all) {
    var byFit = Comparator.comparingDouble(Search::fit);
    var best = all.stream().max(byFit).orElseThrow();
    return all.stream()
        .filter(other -> other.factor().isGeneral() && fit(other) >= fit(best) - MARGIN)
        .min(Comparator.comparing(ChangeExplanation::factor).thenComparing(byFit.reversed()))
        .orElse(best);
  }

  private List<ChangeExplanation> tried() {
    var tried = new ArrayList<ChangeExplanation>();
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

  private Optional<ChangeExplanation> late(List<Series> chill) {
    var late = chill.stream().flatMap(s -> s.late().stream()).toList();
    var parts =
        late.stream()
            .map(s -> new ChangeExplanation.Part(s, s.exposure(i -> i < s.baseline() ? 0 : 1)))
            .toList();
    return ChangeExplanation.of(Factor.LATE, "", first, parts);
  }

  /** The first day of the month before, and every day of the month with a body. */
  private List<LocalDate> days(Collection<Series> some) {
    return Stream.concat(
            Stream.of(first.minusMonths(1)), some.stream().flatMap(Series::daysOfMonth))
        .distinct()
        .sorted()
        .toList();
  }

  private Stream<ChangeExplanation> byLevel(Factor factor, List<Series> some) {
    // Classes of one name in two species have nothing in common.
    return factor == Factor.CLASS || factor == Factor.BONER || factor == Factor.SUPPLIER
        ? some.stream().flatMap(one -> among(factor, List.of(one)))
        : among(factor, some);
  }

  private Stream<ChangeExplanation> among(Factor factor, List<Series> some) {
    var named = new IdentityHashMap<Series, List<Set<String>>>();
    var levels = new TreeSet<String>();
    for (var one : some) {
      named.put(one, one.bodies().stream().map(factor::levels).toList());
      one.ofMonth().forEach(body -> levels.addAll(factor.levels(body)));
    }
    boolean tells = factor == Factor.EVERYTHING || levels.size() > 1;
    return levels.stream()
        .filter(level -> tells)
        .flatMap(level -> days(some).stream().map(since -> Map.entry(level, since)))
        .flatMap(
            of ->
                explanation(
                    factor,
                    of.getKey(),
                    of.getValue(),
                    some,
                    one ->
                        i ->
                            one.isSince(i, of.getValue())
                                    && named.get(one).get(i).contains(of.getKey())
                                ? 1
                                : 0)
                    .stream());
  }

  private static Optional<ChangeExplanation> explanation(
      Factor factor,
      String level,
      LocalDate since,
      List<Series> some,
      Function<Series, IntToDoubleFunction> exposure) {
    var parts =
        some.stream()
            .map(one -> new ChangeExplanation.Part(one, one.exposure(exposure.apply(one))))
            .toList();
    return ChangeExplanation.of(factor, level, since, parts);
  }

  /**
   * Weights of a body that left a figure's whole, or came into it.
   *
   * @param hot whether they were of a hot body
   */
  private record Move(String scale, LocalDate day, boolean hot) {
    /** The moves of a body as parts of the whole; below zero if they came in. */
    static Map<Move, Double> of(Series series, MonthBody body) {
      var balance = body.balance();
      boolean chill = series.measure() == Measure.CHILL;
      double whole =
          body.share(series.measure().figure()).orElseThrow().whole().hundredThousandths();
      var moves = new HashMap<Move, Double>();
      for (var left : chill ? balance.rail().cold().weighings() : balance.outOfBoning()) {
        add(moves, left, false, 1 / whole);
      }
      for (var came : chill ? balance.rail().hot().weighings() : balance.boningWeighings()) {
        add(moves, came, chill, -1 / whole);
      }
      return moves;
    }

    private static void add(
        Map<Move, Double> moves, Weighing weighing, boolean hot, double factor) {
      double part = factor * weighing.net().hundredThousandths();
      moves.merge(new Move(weighing.scale().id(), weighing.date(), hot), part, Double::sum);
    }
  }

  /**
   * That a scale reads light from a day on, under all bodies or under cold ones alone: a loss rises
   * by the part of the whole that left on it, less the part that came in on it.
   */
  private Stream<ChangeExplanation> scales() {
    var moves = new IdentityHashMap<Series, List<Map<Move, Double>>>();
    var scales = new TreeSet<String>();
    var underHot = new TreeSet<String>();
    for (var one : series) {
      moves.put(one, one.bodies().stream().map(body -> Move.of(one, body)).toList());
      moves.get(one).stream()
          .skip(one.baseline())
          .flatMap(moved -> moved.keySet().stream())
          .forEach(move -> (move.hot() ? underHot : scales).add(move.scale()));
    }
    scales.addAll(underHot);
    return scales.stream()
        .flatMap(scale -> days(series).stream().map(since -> new Move(scale, since, true)))
        .flatMap(
            all ->
                underHot.contains(all.scale())
                    ? Stream.of(all, new Move(all.scale(), all.day(), false))
                    : Stream.of(all))
        .flatMap(
            of ->
                explanation(
                    Factor.SCALE,
                    of.scale(),
                    of.day(),
                    series,
                    one -> i -> light(of, moves.get(one).get(i)))
                    .stream());
  }

  private static double light(Move of, Map<Move, Double> moves) {
    double sum = 0;
    for (var moved : moves.entrySet()) {
      var move = moved.getKey();
      if ((of.hot() || !move.hot())
          && move.scale().equals(of.scale())
          && !move.day().isBefore(of.day())) {
        sum += moved.getValue();
      }
    }
    return sum;
  }
}
