package gambrel.insight.month;

import gambrel.insight.month.bodies.MonthRecords;
import gambrel.insight.month.findings.Completeness;
import gambrel.insight.month.findings.Finding;
import gambrel.insight.month.loss.LossFindings;
import gambrel.insight.month.money.MoneyFindings;
import gambrel.insight.month.pace.PaceFindings;
import gambrel.insight.month.value.ChoiceFindings;
import gambrel.insight.month.yields.YieldFindings;
import java.util.List;
import java.util.stream.Stream;

/** Makes the findings of a month. */
public final class Findings {
  private Findings() {}

  /** The findings of a month, most money first. */
  public static List<Finding> of(MonthRecords records) {
    return of(records, MonthParts.of(records));
  }

  /** The findings of a month from its parts. */
  static List<Finding> of(MonthRecords records, MonthParts parts) {
    return Stream.of(
            LossFindings.of(records, parts.chills(), parts.benches(), parts.chillDays()),
            parts.completeness().stream().flatMap(Completeness::finding).toList(),
            parts.hanging().stream().flatMap(h -> h.finding(records).stream()).toList(),
            YieldFindings.of(records, parts.boners()),
            PaceFindings.of(records, parts.pace()),
            ChoiceFindings.of(records, parts.choices()),
            MoneyFindings.of(records, parts.stock(), parts.suppliers()))
        .flatMap(List::stream)
        .sorted(Finding.ORDER)
        .toList();
  }
}
