package gambrel.month;

import gambrel.month.money.MoneyFindings;
import gambrel.month.pace.PaceFindings;
import gambrel.month.value.ChoiceFindings;
import gambrel.month.yields.YieldFindings;
import java.util.List;
import java.util.stream.Stream;

/** Findings from yields, work, values and money. */
final class ValueFindings {
  private ValueFindings() {}

  static List<Finding> of(MonthRecords records) {
    return Stream.of(
            YieldFindings.of(records),
            PaceFindings.of(records),
            ChoiceFindings.of(records),
            MoneyFindings.of(records))
        .flatMap(List::stream)
        .toList();
  }
}
