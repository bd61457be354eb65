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
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * CuttingStyles of cutting the shop's own bodies that realised less than another way, beyond
 * chance. What a customer orders is the customer's choice and no finding.
 */
public final class ChoiceFindings {
  private final MonthRecords records;
  private final CutChoices choices;

  private ChoiceFindings(MonthRecords records) {
    this.records = records;
    this.choices = new CutChoices(records.rail().items());
  }

  /** The findings of a month. */
  public static List<Finding> of(MonthRecords records, List<CutChoice> lately) {
    var findings = new ArrayList<Finding>();
    var own = new ChoiceFindings(records);
    for (var choice : lately) {
      for (var way : choice.ways()) {
        way.toBest()
            .filter(difference -> difference.high() < 0)
            .flatMap(difference -> own.finding(choice, way, difference))
            .ifPresent(findings::add);
      }
    }
    return findings;
  }

  private Optional<Finding> finding(CutChoice choice, CutChoice.Way way, Difference difference) {
    var cuts =
        choices.cuts(choice.piece(), choice.perPiece(), ownBodies()).stream()
            .filter(cut -> cut.account().body().species() == choice.species())
            .filter(cut -> cut.way().equals(ids(way)))
            .toList();
    if (cuts.isEmpty()) {
      return Optional.empty();
    }
    var less = choice.best().value().subtract(way.value());
    var missed =
        cuts.stream()
            .map(cut -> cut.base().fraction().multiply(less))
            .reduce(BigFraction.ZERO, BigFraction::add);
    return Optional.of(
        new Finding(
            FindingKind.CUT_CHOICE,
            choice.perPiece() ? "piece" : "body",
            cuts.stream().map(cut -> cut.account().id()).sorted().toList(),
            Map.of(
                "piece", new Evidence.Cuts(choice.species(), List.of(choice.piece())),
                "best", new Evidence.Cuts(choice.species(), choice.best().items()),
                "way", new Evidence.Cuts(choice.species(), way.items()),
                "less", new Evidence.Rate(less),
                "bodies_best", Evidence.count(difference.others()),
                "bodies", Evidence.count(difference.bodies()),
                "bodies_month", Evidence.count(cuts.size()),
                "difference_low", new Evidence.Rate(Exact.ofStatistic(-difference.high())),
                "difference_high", new Evidence.Rate(Exact.ofStatistic(-difference.low())),
                "false_alarms", GroupComparison.FALSE_ALARMS),
            OwnerCosts.ofShop(Money.of(missed, records.settings().currency())),
            Sureness.LIKELY));
  }

  private List<MonthBody> ownBodies() {
    return Ownership.OWN.of(records.bodies().settled());
  }

  private static String ids(CutChoice.Way way) {
    return way.items().stream().map(item -> item.id()).collect(Collectors.joining(" "));
  }
}
