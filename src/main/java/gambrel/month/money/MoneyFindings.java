package gambrel.month.money;

import gambrel.measure.Exact;
import gambrel.measure.Money;
import gambrel.month.Costs;
import gambrel.month.Evidence;
import gambrel.month.Finding;
import gambrel.month.FindingKind;
import gambrel.month.MonthChange;
import gambrel.month.MonthRecords;
import gambrel.month.Settled;
import gambrel.month.Sureness;
import gambrel.reckoning.BodyAccount;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** What a month's money asks to be looked at: debts, charges, and what was bought. */
public final class MoneyFindings {
  private final MonthRecords records;

  private MoneyFindings(MonthRecords records) {
    this.records = records;
  }

  /** The findings of a month. */
  public static List<Finding> of(MonthRecords records) {
    var own = new MoneyFindings(records);
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
    var total = late.stream().map(Debt::due).reduce(Money.ZERO, Money::plus);
    var customer = records.night().shop().customer(oldest.statement().customer()).name();
    return Optional.of(
        Costs.finding(
            FindingKind.UNPAID,
            late.size() == 1 ? "one" : "many",
            late.stream().map(debt -> debt.statement().body()).distinct().toList(),
            List.of(
                Evidence.count(late.size()),
                new Evidence.Cash(total),
                Evidence.count(LateDebts.DAYS),
                new Evidence.Name(customer),
                new Evidence.Day(oldest.since()),
                new Evidence.Cash(oldest.due())),
            Costs.ofShop(total),
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
        Settled.of(records.bodies().cut()).stream()
            .filter(a -> a.body().species() == change.species())
            .filter(a -> Income.of(a).isPresent())
            .toList();
    var income = Income.of(change.species(), bodies);
    var before = Income.of(change.species(), Settled.of(records.baseline().cut()));
    var less = Exact.ofStatistic(-change.difference().mean());
    return Costs.finding(
        FindingKind.CHARGES,
        "",
        ids(bodies),
        List.of(
            new Evidence.Kind(change.species()),
            rate(income.minorAUnit().orElseThrow()),
            rate(before.minorAUnit().orElseThrow()),
            Evidence.count(change.difference().bodies()),
            Evidence.count(change.difference().others())),
        Costs.ofShop(new Money(Exact.units(less.multiply(income.weight()), 0))),
        Sureness.LIKELY);
  }

  private Optional<Finding> losses() {
    var losing =
        OwnStock.ofMonth(records).stream()
            .filter(s -> s.margin().filter(m -> m.compareTo(Money.ZERO) < 0).isPresent())
            .toList();
    if (losing.isEmpty()) {
      return Optional.empty();
    }
    var lost =
        losing.stream().map(s -> s.margin().orElseThrow()).reduce(Money.ZERO, Money::plus);
    var accounts = losing.stream().map(OwnStock::account).toList();
    return Optional.of(
        Costs.finding(
            FindingKind.STOCK,
            losing.size() == 1 ? "loss.one" : "loss.many",
            ids(accounts),
            List.of(
                Evidence.count(losing.size()),
                new Evidence.Bodies(ids(accounts)),
                new Evidence.Cash(Money.ZERO.minus(lost))),
            Costs.ofShop(Money.ZERO.minus(lost)),
            Sureness.CERTAIN));
  }

  private Stream<Finding> suppliers() {
    var now = OwnStock.ofMonth(records);
    return SupplierLine.of(OwnStock.lately(records)).stream()
        .filter(line -> line.toOthers().filter(d -> d.high() < 0).isPresent())
        .flatMap(line -> supplier(line, now).stream());
  }

  private Optional<Finding> supplier(SupplierLine line, List<OwnStock> now) {
    var bought =
        now.stream()
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
        Costs.finding(
            FindingKind.STOCK,
            "supplier",
            ids(bought.stream().map(OwnStock::account).toList()),
            List.of(
                new Evidence.Name(line.supplier()),
                new Evidence.Kind(line.species()),
                rate(less),
                Evidence.count(difference.bodies()),
                Evidence.count(difference.others())),
            Costs.ofShop(new Money(Exact.units(missed, 0))),
            Sureness.LIKELY));
  }

  /** From minor units to the major unit. */
  private Evidence rate(BigFraction minor) {
    int digits = Money.digits(records.night().shop().settings().currency());
    return new Evidence.Rate(minor.divide(BigFraction.of(10).pow(digits)));
  }

  private static List<String> ids(List<BodyAccount> accounts) {
    return accounts.stream().map(a -> a.body().id()).sorted().toList();
  }
}
