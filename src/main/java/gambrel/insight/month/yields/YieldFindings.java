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
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import org.apache.commons.numbers.fraction.BigFraction;

/** What the yields of a month ask to be looked at: meat left on the bone, and less taken home. */
public final class YieldFindings {

  private final MonthRecords records;

  private YieldFindings(MonthRecords records) {
    this.records = records;
  }

  /** The findings of a month. */
  public static List<Finding> of(MonthRecords records, List<BonerComparison> boners) {
    var findings = new ArrayList<Finding>();
    var own = new YieldFindings(records);
    for (var comparison : boners) {
      comparison
          .differences()
          .forEach(
              (boner, difference) -> {
                if (difference.low() > 0) {
                  findings.add(own.boner(comparison.species(), boner, difference));
                }
              });
    }
    for (var change : MonthChange.of(records, YieldFindings::takeHome, BonerComparison::kind)) {
      if (change.difference().high() < 0) {
        findings.add(own.fall(change));
      }
    }
    return findings;
  }

  private static Optional<BigFraction> takeHome(MonthBody account) {
    return account.percent(BodyFigure.TAKE_HOME);
  }

  /** Meat on the bone would at least have been mince. */
  private Finding boner(Species species, String boner, Difference difference) {
    var bodies = bodies(species, a -> a.boner().filter(boner::equals).isPresent());
    var tree = records.night().shop().cuts().of(species);
    var values = records.rail().items();
    var worth =
        values
            .of(tree, CutTree.MINCE)
            .map(mince -> mince.subtract(values.of(tree, CutTree.BONE).orElse(BigFraction.ZERO)));
    return new Finding(
        FindingKind.BONER,
        "",
        ids(bodies),
        Map.of(
            "boner", new Evidence.Name(boner),
            "species", new Evidence.Kind(species),
            "difference", points(difference.mean()),
            "lower", points(difference.low()),
            "upper", points(difference.high()),
            "bodies", Evidence.count(difference.bodies()),
            "others", Evidence.count(difference.others()),
            "false_alarms", GroupComparison.FALSE_ALARMS),
        costs(worth, bodies, BodyBalance::boning, difference.mean()),
        Sureness.LIKELY);
  }

  private Finding fall(MonthChange change) {
    var bodies = bodies(change.species(), a -> true);
    var difference = change.difference();
    var total =
        bodies.stream()
            .map(a -> BodyValue.of(a, records.rail().items()))
            .filter(BodyValue::isEnough)
            .reduce(BodyValue::plus);
    return new Finding(
        FindingKind.YIELD,
        "",
        ids(bodies),
        Map.of(
            "species", new Evidence.Kind(change.species()),
            "difference", points(-difference.mean()),
            "lower", points(-difference.high()),
            "upper", points(-difference.low()),
            "bodies", Evidence.count(difference.bodies()),
            "bodies_before", Evidence.count(difference.others()),
            "false_alarms", GroupComparison.FALSE_ALARMS),
        costs(
            total.map(v -> v.value().divide(v.valued())),
            bodies,
            BodyBalance::cold,
            -difference.mean()),
        Sureness.LIKELY);
  }

  private List<MonthBody> bodies(Species species, Predicate<MonthBody> which) {
    return records.bodies().settled().stream()
        .filter(a -> a.body().species() == species)
        .filter(which)
        .toList();
  }

  private List<Evidence.Cost> costs(
      Optional<BigFraction> worth,
      List<MonthBody> bodies,
      Function<BodyBalance, Optional<Weight>> weight,
      double points) {
    var rate = worth.map(w -> w.multiply(Exact.ofStatistic(points)).divide(100));
    return OwnerCosts.costs(
        OwnerCosts.weights(bodies, a -> weight.apply(a.balance())),
        rate,
        records.settings().currency());
  }

  private static List<String> ids(List<MonthBody> accounts) {
    return accounts.stream().map(a -> a.body().id()).sorted().toList();
  }

  private static Evidence points(double value) {
    return Evidence.percent(Exact.ofStatistic(value));
  }
}
