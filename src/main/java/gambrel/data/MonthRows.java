package gambrel.data;

import gambrel.month.MonthRecords;
import java.time.YearMonth;
import java.util.List;

/**
 * A month's rows of the data files that stand behind the owner's months.
 *
 * @param month the month
 * @param charts its rows of {@code month-charts.csv}
 * @param figures its rows of {@code month-figures.csv}
 */
public record MonthRows(YearMonth month, List<List<String>> charts, List<List<String>> figures) {
  /** Draws them from the month's records. */
  public static MonthRows of(MonthRecords records) {
    return new MonthRows(
        records.month(), MonthChartsTable.rows(records), MonthFiguresTable.rows(records));
  }
}
