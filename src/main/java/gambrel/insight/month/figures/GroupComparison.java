package gambrel.insight.month.figures;

import gambrel.insight.statistics.Moments;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Groups;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Compares two groups of bodies, each body only with bodies of its kind (for example of the same
 * class and cut the same way). Of each kind that both groups have, the means are compared. The
 * differences are averaged, weighted by number. The interval is Student's, with one scatter for all
 * groups and kinds. With a single kind it is the two-sample t interval with equal scatter of the
 * NIST/SEMATECH e-Handbook, 7.3.1.
 */
public final class GroupComparison {
  /** The least number of bodies in each group. */
  public static final int FEWEST = 8;

  /** A group with so many bodies in a month is not filled up with earlier ones. */
  public static final int ENOUGH = 20;

  private GroupComparison() {}

  /**
   * One body in a comparison.
   *
   * @param kind bodies are compared within a kind
   * @param group the group that it belongs to
   * @param value what is compared
   */
  public record Sample(String kind, String group, double value) {}

  /**
   * How far a group lies from the others.
   *
   * @param bodies how many bodies of the group were compared
   * @param others how many others were compared
   * @param mean group less others
   * @param low lower end of the interval
   * @param high upper end of the interval
   */
  public record Difference(int bodies, int others, double mean, double low, double high) {
    /** Others less group. */
    public Difference reversed() {
      return new Difference(bodies, others, -mean, -high, -low);
    }

    /** The mean, for each unit of an amount. */
    public BigFraction times(BigFraction amount) {
      return Exact.ofStatistic(mean).multiply(amount);
    }

    /**
     * The values that decided: the ends as {@code lower} and {@code upper}, and three under the
     * names that the finding's sentence uses.
     *
     * @param names those of the mean, of the number of bodies and of the number of others
     * @param print how mean and ends are printed
     * @param more further values of the finding
     */
    public Map<String, Evidence> evidence(
        List<String> names, Function<BigFraction, Evidence> print, Map<String, Evidence> more) {
      var evidence = new HashMap<>(more);
      evidence.put(names.get(0), print.apply(Exact.ofStatistic(mean)));
      evidence.put(names.get(1), new Evidence.Count(bodies));
      evidence.put(names.get(2), new Evidence.Count(others));
      evidence.put("lower", print.apply(Exact.ofStatistic(low)));
      evidence.put("upper", print.apply(Exact.ofStatistic(high)));
      return evidence;
    }
  }

  /**
   * Compares every group with all others together. The rate of false alarms is divided among the
   * groups, so that it holds for all of them together (Bonferroni). Groups that have, or are
   * compared with, fewer than {@link #FEWEST} bodies are missing.
   *
   * @param comparisons how many such comparisons share the rate; 1 for a single one
   */
  public static SortedMap<String, Difference> eachAgainstTheRest(
      Collection<Sample> samples, int comparisons) {
    var groups = new TreeMap<String, Kinds>();
    samples.stream().map(Sample::group).forEach(g -> groups.put(g, Kinds.of(samples, g)));
    groups.values().removeIf(kinds -> !kinds.isEnough());
    var found = new TreeMap<String, Difference>();
    groups.forEach(
        (group, kinds) -> found.put(group, kinds.difference(groups.size() * comparisons)));
    return found;
  }

  /**
   * The same for a month. Since few bodies tell little, each group of the month is filled up to
   * {@link #ENOUGH} with its latest before it.
   *
   * @param samples in order of time
   */
  public static SortedMap<String, Difference> eachAgainstTheRest(
      Compared<List<Sample>> samples, int comparisons) {
    var before = Groups.inOrder(samples.before().stream(), Sample::group);
    var filled = new ArrayList<>(samples.month());
    Groups.inOrder(samples.month().stream(), Sample::group)
        .forEach(
            (group, bodies) -> {
              var earlier = before.getOrDefault(group, List.of());
              int missing = Math.max(0, ENOUGH - bodies.size());
              earlier.stream().skip(Math.max(0, earlier.size() - missing)).forEach(filled::add);
            });
    return eachAgainstTheRest(filled, comparisons);
  }

  /**
   * Compares one group with all others together, as one of {@code comparisons} among which the rate
   * of false alarms is divided; empty where there are too few bodies.
   */
  public static Optional<Difference> of(Collection<Sample> samples, String group, int comparisons) {
    return Optional.of(Kinds.of(samples, group))
        .filter(Kinds::isEnough)
        .map(kinds -> kinds.difference(Math.max(1, comparisons)));
  }

  /**
   * Month less before; empty where the month or the time before has too few values.
   *
   * @param figure the figure that is compared; empty if unknown
   * @param kind figures are compared within a kind
   * @param comparisons how many comparisons share the rate of false alarms
   */
  public static <T> Optional<Difference> difference(
      Compared<List<T>> compared,
      Function<T, Optional<BigFraction>> figure,
      Function<T, String> kind,
      int comparisons) {
    var samples =
        Stream.concat(
                samples("month", compared.month(), figure, kind),
                samples("before", compared.before(), figure, kind))
            .toList();
    return of(samples, "month", comparisons);
  }

  private static <T> Stream<Sample> samples(
      String group,
      List<T> all,
      Function<T, Optional<BigFraction>> figure,
      Function<T, String> kind) {
    return all.stream()
        .flatMap(
            one ->
                figure.apply(one).stream()
                    .map(value -> new Sample(kind.apply(one), group, value.doubleValue())));
  }

  /** The kinds that both sides have, in the same order. */
  private record Kinds(List<Moments> inside, List<Moments> outside) {

    static Kinds of(Collection<Sample> samples, String group) {
      var inside = new TreeMap<String, List<Double>>();
      var outside = new TreeMap<String, List<Double>>();
      for (var sample : samples) {
        (sample.group().equals(group) ? inside : outside)
            .computeIfAbsent(sample.kind(), kind -> new ArrayList<>())
            .add(sample.value());
      }
      inside.keySet().retainAll(outside.keySet());
      outside.keySet().retainAll(inside.keySet());
      return new Kinds(moments(inside), moments(outside));
    }

    private static List<Moments> moments(Map<String, List<Double>> values) {
      return values.values().stream().map(Moments::of).toList();
    }

    boolean isEnough() {
      return Moments.number(inside) >= FEWEST && Moments.number(outside) >= FEWEST;
    }

    Difference difference(int comparisons) {
      double weights = 0;
      double sum = 0;
      for (int i = 0; i < inside.size(); i++) {
        double a = inside.get(i).number();
        double b = outside.get(i).number();
        double weight = a * b / (a + b);
        weights += weight;
        sum += weight * (inside.get(i).mean() - outside.get(i).mean());
      }
      double mean = sum / weights;
      double half = halfWidth(AlarmRates.COMPARISON / comparisons, weights);
      return new Difference(
          Moments.number(inside), Moments.number(outside), mean, mean - half, mean + half);
    }

    private double halfWidth(double falseAlarms, double weights) {
      int freedom = Moments.number(inside) + Moments.number(outside) - 2 * inside.size();
      double squares = Moments.squaresWithin(inside) + Moments.squaresWithin(outside);
      return freedom < 1
          ? Double.POSITIVE_INFINITY
          : Moments.studentsAbove(freedom, falseAlarms / 2)
              * Math.sqrt(squares / freedom / weights);
    }
  }
}
