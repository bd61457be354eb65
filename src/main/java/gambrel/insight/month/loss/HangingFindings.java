package gambrel.insight.month.loss;

import gambrel.insight.month.bodies.Baseline;
import gambrel.insight.month.bodies.BodyFigure;
import gambrel.insight.month.bodies.Loss;
import gambrel.insight.month.bodies.MonthBody;
import gambrel.insight.month.bodies.MonthRecords;
import gambrel.insight.month.bodies.Ownership;
import gambrel.insight.month.bodies.Spread;
import gambrel.insight.month.findings.Evidence;
import gambrel.insight.month.findings.Finding;
import gambrel.insight.month.findings.FindingKind;
import gambrel.insight.month.findings.OwnerCosts;
import gambrel.insight.month.findings.Sureness;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Weight;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Finds the shop's own bodies that were left hanging, and the cost of the days beyond the usual
 * ones. The limit is the upper outer fence of the days that bodies of the twelve months before
 * hung: their upper quartile and three times their interquartile range (NIST/SEMATECH e-Handbook,
 * 7.1.6). That range counts as at least one day, since it is zero in a shop that always hangs a
 * week.
 */
public final class HangingFindings {
  private final MonthRecords records;

  private HangingFindings(MonthRecords records) {
    this.records = records;
  }

  /** The findings of a month. */
  public static List<Finding> of(MonthRecords records, List<Hanging> hanging) {
    var findings = new HangingFindings(records);
    return hanging.stream().flatMap(of -> findings.of(of).stream()).toList();
  }

  private Optional<Finding> of(Hanging hanging) {
    var usual = daysBefore(hanging).filter(d -> d.number() >= Baseline.ENOUGH);
    if (usual.isEmpty() || !hanging.isSure()) {
      return Optional.empty();
    }
    var late =
        records.bodies().killed().stream()
            .filter(b -> b.whose() == Ownership.OWN && isHung(b, hanging))
            .filter(b -> days(b).compareTo(fence(usual.get())) > 0)
            .toList();
    return late.isEmpty() ? Optional.empty() : Optional.of(of(hanging, usual.get(), late));
  }

  private Finding of(Hanging hanging, Spread usual, List<MonthBody> late) {
    var days = sum(late.stream().map(a -> over(a, usual)).toList());
    var lost = sum(late.stream().map(a -> lost(a, hanging, usual)).toList());
    var ids = late.stream().map(MonthBody::id).toList();
    return new Finding(
        FindingKind.HANGING,
        "",
        ids,
        Map.of(
            "bodies", Evidence.count(late.size()),
            "species", new Evidence.Kind(hanging.species()),
            "usual", new Evidence.Number(usual.median(), 0),
            "limit", new Evidence.Number(fence(usual), 0),
            "days", new Evidence.Number(days, 0),
            "weight", new Evidence.Mass(Weight.of(lost)),
            "loss", new Evidence.Percent(hanging.percentADay(), 2)),
        records.rail().of(hanging.species(), lost).map(OwnerCosts::ofShop).orElse(List.of()),
        Sureness.LIKELY);
  }

  /** Days hung by the bodies of the twelve months before; empty if there are none. */
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

  private static boolean isHung(MonthBody body, Hanging hanging) {
    return body.species() == hanging.species()
        && body.share(BodyFigure.AGEING).isPresent()
        && body.balance().daysHung().isPresent();
  }

  private static BigFraction days(MonthBody account) {
    return BigFraction.of(account.balance().daysHung().orElseThrow());
  }

  private static BigFraction over(MonthBody account, Spread usual) {
    return days(account).subtract(usual.median());
  }

  private static BigFraction lost(MonthBody body, Hanging hanging, Spread usual) {
    return Hanging.cold(body)
        .multiply(over(body, usual))
        .multiply(hanging.percentADay())
        .divide(100);
  }

  private static BigFraction sum(List<BigFraction> values) {
    return values.stream().reduce(BigFraction.ZERO, BigFraction::add);
  }
}
