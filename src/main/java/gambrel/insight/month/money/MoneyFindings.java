package gambrel.insight.month.money;

import gambrel.insight.month.MonthParts;
import gambrel.insight.month.bodies.MonthBody;
import gambrel.insight.month.bodies.MonthRecords;
import gambrel.insight.month.findings.Evidence;
import gambrel.insight.month.findings.Finding;
import gambrel.insight.month.findings.FindingKind;
import gambrel.insight.month.findings.GroupComparison;
import gambrel.insight.month.findings.MonthChange;
import gambrel.insight.month.findings.OwnerCosts;
import gambrel.insight.month.findings.Sureness;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Money;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** What a month's money asks to be looked at: debts, charges, and what was bought. */
public final class MoneyFindings {
  private final MonthRecords records;
  private final MonthParts parts;

  private MoneyFindings(MonthRecords records, MonthParts parts) {
    this.records = records;
    this.parts = parts;
  }

  /** The findings of a month. */
  public static List<Finding> of(MonthRecords records, MonthParts parts) {
    var own = new MoneyFindings(records, parts);
    return Stream.of(own.unpaid().stream(), own.charges(), own.losses().stream(), own.suppliers())
        .flatMap(found -> found)
        .toList();
  }

  private Optional<Finding> unpaid() {
    var late = LateDebts.of(records);
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
                "days", Evidence.count(LateDebts.DAYS),
                "customer", new Evidence.Name(customer),
                "since", new Evidence.Day(oldest.since()),
                "due", new Evidence.Cash(oldest.due())),
            OwnerCosts.ofShop(total),
            Sureness.CERTAIN));
  }

  private Stream<Finding> charges() {
    return MonthChange.of(
            records,
            account -> Income.of(account).flatMap(Income::minorAUnit),
            account -> account.body().category())
        .stream()
        .filter(change -> change.difference().high() < 0)
        .map(this::charges);
  }

  private Finding charges(MonthChange change) {
    var bodies =
        records.bodies().settled().stream()
            .filter(a -> a.body().species() == change.species())
            .filter(a -> Income.of(a).isPresent())
            .toList();
    var income = Income.of(change.species(), bodies);
    var before = Income.of(change.species(), records.baseline().settled());
    var difference = change.difference();
    var less = Exact.ofStatistic(-difference.mean());
    return new Finding(
        FindingKind.CHARGES,
        "",
        ids(bodies),
        Map.of(
            "species", new Evidence.Kind(change.species()),
            "charge", rate(income.minorAUnit().orElseThrow()),
            "usual", rate(before.minorAUnit().orElseThrow()),
            "bodies", Evidence.count(difference.bodies()),
            "bodies_before", Evidence.count(difference.others()),
            "less", rate(less),
            "lower", rate(Exact.ofStatistic(-difference.high())),
            "upper", rate(Exact.ofStatistic(-difference.low())),
            "false_alarms", GroupComparison.FALSE_ALARMS),
        OwnerCosts.ofShop(new Money(Exact.units(less.multiply(income.weight()), 0))),
        Sureness.LIKELY);
  }

  private Optional<Finding> losses() {
    var losing =
        parts.stock().stream()
            .filter(s -> s.margin().filter(m -> m.compareTo(Money.ZERO) < 0).isPresent())
            .toList();
    if (losing.isEmpty()) {
      return Optional.empty();
    }
    var lost = losing.stream().map(s -> s.margin().orElseThrow()).reduce(Money.ZERO, Money::plus);
    var accounts = losing.stream().map(OwnStock::account).toList();
    return Optional.of(
        new Finding(
            FindingKind.STOCK,
            losing.size() == 1 ? "loss.one" : "loss.many",
            ids(accounts),
            Map.of(
                "bodies", Evidence.count(losing.size()),
                "which", new Evidence.Bodies(ids(accounts)),
                "loss", new Evidence.Cash(Money.ZERO.minus(lost))),
            OwnerCosts.ofShop(Money.ZERO.minus(lost)),
            Sureness.CERTAIN));
  }

  private Stream<Finding> suppliers() {
    return parts.suppliers().stream()
        .filter(line -> line.toOthers().filter(d -> d.high() < 0).isPresent())
        .flatMap(line -> supplier(line).stream());
  }

  private Optional<Finding> supplier(SupplierLine line) {
    var bought =
        parts.stock().stream()
            .filter(s -> s.account().body().supplier().equals(line.supplier()))
            .filter(s -> s.account().body().species() == line.species())
            .toList();
    if (bought.isEmpty()) {
      return Optional.empty();
    }
    var difference = line.toOthers().orElseThrow();
    var less = Exact.ofStatistic(-difference.mean());
    var missed =
        bought.stream()
            .flatMap(s -> s.cold().stream())
            .map(cold -> cold.fraction().multiply(less))
            .reduce(BigFraction.ZERO, BigFraction::add);
    return Optional.of(
        new Finding(
            FindingKind.STOCK,
            "supplier",
            ids(bought.stream().map(OwnStock::account).toList()),
            Map.of(
                "supplier", new Evidence.Name(line.supplier()),
                "species", new Evidence.Kind(line.species()),
                "less", rate(less),
                "lower", rate(Exact.ofStatistic(-difference.high())),
                "upper", rate(Exact.ofStatistic(-difference.low())),
                "bodies", Evidence.count(difference.bodies()),
                "others", Evidence.count(difference.others()),
                "false_alarms", GroupComparison.FALSE_ALARMS),
            OwnerCosts.ofShop(new Money(Exact.units(missed, 0))),
            Sureness.LIKELY));
  }

  /** From minor units to the major unit. */
  private Evidence rate(BigFraction minor) {
    return new Evidence.Rate(minor.divide(BigFraction.of(records.minorUnits())));
  }

  private static List<String> ids(List<MonthBody> accounts) {
    return accounts.stream().map(a -> a.body().id()).sorted().toList();
  }
}
