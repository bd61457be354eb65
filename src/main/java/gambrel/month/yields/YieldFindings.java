package gambrel.month.yields;

import gambrel.balance.BodyBalance;
import gambrel.cuts.CutTree;
import gambrel.cuts.Species;
import gambrel.measure.Exact;
import gambrel.measure.Weight;
import gambrel.month.BodyValue;
import gambrel.month.Costs;
import gambrel.month.Evidence;
import gambrel.month.Finding;
import gambrel.month.FindingKind;
import gambrel.month.LikeWithLike.Difference;
import gambrel.month.MonthChange;
import gambrel.month.MonthRecords;
import gambrel.month.Settled;
import gambrel.month.Sides;
import gambrel.month.Sureness;
import gambrel.reckoning.BodyAccount;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import org.apache.commons.numbers.fraction.BigFraction;

/** What the yields of a month ask to be looked at: meat left on the bone, and less taken home. */
public final class YieldFindings {
  private final MonthRecords records;
  private final List<BodyAccount> cut;

  private YieldFindings(MonthRecords records) {
    this.records = records;
    this.cut = Settled.of(records.bodies().cut());
  }

  /** The findings of a month. */
  public static List<Finding> of(MonthRecords records) {
    var findings = new ArrayList<Finding>();
    var own = new YieldFindings(records);
    for (var comparison : BonerComparison.of(records)) {
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

  private static Optional<BigFraction> takeHome(BodyAccount account) {
    return YieldFigure.TAKE_HOME.figure().percent(account.balance());
  }

  /** Meat on the bone would at least have been mince. */
  private Finding boner(Species species, String boner, Difference difference) {
    var bodies = bodies(species, a -> Boners.of(a.balance()).filter(boner::equals).isPresent());
    var tree = records.night().shop().cuts().of(species);
    var values = records.rail().items();
    var worth =
        values
            .of(tree, CutTree.MINCE)
            .map(mince -> mince.subtract(values.of(tree, CutTree.BONE).orElse(BigFraction.ZERO)));
    return Costs.finding(
        FindingKind.BONER,
        "",
        ids(bodies),
        List.of(
            new Evidence.Name(boner),
            new Evidence.Kind(species),
            points(difference.mean()),
            points(difference.low()),
            points(difference.high()),
            Evidence.count(difference.bodies()),
            Evidence.count(difference.others())),
        costs(worth, bodies, BodyBalance::boning, difference.mean()),
        Sureness.LIKELY);
  }

  private Finding fall(MonthChange change) {
    var bodies = bodies(change.species(), a -> true);
    var difference = change.difference();
    var total =
        bodies.stream()
            .map(a -> BodyValue.of(a.balance(), records.rail().items()))
            .filter(BodyValue::isEnough)
            .reduce(BodyValue::plus);
    return Costs.finding(
        FindingKind.YIELD,
        "",
        ids(bodies),
        List.of(
            new Evidence.Kind(change.species()),
            points(-difference.mean()),
            points(-difference.high()),
            points(-difference.low()),
            Evidence.count(difference.bodies()),
            Evidence.count(difference.others())),
        costs(
            total.map(v -> v.value().divide(v.valued())),
            bodies,
            BodyBalance::cold,
            -difference.mean()),
        Sureness.LIKELY);
  }

  private List<BodyAccount> bodies(Species species, Predicate<BodyAccount> which) {
    return cut.stream().filter(a -> a.body().species() == species).filter(which).toList();
  }

  private List<Evidence.Cost> costs(
      Optional<BigFraction> worth,
      List<BodyAccount> bodies,
      Function<BodyBalance, Optional<Weight>> weight,
      double points) {
    var currency = records.night().shop().settings().currency();
    return worth
        .map(w -> w.multiply(Exact.ofStatistic(points)).divide(100))
        .map(rate -> Sides.costs(bodies, a -> weight.apply(a.balance()), rate, currency))
        .orElseGet(List::of);
  }

  private static List<String> ids(List<BodyAccount> accounts) {
    return accounts.stream().map(a -> a.body().id()).sorted().toList();
  }

  private static Evidence points(double value) {
    return Evidence.percent(Exact.ofStatistic(value));
  }
}
