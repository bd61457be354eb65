package gambrel.insight.month.yields;

import gambrel.insight.month.bodies.BodyFigure;
import gambrel.insight.month.bodies.MonthBodies;
import gambrel.insight.month.bodies.MonthBody;
import gambrel.insight.month.bodies.MonthRecords;
import gambrel.insight.month.findings.GroupComparison;
import gambrel.insight.month.findings.GroupComparison.Difference;
import gambrel.insight.month.findings.GroupComparison.Sample;
import gambrel.trade.cuts.Species;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * How much bone, as a share of the weight into the boning room, each boner's bodies gave against
 * bodies of the same class, cut the same way, that others boned. Bone bins that weigh more than the
 * others' hold meat. Compared are the month's bodies by themselves; the month's bodies with each
 * boner's latest before it where the month has fewer than {@link #ENOUGH} of him, since few bodies
 * tell little; and the month's second half, so that what began in the month is not hidden by what
 * was before. Of these looks the surest counts; they share the rate of false alarms.
 *
 * @param species the species
 * @param differences by boner, in percentage points
 */
public record BonerComparison(Species species, SortedMap<String, Difference> differences) {
  /** So many bodies of a boner tell enough of him. */
  public static final int ENOUGH = 20;

  private static final int HALF = 15;

  /** The species in which boners can be compared. */
  public static List<BonerComparison> of(MonthRecords records) {
    var month = records.bodies();
    var found = new ArrayList<BonerComparison>();
    for (var species : Species.values()) {
      var whole = byBoner(species, month.settled());
      var alone = all(whole);
      fillUp(whole, byBoner(species, records.baseline().settled()));
      var differences = surest(alone, all(whole), late(species, month));
      if (!differences.isEmpty()) {
        found.add(new BonerComparison(species, differences));
      }
    }
    return found;
  }

  /** Equal samples count once; samples that compare no boner do not count. */
  private static SortedMap<String, Difference> surest(
      List<Sample> alone, List<Sample> filledUp, List<Sample> late) {
    var looks =
        Stream.of(alone, filledUp, late)
            .distinct()
            .filter(look -> !GroupComparison.eachAgainstTheRest(look).isEmpty())
            .toList();
    var differences = new TreeMap<String, Difference>();
    for (var look : looks) {
      GroupComparison.eachAgainstTheRest(look, looks.size())
          .forEach((boner, d) -> differences.merge(boner, d, BonerComparison::surer));
    }
    return differences;
  }

  private static List<Sample> late(Species species, MonthBodies month) {
    return all(
        byBoner(
            species,
            month.settled().stream()
                .filter(a -> a.balance().lastCut().orElseThrow().getDayOfMonth() > HALF)
                .toList()));
  }

  private static void fillUp(
      SortedMap<String, List<Sample>> month, SortedMap<String, List<Sample>> before) {
    month.forEach(
        (boner, bodies) -> {
          var earlier = before.getOrDefault(boner, List.of());
          int missing = Math.max(0, ENOUGH - bodies.size());
          bodies.addAll(earlier.subList(Math.max(0, earlier.size() - missing), earlier.size()));
        });
  }

  private static List<Sample> all(SortedMap<String, List<Sample>> byBoner) {
    return byBoner.values().stream().flatMap(List::stream).toList();
  }

  /** The one whose interval lies higher. */
  private static Difference surer(Difference a, Difference b) {
    return b.low() > a.low() ? b : a;
  }

  /** In order of the last cut. */
  private static SortedMap<String, List<Sample>> byBoner(
      Species species, Collection<MonthBody> accounts) {
    var samples = new TreeMap<String, List<Sample>>();
    accounts.stream()
        .filter(a -> a.body().species() == species)
        .sorted(
            Comparator.comparing((MonthBody a) -> a.balance().lastCut().orElseThrow().toInstant())
                .thenComparing(a -> a.body().id()))
        .flatMap(a -> sample(a).stream())
        .forEach(s -> samples.computeIfAbsent(s.group(), boner -> new ArrayList<>()).add(s));
    return samples;
  }

  private static Optional<Sample> sample(MonthBody account) {
    var boner = account.boner();
    var bone = account.percent(BodyFigure.BONE);
    return boner.isEmpty() || bone.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Sample(account.body().id(), kind(account), boner.get(), bone.get().doubleValue()));
  }

  /** Bodies of one class, cut the same way. */
  public static String kind(MonthBody account) {
    return account.body().category() + '|' + account.style();
  }
}
