package gambrel.insight.month;

import gambrel.insight.month.bodies.MonthRecords;
import gambrel.insight.month.findings.Finding;
import java.util.List;

/**
 * All that a month tells, computed once. Its summary and its rows of the data files come of it.
 *
 * @param records what it is drawn from
 * @param parts its computed parts
 * @param findings what its owner should look at, most money first
 * @param figures its figures
 */
public record MonthReport(
    MonthRecords records, MonthParts parts, List<Finding> findings, MonthFigures figures) {

  /** The report of a month. */
  public static MonthReport of(MonthRecords records) {
    var parts = MonthParts.of(records);
    return new MonthReport(
        records, parts, Findings.of(records, parts), MonthFigures.of(records, parts));
  }
}
