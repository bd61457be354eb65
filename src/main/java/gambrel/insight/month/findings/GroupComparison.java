package gambrel.insight.month.findings;

import gambrel.insight.statistics.Students;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Compares two groups of bodies, each body only with such as are like it (same species, class, way
 * of cutting: the caller says what). Within each kind of body that both groups have, the means are
 * compared; the differences are pooled by number, and the interval is Student's, with the scatter
 * inside groups taken as one. A comparison of two groups of one kind is the two-sample t interval
 * of the NIST/SEMATECH e-Handbook, 7.3.1, with equal scatter.
 */
public final class GroupComparison {
  /** Fewer bodies on either side than this are not compared. */
  public static final int FEWEST = 8;

  /** Of so many comparisons of groups that do not differ, one at most finds a difference. */
  public static final int ONE_FALSE_IN = 100;

  /** The same rate as a value of a finding. */
  public static final Evidence FALSE_ALARMS = Evidence.percent(BigFraction.of(100, ONE_FALSE_IN));

  private GroupComparison() {}

  /**
   * One body in a comparison.
   *
   * @param body its id
   * @param kind bodies are compared within a kind
   * @param group the side that it is on
   * @param value what is compared
   */
  public record Sample(String body, String kind, String group, double value) {}

  /**
   * How far a group lies from the others.
   *
   * @param bodies of the group that have their like among the others
   * @param others the others that have their like in the group
   * @param mean group less others
   * @param low lower end of the interval
   * @param high upper end of the interval
   */
  public record Difference(int bodies, int others, double mean, double low, double high) {
    /** Whether the whole interval lies on one side of nothing. */
    public boolean isSure() {
      return low > 0 || high < 0;
    }
  }

  /**
   * Every group against all others together, by group. The rate of false alarms is shared out among
   * the groups compared, so that it holds for all of them together (Bonferroni). Groups without
   * {@link #FEWEST} bodies on both sides are missing.
   */
  public static SortedMap<String, Difference> eachAgainstTheRest(Collection<Sample> samples) {
    return eachAgainstTheRest(samples, 1);
  }

  /**
   * The same, as one of so many looks at the same groups, among which the rate is shared out too.
   */
  public static SortedMap<String, Difference> eachAgainstTheRest(
      Collection<Sample> samples, int looks) {
    var sides = new TreeMap<String, Cells>();
    for (String group : groups(samples)) {
      var cells = Cells.of(samples, group);
      if (cells.isEnough()) {
        sides.put(group, cells);
      }
    }
    double confidence = 1 - 1.0 / ONE_FALSE_IN / Math.max(1, sides.size() * looks);
    var found = new TreeMap<String, Difference>();
    sides.forEach((group, cells) -> found.put(group, cells.difference(confidence)));
    return found;
  }

  /**
   * One group against all others together, as one of so many comparisons among which the rate of
   * false alarms is shared out; empty where there are too few bodies.
   */
  public static Optional<Difference> of(Collection<Sample> samples, String group, int comparisons) {
    return Optional.of(Cells.of(samples, group))
        .filter(Cells::isEnough)
        .map(cells -> cells.difference(1 - 1.0 / ONE_FALSE_IN / Math.max(1, comparisons)));
  }

  private static List<String> groups(Collection<Sample> samples) {
    return samples.stream().map(Sample::group).distinct().sorted().toList();
  }

  /** The kinds that both sides have. */
  private record Cells(List<Cell> inside, List<Cell> outside) {

    static Cells of(Collection<Sample> samples, String group) {
      var inside = new TreeMap<String, List<Double>>();
      var outside = new TreeMap<String, List<Double>>();
      for (var sample : samples) {
        (sample.group().equals(group) ? inside : outside)
            .computeIfAbsent(sample.kind(), kind -> new ArrayList<>())
            .add(sample.value());
      }
      inside.keySet().retainAll(outside.keySet());
      outside.keySet().retainAll(inside.keySet());
      return new Cells(cells(inside), cells(outside));
    }

    private static List<Cell> cells(Map<String, List<Double>> values) {
      return values.values().stream().map(Cell::of).toList();
    }

    boolean isEnough() {
      return number(inside) >= FEWEST && number(outside) >= FEWEST;
    }

    private static int number(List<Cell> cells) {
      return cells.stream().mapToInt(Cell::number).sum();
    }

    Difference difference(double confidence) {
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
      double half = half(confidence, weights);
      return new Difference(number(inside), number(outside), mean, mean - half, mean + half);
    }

    private double half(double confidence, double weights) {
      int freedom = number(inside) + number(outside) - 2 * inside.size();
      double squares = 0;
      for (var cell : inside) {
        squares += cell.squares();
      }
      for (var cell : outside) {
        squares += cell.squares();
      }
      if (freedom < 1) {
        return Double.POSITIVE_INFINITY;
      }
      double t = Students.above(freedom, (1 - confidence) / 2);
      return t * Math.sqrt(squares / freedom / weights);
    }
  }

  private record Cell(int number, double mean, double squares) {
    static Cell of(List<Double> values) {
      double mean = values.stream().mapToDouble(v -> v).average().orElseThrow();
      double squares = values.stream().mapToDouble(v -> (v - mean) * (v - mean)).sum();
      return new Cell(values.size(), mean, squares);
    }
  }
}
