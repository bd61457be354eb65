package gambrel.insight.month.money;

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
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Money;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Findings from a month's money: debts, charges, and bodies that the shop bought. */
public final class MoneyFindings {
  private final MonthRecords records;
  private final List<OwnStock> stock;

  private MoneyFindings(MonthRecords records, List<OwnStock> stock) {
    this.records = records;
    this.stock = stock;
  }

  /**
   * The findings of a month.
   *
   * @param stock the shop's own bodies of the month
   * @param suppliers the shop's own bodies of the month and the twelve before, by supplier
   */
  public static List<Finding> of(
      MonthRecords records, List<OwnStock> stock, List<SupplierLine> suppliers) {
    var money = new MoneyFindings(records, stock);
    var findings = new ArrayList<Finding>();
    money.unpaid().ifPresent(findings::add);
    MonthChange.of(
            records,
            body -> Income.of(body).flatMap(Income::minorAUnit),
            body -> body.body().category())
        .stream()
        .filter(change -> change.difference().high() < 0)
        .map(change -> money.charges(change.species(), change.difference().reversed()))
        .forEach(findings::add);
    money.losses().ifPresent(findings::add);
    for (var line : suppliers) {
      line.toOthers()
          .filter(difference -> difference.high() < 0)
          .flatMap(difference -> money.supplier(line, difference.reversed()))
          .ifPresent(findings::add);
    }
    return findings;
  }

  private Optional<Finding> unpaid() {
    var late = Debt.late(records);
    if (late.isEmpty()) {
      return Optional.empty();
    }
    var oldest = late.get(0);
    var total = Debt.sum(late, Debt::due);
    var customer = records.night().shop().customer(oldest.statement().customer()).name();
    return Optional.of(
        new Finding(
            FindingKind.UNPAID,
            late.size() == 1 ? "one" : "many",
            late.stream().map(debt -> debt.statement().body()).distinct().toList(),
            Map.of(
                "statements", Evidence.count(late.size()),
                "total", new Evidence.Cash(total),
                "days", Evidence.count(Debt.LATE_DAYS),
                "customer", new Evidence.Name(customer),
                "since", new Evidence.Day(oldest.since()),
                "due", new Evidence.Cash(oldest.due())),
            OwnerCosts.ofShop(total),
            Sureness.CERTAIN));
  }

  private Finding charges(Species species, Difference less) {
    var bodies =
        MonthBody.of(species, records.bodies().settled()).stream()
            .filter(body -> Income.of(body).isPresent())
            .toList();
    var income = Income.of(species, bodies);
    var before = Income.of(species, records.baseline().settled());
    return less(
        FindingKind.CHARGES,
        "",
        species,
        bodies,
        less,
        Map.of(
            "charge", rate(income.minorAUnit().orElseThrow()),
            "usual", rate(before.minorAUnit().orElseThrow()),
            "bodies_before", Evidence.count(less.others())),
        income.weight());
  }

  private Optional<Finding> losses() {
    var losing =
        stock.stream()
            .filter(s -> s.margin().filter(m -> m.compareTo(Money.ZERO) < 0).isPresent())
            .toList();
    if (losing.isEmpty()) {
      return Optional.empty();
    }
    var margin = losing.stream().map(s -> s.margin().orElseThrow()).reduce(Money::plus);
    var lost = Money.ZERO.minus(margin.orElseThrow());
    var ids = MonthBody.ids(losing.stream().map(OwnStock::account).toList());
    return Optional.of(
        new Finding(
            FindingKind.STOCK,
            losing.size() == 1 ? "loss.one" : "loss.many",
            ids,
            Map.of(
                "bodies", Evidence.count(losing.size()),
                "which", new Evidence.Bodies(ids),
                "loss", new Evidence.Cash(lost)),
            OwnerCosts.ofShop(lost),
            Sureness.CERTAIN));
  }

  private Optional<Finding> supplier(SupplierLine line, Difference less) {
    var bought =
        stock.stream()
            .filter(s -> s.supplier().equals(line.supplier()) && s.species() == line.species())
            .toList();
    var weight =
        bought.stream()
            .flatMap(s -> s.cold().stream())
            .map(cold -> cold.fraction())
            .reduce(BigFraction.ZERO, BigFraction::add);
    return Optional.of(bought)
        .filter(some -> !some.isEmpty())
        .map(
            some ->
                less(
                    FindingKind.STOCK,
                    "supplier",
                    line.species(),
                    some.stream().map(OwnStock::account).toList(),
                    less,
                    Map.of(
                        "supplier",
                        new Evidence.Name(line.supplier()),
                        "others",
                        Evidence.count(less.others())),
                    weight));
  }

  /**
   * A finding that bodies brought less money for a unit of weight than they were compared with.
   *
   * @param less how much less, in minor units
   * @param others values besides those of the comparison
   * @param weight the weight that it cost, in the shop's unit
   */
  private Finding less(
      FindingKind kind,
      String variant,
      Species species,
      List<MonthBody> bodies,
      Difference less,
      Map<String, Evidence> others,
      BigFraction weight) {
    var mean = Exact.ofStatistic(less.mean());
    var evidence = new HashMap<String, Evidence>(others);
    evidence.put("species", new Evidence.Kind(species));
    evidence.put("bodies", Evidence.count(less.bodies()));
    evidence.put("less", rate(mean));
    evidence.put("lower", rate(Exact.ofStatistic(less.low())));
    evidence.put("upper", rate(Exact.ofStatistic(less.high())));
    evidence.put("false_alarms", GroupComparison.FALSE_ALARMS);
    var missed = new Money(Exact.units(mean.multiply(weight), 0));
    return new Finding(
        kind, variant, MonthBody.ids(bodies), evidence, OwnerCosts.ofShop(missed), Sureness.LIKELY);
  }

  /** A rate in the major unit, from one in minor units. */
  private Evidence rate(BigFraction minor) {
    return new Evidence.Rate(minor.divide(BigFraction.of(records.minorUnits())));
  }
}
