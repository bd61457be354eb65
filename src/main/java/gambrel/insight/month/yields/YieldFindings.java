package gambrel.insight.month.yields;

import gambrel.insight.month.bodies.BodyFigure;
import gambrel.insight.month.bodies.BodyValue;
import gambrel.insight.month.bodies.MonthBody;
import gambrel.insight.month.bodies.MonthRecords;
import gambrel.insight.month.findings.Evidence;
import gambrel.insight.month.findings.Finding;
import gambrel.insight.month.findings.FindingKind;
import gambrel.insight.month.findings.GroupComparison;
import gambrel.insight.month.findings.GroupComparison.Difference;
import gambrel.insight.month.findings.MonthChange;
import gambrel.insight.month.findings.OwnerCosts;
import gambrel.insight.month.findings.Sureness;
import gambrel.trade.balance.BodyBalance;
import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Weight;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
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
        species,
        more,
        bodies,
        Map.of("boner", new Evidence.Name(boner), "others", Evidence.count(more.others())),
        costs(
            values.of(tree, CutTree.MINCE).map(mince -> mince.subtract(bone)),
            bodies,
            BodyBalance::boning,
            more.mean()));
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
        species,
        less,
        bodies,
        Map.of("bodies_before", Evidence.count(less.others())),
        costs(
            total.map(v -> v.value().divide(v.valued())), bodies, BodyBalance::cold, less.mean()));
  }

  private static Finding finding(
      FindingKind kind,
      Species species,
      Difference difference,
      List<MonthBody> bodies,
      Map<String, Evidence> others,
      List<Evidence.Cost> costs) {
    var evidence = new HashMap<String, Evidence>(others);
    evidence.put("species", new Evidence.Kind(species));
    evidence.put("difference", points(difference.mean()));
    evidence.put("lower", points(difference.low()));
    evidence.put("upper", points(difference.high()));
    evidence.put("bodies", Evidence.count(difference.bodies()));
    evidence.put("false_alarms", GroupComparison.FALSE_ALARMS);
    return new Finding(kind, "", MonthBody.ids(bodies), evidence, costs, Sureness.LIKELY);
  }

  private List<MonthBody> settled(Species species) {
    return MonthBody.of(species, records.bodies().settled());
  }

  /** What so many per cent of a weight of the bodies are worth at {@code rate}. */
  private List<Evidence.Cost> costs(
      Optional<BigFraction> rate,
      List<MonthBody> bodies,
      Function<BodyBalance, Optional<Weight>> weight,
      double percent) {
    return OwnerCosts.costs(
        OwnerCosts.weights(bodies, b -> weight.apply(b.balance())),
        rate.map(r -> r.multiply(Exact.ofStatistic(percent)).divide(100)),
        records.settings().currency());
  }

  private static Evidence points(double value) {
    return Evidence.percent(Exact.ofStatistic(value));
  }
}
