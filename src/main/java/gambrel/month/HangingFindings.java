package gambrel.month;

import gambrel.measure.Exact;
import gambrel.measure.Weight;
import gambrel.reckoning.BodyAccount;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Own bodies that were left hanging, and what the days beyond the usual ones cost. Left hanging is
 * what lies beyond the upper outer fence of the days that bodies of the twelve months before hung:
 * their upper quartile and three times the middle half (NIST/SEMATECH e-Handbook, 7.1.6). Days are
 * whole numbers, so that the inner fence may lie one day above the usual ones, and the middle half is
 * taken as a day at least: in a shop that always hangs a week it is nothing.
 */
final class HangingFindings {
  private final MonthRecords records;

  HangingFindings(MonthRecords records) {
    this.records = records;
  }

  Optional<Finding> of(Hanging hanging) {
    var usual = daysBefore(hanging).filter(d -> d.number() >= Baseline.ENOUGH);
    if (usual.isEmpty() || !hanging.isSure()) {
      return Optional.empty();
    }
    var late =
        records.bodies().killed().stream()
            .filter(a -> isOwn(a, hanging) && days(a).compareTo(fence(usual.get())) > 0)
            .toList();
    return late.isEmpty() ? Optional.empty() : Optional.of(of(hanging, usual.get(), late));
  }

  private Finding of(Hanging hanging, Spread usual, List<BodyAccount> late) {
    var days = sum(late.stream().map(a -> over(a, usual)).toList());
    var lost = sum(late.stream().map(a -> lost(a, hanging, usual)).toList());
    var costs =
        records
            .rail()
            .of(hanging.species(), lost)
            .map(money -> new Evidence.Cost(Ownership.OWN, money))
            .stream()
            .toList();
    var ids = late.stream().map(a -> a.body().id()).toList();
    return Costs.finding(
        FindingKind.HANGING,
        "",
        ids,
        List.of(
            Evidence.count(late.size()),
            new Evidence.Kind(hanging.species()),
            new Evidence.Number(usual.median(), 0),
            new Evidence.Number(days, 0),
            new Evidence.Mass(Weight.of(lost)),
            new Evidence.Percent(hanging.percentADay(), 2)),
        costs,
        Sureness.LIKELY);
  }

  /** Days hung by the bodies of the twelve months before, whoever's they are. */
  private Optional<Spread> daysBefore(Hanging hanging) {
    return Spread.of(
        records.baseline().of(Loss.AGEING).stream()
            .filter(a -> isHung(a, hanging))
            .map(HangingFindings::days)
            .toList());
  }

  private static BigFraction fence(Spread days) {
    var middleHalf = Exact.max(BigFraction.ONE, days.upper().subtract(days.lower()));
    return days.upper().add(middleHalf.multiply(3));
  }

  private static boolean isOwn(BodyAccount account, Hanging hanging) {
    return Ownership.of(account) == Ownership.OWN && isHung(account, hanging);
  }

  private static boolean isHung(BodyAccount account, Hanging hanging) {
    return account.body().species() == hanging.species()
        && account.balance().rail().ageing().isPresent()
        && account.balance().daysHung().isPresent();
  }

  private static BigFraction days(BodyAccount account) {
    return BigFraction.of(account.balance().daysHung().orElseThrow());
  }

  private static BigFraction over(BodyAccount account, Spread usual) {
    return days(account).subtract(usual.median());
  }

  private static BigFraction lost(BodyAccount account, Hanging hanging, Spread usual) {
    return account
        .balance()
        .rail()
        .ageing()
        .orElseThrow()
        .cold()
        .fraction()
        .multiply(over(account, usual))
        .multiply(hanging.percentADay())
        .divide(100);
  }

  private static BigFraction sum(List<BigFraction> values) {
    return values.stream().reduce(BigFraction.ZERO, BigFraction::add);
  }
}
