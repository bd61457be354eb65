package gambrel.insight.month.value;

import gambrel.insight.month.bodies.MonthBody;
import gambrel.insight.month.bodies.MonthRecords;
import gambrel.insight.month.bodies.Ownership;
import gambrel.insight.month.findings.Evidence;
import gambrel.insight.month.findings.Finding;
import gambrel.insight.month.findings.FindingKind;
import gambrel.insight.month.findings.GroupComparison;
import gambrel.insight.month.findings.GroupComparison.Difference;
import gambrel.insight.month.findings.OwnerCosts;
import gambrel.insight.month.findings.Sureness;
import gambrel.insight.month.value.CutChoice.Cut;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Ways in which the shop cut its own bodies in the month and that brought less than another way,
 * beyond chance. What a customer orders is the customer's choice and no finding.
 */
public final class ChoiceFindings {
  private ChoiceFindings() {}

  /** The findings of a month. */
  public static List<Finding> of(MonthRecords records, List<CutChoice> choices) {
    Set<String> own =
        Ownership.OWN.of(records.bodies().settled()).stream()
            .map(MonthBody::id)
            .collect(Collectors.toSet());
    var findings = new ArrayList<Finding>();
    for (var choice : choices) {
      for (var way : choice.ways()) {
        var cuts = way.cuts().stream().filter(cut -> own.contains(cut.body().id())).toList();
        way.toBest()
            .filter(difference -> difference.high() < 0 && !cuts.isEmpty())
            .map(difference -> finding(records, choice, way, cuts, difference.reversed()))
            .ifPresent(findings::add);
      }
    }
    return findings;
  }

  private static Finding finding(
      MonthRecords records,
      CutChoice choice,
      CutChoice.Way way,
      List<Cut> cuts,
      Difference bestLessWay) {
    var less = choice.best().value().subtract(way.value());
    var missed =
        cuts.stream()
            .map(cut -> cut.base().fraction().multiply(less))
            .reduce(BigFraction.ZERO, BigFraction::add);
    return new Finding(
        FindingKind.CUT_CHOICE,
        choice.perPiece() ? "piece" : "body",
        MonthBody.ids(cuts.stream().map(Cut::body).toList()),
        Map.of(
            "piece", new Evidence.Cuts(choice.species(), List.of(choice.piece())),
            "best", new Evidence.Cuts(choice.species(), choice.best().items()),
            "way", new Evidence.Cuts(choice.species(), way.items()),
            "less", new Evidence.Rate(less),
            "bodies_best", Evidence.count(bestLessWay.others()),
            "bodies", Evidence.count(bestLessWay.bodies()),
            "bodies_month", Evidence.count(cuts.size()),
            "difference_low", new Evidence.Rate(Exact.ofStatistic(bestLessWay.low())),
            "difference_high", new Evidence.Rate(Exact.ofStatistic(bestLessWay.high())),
            "false_alarms", GroupComparison.FALSE_ALARMS),
        OwnerCosts.ofShop(Money.of(missed, records.settings().currency())),
        Sureness.LIKELY);
  }
}
