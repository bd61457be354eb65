package gambrel.insight.month;

import gambrel.insight.month.bodies.MonthRecords;
import gambrel.insight.month.findings.Finding;
import java.util.List;

/**
 * The report of a month, from which its summary and its rows of the data files are made.
 *
 * @param records the records that it is drawn from
 * @param parts the computed parts
 * @param findings what the owner should look at, most money first
 * @param figures the figures
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
