package gambrel.month;

import java.util.List;

/** Findings from yields, work, values and money. */
final class ValueFindings {
  private ValueFindings() {}

  static List<Finding> of(MonthRecords records) {
    return List.of();
  }
}
