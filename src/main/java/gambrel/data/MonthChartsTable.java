package gambrel.data;

import gambrel.measure.Exact;
import gambrel.month.Loss;
import gambrel.month.LossChart;
import gambrel.month.MonthRecords;
import gambrel.shrink.ControlChart;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * {@code data/month-charts.csv}: the charts of every month, each with the limits that its twelve
 * months before gave it.
 */
final class MonthChartsTable {
  private static final String COLUMNS =
      "month,chart,species,body,killed,value_pct,moving_range,baseline_bodies,centre,lower,upper,"
          + "signal";

  private MonthChartsTable() {}

  static Table of(Collection<MonthRows> months) {
    var rows = months.stream().flatMap(month -> month.charts().stream()).toList();
    return new Table("month-charts.csv", List.of(COLUMNS.split(",")), rows);
  }

  static List<List<String>> rows(MonthRecords month) {
    var rows = new ArrayList<List<String>>();
    for (var loss : List.of(Loss.CHILL, Loss.BENCH)) {
      for (var chart : LossChart.of(month, loss)) {
        chart.ofMonth().forEach(point -> rows.add(row(month, chart, point)));
      }
    }
    return rows;
  }

  private static List<String> row(
      MonthRecords month, LossChart chart, LossChart.Point point) {
    return new Row()
        .text(month.month().toString())
        .text(chart.loss().id())
        .text(chart.species().id())
        .text(point.body())
        .text(point.account().body().killed().orElseThrow().toString())
        .decimal(Exact.round(point.percent(), 3))
        .optional(shown(point.movingRange()))
        .number(chart.baseline())
        .optional(shown(chart.centre()))
        .optional(shown(chart.lower()))
        .optional(shown(chart.upper()))
        .text(String.join(";", point.signals()))
        .cells();
  }

  private static Optional<BigDecimal> shown(Optional<BigDecimal> value) {
    return value.map(ControlChart::output);
  }
}
