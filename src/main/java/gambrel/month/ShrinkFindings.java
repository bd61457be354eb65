package gambrel.month;

import java.util.List;

/** Findings from what was lost in the chiller, on the rail and on the bench. */
final class ShrinkFindings {
  private ShrinkFindings() {}

  static List<Finding> of(MonthRecords records) {
    return List.of();
  }
}
