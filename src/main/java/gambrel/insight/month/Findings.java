package gambrel.insight.month;

import gambrel.insight.month.bodies.MonthRecords;
import gambrel.insight.month.findings.Finding;
import gambrel.insight.month.loss.HangingFindings;
import gambrel.insight.month.loss.LossFindings;
import gambrel.insight.month.money.MoneyFindings;
import gambrel.insight.month.pace.PaceFindings;
import gambrel.insight.month.value.ChoiceFindings;
import gambrel.insight.month.yields.YieldFindings;
import java.util.List;
import java.util.stream.Stream;

/** All that a month asks its owner to look at, most money first. */
public final class Findings {
  private Findings() {}

  /** The findings of a month, in {@link Finding#ORDER}. */
  public static List<Finding> of(MonthRecords records) {
    return of(records, MonthParts.of(records));
  }

  /** The findings of a month whose parts are known. */
  static List<Finding> of(MonthRecords records, MonthParts parts) {
    return Stream.of(
            LossFindings.of(records, parts),
            HangingFindings.of(records, parts.hanging()),
            YieldFindings.of(records, parts.boners()),
            PaceFindings.of(records, parts.pace()),
            ChoiceFindings.of(records, parts.choices()),
            MoneyFindings.of(records, parts))
        .flatMap(List::stream)
        .sorted(Finding.ORDER)
        .toList();
  }
}
