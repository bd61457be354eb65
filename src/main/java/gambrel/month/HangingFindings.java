package gambrel.month;

import gambrel.measure.Weight;
import gambrel.reckoning.BodyAccount;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Own bodies that hung longer than the shop mostly hangs them, and what those days cost. */
final class HangingFindings {
  private final MonthRecords records;

  HangingFindings(MonthRecords records) {
    this.records = records;
  }

  Optional<Finding> of(Hanging hanging) {
    var late = records.bodies().killed().stream().filter(a -> isLate(a, hanging)).toList();
    if (late.isEmpty() || !hanging.isSure()) {
      return Optional.empty();
    }
    var days = sum(late.stream().map(a -> over(a, hanging)).toList());
    var lost = sum(late.stream().map(a -> lost(a, hanging)).toList());
    var costs =
        records
            .rail()
            .of(hanging.species(), lost)
            .map(money -> new Evidence.Cost(Ownership.OWN, money))
            .stream()
            .toList();
    var ids = late.stream().map(a -> a.body().id()).toList();
    return Optional.of(
        Costs.finding(
            FindingKind.HANGING,
            "",
            ids,
            List.of(
                Evidence.count(late.size()),
                new Evidence.Kind(hanging.species()),
                new Evidence.Number(hanging.days().median(), 0),
                new Evidence.Number(days, 0),
                new Evidence.Mass(Weight.of(lost)),
                new Evidence.Percent(hanging.percentADay(), 2)),
            costs,
            Sureness.LIKELY));
  }

  private static boolean isLate(BodyAccount account, Hanging hanging) {
    return account.body().species() == hanging.species()
        && Ownership.of(account) == Ownership.OWN
        && account.balance().rail().ageing().isPresent()
        && account.balance().daysHung().isPresent()
        && over(account, hanging).signum() > 0;
  }

  private static BigFraction over(BodyAccount account, Hanging hanging) {
    return BigFraction.of(account.balance().daysHung().orElseThrow())
        .subtract(hanging.days().median());
  }

  private static BigFraction lost(BodyAccount account, Hanging hanging) {
    return account
        .balance()
        .rail()
        .ageing()
        .orElseThrow()
        .cold()
        .fraction()
        .multiply(over(account, hanging))
        .multiply(hanging.percentADay())
        .divide(100);
  }

  private static BigFraction sum(List<BigFraction> values) {
    return values.stream().reduce(BigFraction.ZERO, BigFraction::add);
  }
}
