package gambrel.insight.month.loss;

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
  private HangingFindings() {}

  /** The findings of a month. */
  public static List<Finding> of(MonthRecords records, List<Hanging> all) {
    return all.stream()
        .filter(Hanging::isSure)
        .flatMap(
            hanging ->
                Spread.of(hanging.compared().before().stream().map(Hanging::days).toList())
                    .filter(usual -> usual.number() >= MonthRecords.ENOUGH)
                    .flatMap(usual -> of(records, hanging, usual))
                    .stream())
        .toList();
  }

  private static Optional<Finding> of(MonthRecords records, Hanging hanging, Spread usual) {
    var range = Exact.max(BigFraction.ONE, usual.upper().subtract(usual.lower()));
    var limit = usual.upper().add(range.multiply(3));
    var late =
        Ownership.OWN.of(hanging.compared().month()).stream()
            .filter(body -> Hanging.days(body).compareTo(limit) > 0)
            .toList();
    if (late.isEmpty()) {
      return Optional.empty();
    }
    var days = BigFraction.ZERO;
    var lost = BigFraction.ZERO;
    for (var body : late) {
      var over = Hanging.days(body).subtract(usual.median());
      days = days.add(over);
      lost =
          lost.add(Hanging.cold(body).multiply(over).multiply(hanging.percentADay()).divide(100));
    }
    return Optional.of(
        new Finding(
            FindingKind.HANGING,
            "",
            late.stream().map(body -> body.id()).toList(),
            Map.of(
                "bodies", Evidence.count(late.size()),
                "species", new Evidence.Kind(hanging.species()),
                "usual", new Evidence.Number(usual.median(), 0),
                "limit", new Evidence.Number(limit, 0),
                "days", new Evidence.Number(days, 0),
                "weight", new Evidence.Mass(Weight.of(lost)),
                "loss", new Evidence.Percent(hanging.percentADay(), 2)),
            records.rail().of(hanging.species(), lost).map(OwnerCosts::ofShop).orElse(List.of()),
            Sureness.LIKELY));
  }
}
