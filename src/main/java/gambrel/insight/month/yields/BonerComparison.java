package gambrel.insight.month.yields;

import gambrel.insight.month.figures.BodyFigure;
import gambrel.insight.month.figures.Evidence;
import gambrel.insight.month.figures.FigureName;
import gambrel.insight.month.figures.Finding;
import gambrel.insight.month.figures.GroupComparison;
import gambrel.insight.month.figures.GroupComparison.Difference;
import gambrel.insight.month.figures.GroupComparison.Sample;
import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.month.figures.MonthFigure;
import gambrel.insight.month.figures.MonthRecords;
import gambrel.insight.month.figures.Ownership;
import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Groups;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How much bone, as a share of the weight into the boning room, each boner's bodies gave compared
 * with bodies of the same class, cut the same way, that others boned. More bone means meat left on
 * it. Three samples are compared: the month's bodies; the month's bodies, filled up to {@link
 * #ENOUGH} of each boner with his latest before it, since few bodies tell little; and the bodies of
 * the month's second half, so that a change within the month is not averaged away. The largest
 * lower end counts. The three share the rate of false alarms.
 *
 * @param species the species
 * @param differences by boner, in percentage points
 */
public record BonerComparison(Species species, SortedMap<String, Difference> differences) {
  /** A boner with so many bodies in the month is not filled up. */
  public static final int ENOUGH = 20;

  private static final int HALF = 15;

  private static final Comparator<MonthBody> BY_LAST_CUT =
      Comparator.comparing((MonthBody b) -> b.balance().lastCut().orElseThrow().toInstant())
          .thenComparing(MonthBody::id);

  /** The species in which boners can be compared. */
  public static List<BonerComparison> of(MonthRecords records) {
    var found = new ArrayList<BonerComparison>();
    for (var bodies : records.settled()) {
      var month = byBoner(bodies.month().stream());
      var filledUp = filledUp(month, byBoner(bodies.before().stream()));
      var late = byBoner(bodies.month().stream().filter(BonerComparison::isLate));
      var differences = surest(Stream.of(month, filledUp, late));
      if (!differences.isEmpty()) {
        found.add(new BonerComparison(bodies.species(), differences));
      }
    }
    return found;
  }

  /** The difference of every boner. */
  public List<MonthFigure> figures() {
    return differences.entrySet().stream()
        .map(
            e ->
                MonthFigure.of(
                        FigureName.BONE_TO_OTHERS_POINTS,
                        species,
                        new MonthFigure.Named(e.getKey()),
                        e.getValue().bodies(),
                        Optional.of(Exact.ofStatistic(e.getValue().mean())))
                    .with(MonthFigure.Comparison.of(e.getValue().others(), Optional.empty()))
                    .with(Optional.of(MonthFigure.Interval.of(e.getValue()))))
        .toList();
  }

  /** Boners whose bodies gave more bone. Meat left on it would at least have been mince. */
  public List<Finding> findings(MonthRecords records) {
    return differences.entrySet().stream()
        .filter(of -> of.getValue().low() > 0)
        .map(of -> finding(records, of.getKey(), of.getValue()))
        .toList();
  }

  private Finding finding(MonthRecords records, String boner, Difference more) {
    var bodies =
        MonthBody.of(species, records.bodies().settled()).stream()
            .filter(b -> b.boner().filter(boner::equals).isPresent())
            .toList();
    var tree = records.night().shop().cuts().of(species);
    var values = records.values();
    var bone = values.of(tree, CutTree.BONE).orElse(BigFraction.ZERO);
    var mince = values.of(tree, CutTree.MINCE).map(value -> value.subtract(bone));
    return Finding.likely(
        Finding.Kind.BONER,
        "",
        MonthBody.ids(bodies),
        more.evidence(
            List.of("difference", "bodies", "others"),
            Evidence::percent,
            Map.of("species", new Evidence.Kind(species), "boner", new Evidence.Name(boner))),
        Finding.Cost.of(
            Ownership.weights(bodies, body -> body.balance().boning()),
            mince.map(value -> more.times(value).divide(100)),
            records.settings().currency()));
  }

  /** Equal samples count once; samples in which no boner can be compared do not count. */
  private static SortedMap<String, Difference> surest(
      Stream<SortedMap<String, List<Sample>>> byBoner) {
    var looks =
        byBoner
            .map(samples -> samples.values().stream().flatMap(List::stream).toList())
            .distinct()
            .filter(look -> !GroupComparison.eachAgainstTheRest(look, 1).isEmpty())
            .toList();
    var differences = new TreeMap<String, Difference>();
    for (var look : looks) {
      GroupComparison.eachAgainstTheRest(look, looks.size())
          .forEach((boner, d) -> differences.merge(boner, d, BonerComparison::surer));
    }
    return differences;
  }

  private static Difference surer(Difference a, Difference b) {
    return b.low() > a.low() ? b : a;
  }

  private static boolean isLate(MonthBody body) {
    return body.balance().lastCut().orElseThrow().getDayOfMonth() > HALF;
  }

  private static SortedMap<String, List<Sample>> filledUp(
      SortedMap<String, List<Sample>> month, SortedMap<String, List<Sample>> before) {
    var filled = new TreeMap<String, List<Sample>>();
    month.forEach(
        (boner, bodies) -> {
          var earlier = before.getOrDefault(boner, List.of());
          int missing = Math.max(0, ENOUGH - bodies.size());
          var latest = earlier.stream().skip(Math.max(0, earlier.size() - missing));
          filled.put(boner, Stream.concat(bodies.stream(), latest).toList());
        });
    return filled;
  }

  /** The samples of bodies with one boner and known bone, by boner, in order of the last cut. */
  private static SortedMap<String, List<Sample>> byBoner(Stream<MonthBody> bodies) {
    var samples =
        bodies
            .filter(b -> b.boner().isPresent() && b.share(BodyFigure.BONE).isPresent())
            .sorted(BY_LAST_CUT)
            .map(BonerComparison::sample);
    return new TreeMap<>(Groups.inOrder(samples, Sample::group));
  }

  private static Sample sample(MonthBody body) {
    double bone = body.percent(BodyFigure.BONE).orElseThrow().doubleValue();
    return new Sample(body.id(), body.classAndStyle(), body.boner().orElseThrow(), bone);
  }
}
