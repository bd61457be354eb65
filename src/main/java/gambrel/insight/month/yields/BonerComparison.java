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
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Exact;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;

/**
 * How much bone, as a share of the weight into the boning room, each boner's bodies gave compared
 * with bodies of the same class, cut the same way, that others boned. More bone means meat left on
 * it.
 *
 * @param species the species
 * @param differences by boner, in percentage points
 */
public record BonerComparison(Species species, SortedMap<String, Difference> differences) {
  private static final Comparator<MonthBody> BY_LAST_CUT =
      Comparator.comparing((MonthBody b) -> b.balance().lastCut().orElseThrow().toInstant())
          .thenComparing(MonthBody::id);

  /** The species in which boners can be compared. */
  public static List<BonerComparison> of(MonthRecords records) {
    var found = new ArrayList<BonerComparison>();
    int species = (int) records.settled().stream().filter(b -> !b.month().isEmpty()).count();
    for (var bodies : records.settled()) {
      var differences =
          GroupComparison.eachAgainstTheRest(bodies.map(BonerComparison::samples), species);
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
    var mince = records.values().minceOverBone(tree);
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

  /** The samples of bodies with one boner and known bone, in order of the last cut. */
  private static List<Sample> samples(List<MonthBody> bodies) {
    return bodies.stream()
        .filter(b -> b.boner().isPresent() && b.share(BodyFigure.BONE).isPresent())
        .sorted(BY_LAST_CUT)
        .map(BonerComparison::sample)
        .toList();
  }

  private static Sample sample(MonthBody body) {
    double bone = body.percent(BodyFigure.BONE).orElseThrow().doubleValue();
    return new Sample(body.classAndStyle(), body.boner().orElseThrow(), bone);
  }
}
