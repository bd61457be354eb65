package gambrel.insight.month.figures;

import gambrel.insight.month.figures.GroupComparison.Difference;
import gambrel.insight.month.figures.GroupComparison.Sample;
import gambrel.trade.measure.Groups;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Compares each group of the month's bodies, such as those of a boner or a supplier, with the
 * others. Three samples are compared: the month's bodies; the month's bodies, filled up to {@link
 * #ENOUGH} of each group with its latest before it, since few bodies tell little; and the bodies of
 * the month's second half, so that a change within the month is not averaged away. The largest
 * lower end counts. The three share the rate of false alarms.
 */
public final class LatestComparison {
  /** A group with so many bodies in the month is not filled up. */
  public static final int ENOUGH = 20;

  private LatestComparison() {}

  /**
   * The difference of every group that can be compared.
   *
   * @param samples those of the month and of the twelve months before, in order of time
   * @param late those of the month's second half
   * @param comparisons how many such comparisons, of one species each, share the rate
   */
  public static SortedMap<String, Difference> of(
      Compared<List<Sample>> samples, List<Sample> late, int comparisons) {
    var month = byGroup(samples.month());
    var filledUp = filledUp(month, byGroup(samples.before()));
    return surest(Stream.of(month, filledUp, byGroup(late)), comparisons);
  }

  private static SortedMap<String, List<Sample>> byGroup(List<Sample> samples) {
    return new TreeMap<>(Groups.inOrder(samples.stream(), Sample::group));
  }

  /** Equal samples count once; samples in which no group can be compared do not count. */
  private static SortedMap<String, Difference> surest(
      Stream<SortedMap<String, List<Sample>>> byGroup, int comparisons) {
    var looks =
        byGroup
            .map(samples -> samples.values().stream().flatMap(List::stream).toList())
            .distinct()
            .filter(look -> !GroupComparison.eachAgainstTheRest(look, 1).isEmpty())
            .toList();
    var differences = new TreeMap<String, Difference>();
    for (var look : looks) {
      GroupComparison.eachAgainstTheRest(look, looks.size() * comparisons)
          .forEach((group, d) -> differences.merge(group, d, LatestComparison::surer));
    }
    return differences;
  }

  private static Difference surer(Difference a, Difference b) {
    return b.low() > a.low() ? b : a;
  }

  private static SortedMap<String, List<Sample>> filledUp(
      SortedMap<String, List<Sample>> month, SortedMap<String, List<Sample>> before) {
    var filled = new TreeMap<String, List<Sample>>();
    month.forEach(
        (group, bodies) -> {
          var earlier = before.getOrDefault(group, List.of());
          int missing = Math.max(0, ENOUGH - bodies.size());
          var latest = earlier.stream().skip(Math.max(0, earlier.size() - missing));
          filled.put(group, Stream.concat(bodies.stream(), latest).toList());
        });
    return filled;
  }
}
