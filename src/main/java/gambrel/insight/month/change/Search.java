package gambrel.insight.month.change;

import gambrel.trade.measure.Groups;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The search for the explanation that covers most of what changed in some figures. Every suspect is
 * tried from the first day of the month before, and from every week of the month on. The rate of
 * false alarms is divided among all tests that differ (Bonferroni). What explains most has the
 * largest t. A change of all bodies is preferred to a scale, or to what as many have in common,
 * unless that fits better by odds of ten to one. Then a scale that weighs some of these bodies
 * alone is preferred, unless the change of all fits better by the same odds. If that scale is not
 * sure by itself, nothing is told. These odds are 4.6 in the square of t, which is twice the
 * logarithm of the ratio of likelihoods. A scale is named alone only if it fits better than every
 * other scale by the same odds. The day is the one of the month that fits best.
 *
 * @param series the figures
 * @param first the first day of the month
 * @param falseAlarms the rate of false alarms of the whole search
 */
record Search(List<Series> series, LocalDate first, double falseAlarms) {
  private static final double MARGIN = 4.6;
  private static final Comparator<ChangeExplanation> BY_FIT =
      Comparator.comparingDouble(ChangeExplanation::fit);

  /** The explanations of what changed, one for each figure, or several days; strongest first. */
  List<ChangeExplanation> found() {
    var tried = tried();
    double rate = falseAlarms / tests(tried);
    var beyond =
        tried.stream()
            .filter(ChangeExplanation::isWorse)
            .map(one -> one.with(one.names(), rate))
            .filter(ChangeExplanation::isSure)
            .collect(Collectors.toCollection(ArrayList::new));
    var found = new ArrayList<ChangeExplanation>();
    while (!beyond.isEmpty()) {
      var best = best(beyond, tried).with(Set.of(), rate);
      if (best.isSure()) {
        found.add(dated(best).with(asGood(best, tried), rate));
      }
      beyond.removeIf(best::explains);
    }
    return found;
  }

  /** How many different tests there were. That of a scale has two sides. */
  private static long tests(List<ChangeExplanation> tried) {
    var ofScales = tried.stream().filter(one -> one.factor() == Factor.SCALE);
    return Stream.of(tried.stream(), ofScales)
        .mapToLong(some -> some.map(ChangeExplanation::effect).distinct().count())
        .sum();
  }

  /** What to tell of some that are sure; beside them count all that were tried. */
  private static ChangeExplanation best(
      Collection<ChangeExplanation> sure, Collection<ChangeExplanation> tried) {
    var best = sure.stream().max(BY_FIT).orElseThrow();
    var general =
        sure.stream()
            .filter(other -> other.factor().isGeneral() && isAsGood(other, best))
            .filter(o -> best.factor() == Factor.SCALE || o.bodies().size() <= best.bodies().size())
            .min(Comparator.comparing(ChangeExplanation::factor).thenComparing(BY_FIT.reversed()));
    return general
        .flatMap(
            one ->
                tried.stream()
                    .filter(other -> isAsGood(other, one) && other.isOfScaleOfSome(one))
                    .max(BY_FIT))
        .or(() -> general)
        .orElse(best);
  }

  private static boolean isAsGood(ChangeExplanation one, ChangeExplanation best) {
    return one.fit() >= best.fit() - MARGIN;
  }

  /** The things of the kind that the best explanation accuses which explain it about as well. */
  private static Set<String> asGood(ChangeExplanation best, Collection<ChangeExplanation> all) {
    return all.stream()
        .filter(other -> other.factor() == best.factor() && isAsGood(other, best))
        .map(other -> other.suspect().level())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** The same from the day on that fits best; of several days the last. */
  private ChangeExplanation dated(ChangeExplanation one) {
    return Stream.concat(Stream.of(one), days().flatMap(day -> one.suspect().since(day).stream()))
        .filter(other -> other.isMore() == one.isMore())
        .max(BY_FIT.thenComparing(ChangeExplanation::since))
        .orElse(one);
  }

  private List<ChangeExplanation> tried() {
    var days = new TreeSet<LocalDate>(List.of(first, first.minusMonths(1)));
    days()
        .map(day -> day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY)))
        .filter(day -> day.isAfter(first))
        .forEach(days::add);
    return suspects()
        .flatMap(suspect -> days.stream().flatMap(day -> suspect.since(day).stream()))
        .toList();
  }

  /** The days of the month with a body. */
  private Stream<LocalDate> days() {
    return series.stream()
        .flatMap(one -> one.ofMonth().stream().map(one.measure()::day))
        .distinct();
  }

  private Stream<Suspect> suspects() {
    var chill = of(Measure.CHILL);
    var late = chill.stream().flatMap(one -> one.late().stream()).toList();
    var others =
        Stream.of(Factor.values())
            .flatMap(
                factor ->
                    Stream.of(Measure.values())
                        .filter(measure -> measure.isExplainedBy(factor))
                        .flatMap(measure -> Suspect.of(factor, of(measure))));
    return Stream.of(
            Suspect.late(late), Suspect.scales(Groups.both(chill, of(Measure.BENCH))), others)
        .flatMap(Function.identity());
  }

  private List<Series> of(Measure measure) {
    return series.stream().filter(one -> one.measure() == measure).toList();
  }
}
