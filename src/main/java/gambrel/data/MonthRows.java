package gambrel.data;

import gambrel.month.MonthRecords;
import java.time.YearMonth;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

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
    var cells = new HashMap<String, String>();
    return new MonthRows(
        records.month(),
        shared(MonthChartsTable.rows(records), cells),
        shared(MonthFiguresTable.rows(records), cells));
  }

  /** Most cells of a month are alike, and its rows wait for those of all other months. */
  private static List<List<String>> shared(List<List<String>> rows, Map<String, String> cells) {
    return rows.stream()
        .map(
            row ->
                row.stream()
                    .map(cell -> cells.computeIfAbsent(cell, Function.identity()))
                    .toList())
        .toList();
  }
}
