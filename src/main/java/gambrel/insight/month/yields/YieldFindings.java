package gambrel.insight.month.yields;

import gambrel.insight.month.bodies.BodyFigure;
import gambrel.insight.month.bodies.BodyValue;
import gambrel.insight.month.bodies.MonthBody;
import gambrel.insight.month.bodies.MonthRecords;
import gambrel.insight.month.bodies.Ownership;
import gambrel.insight.month.findings.Evidence;
import gambrel.insight.month.findings.Finding;
import gambrel.insight.month.findings.FindingKind;
import gambrel.insight.month.findings.GroupComparison.Difference;
import gambrel.insight.month.findings.MonthChange;
import gambrel.insight.month.findings.OwnerCosts;
import gambrel.insight.month.findings.Sureness;
import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Species;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Findings from a month's yields: meat left on the bone, and less taken home than before. */
public final class YieldFindings {
  private final MonthRecords records;

  private YieldFindings(MonthRecords records) {
    this.records = records;
  }

  /** The findings of a month. */
  public static List<Finding> of(MonthRecords records, List<BonerComparison> comparisons) {
    var yields = new YieldFindings(records);
    var findings = new ArrayList<Finding>();
    for (var comparison : comparisons) {
      comparison.differences().entrySet().stream()
          .filter(e -> e.getValue().low() > 0)
          .map(e -> yields.boner(comparison.species(), e.getKey(), e.getValue()))
          .forEach(findings::add);
    }
    MonthChange.of(records, b -> b.percent(BodyFigure.TAKE_HOME), MonthBody::classAndStyle).stream()
        .filter(change -> change.difference().high() < 0)
        .map(change -> yields.fall(change.species(), change.difference().reversed()))
        .forEach(findings::add);
    return findings;
  }

  /** Meat left on the bone would at least have been mince. */
  private Finding boner(Species species, String boner, Difference more) {
    var bodies =
        settled(species).stream().filter(b -> b.boner().filter(boner::equals).isPresent()).toList();
    var tree = records.night().shop().cuts().of(species);
    var values = records.rail().items();
    var bone = values.of(tree, CutTree.BONE).orElse(BigFraction.ZERO);
    return finding(
        FindingKind.BONER,
        more.evidence(
            List.of("difference", "bodies", "others"),
            Evidence::percent,
            Map.of("species", new Evidence.Kind(species), "boner", new Evidence.Name(boner))),
        bodies,
        OwnerCosts.weights(bodies, body -> body.balance().boning()),
        values.of(tree, CutTree.MINCE).map(mince -> mince.subtract(bone)),
        more);
  }

  private Finding fall(Species species, Difference less) {
    var bodies = settled(species);
    var total =
        bodies.stream()
            .map(b -> BodyValue.of(b, records.rail().items()))
            .filter(BodyValue::isEnough)
            .reduce(BodyValue::plus);
    return finding(
        FindingKind.YIELD,
        less.evidence(
            List.of("difference", "bodies", "bodies_before"),
            Evidence::percent,
            Map.of("species", new Evidence.Kind(species))),
        bodies,
        OwnerCosts.weights(bodies, body -> body.balance().cold()),
        total.map(v -> v.value().divide(v.valued())),
        less);
  }

  /** A finding that costs so many per cent of the weights at {@code rate}. */
  private Finding finding(
      FindingKind kind,
      Map<String, Evidence> evidence,
      List<MonthBody> bodies,
      Map<Ownership, BigFraction> weights,
      Optional<BigFraction> rate,
      Difference percent) {
    var lost = rate.map(r -> percent.times(r).divide(100));
    var costs = OwnerCosts.costs(weights, lost, records.settings().currency());
    return new Finding(kind, "", MonthBody.ids(bodies), evidence, costs, Sureness.LIKELY);
  }

  private List<MonthBody> settled(Species species) {
    return MonthBody.of(species, records.bodies().settled());
  }
}
