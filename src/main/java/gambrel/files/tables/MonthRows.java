package gambrel.files.tables;

import gambrel.insight.month.MonthReport;
import gambrel.insight.month.bodies.Ownership;
import gambrel.insight.month.bodies.Spread;
import gambrel.insight.month.findings.MonthFigure;
import gambrel.insight.month.loss.LossChart;
import gambrel.insight.statistics.ControlChart;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Money;
import gambrel.trade.shop.Settings;
import java.math.BigDecimal;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A month's rows of the data files that stand behind the owner's months.
 *
 * @param month the month
 * @param charts its rows of {@code month-charts.csv}: each body with the limits that the twelve
 *     months before gave its chart
 * @param figures its rows of {@code month-figures.csv}
 */
public record MonthRows(YearMonth month, List<List<String>> charts, List<List<String>> figures) {
  static final String CHARTS =
      "month,chart,species,body,killed,value_pct,moving_range,baseline_bodies,centre,lower,upper,"
          + "signal";
  static final String FIGURES =
      "month,figure,whose,species,group,bodies,value,unit,baseline_bodies,baseline_value,"
          + "baseline_lower_quartile,baseline_median,baseline_upper_quartile,interval,lower,upper";

  /** Prints a month's report. A figure that is known of no body is left out. */
  public static MonthRows of(MonthReport report) {
    var month = report.records().month();
    var settings = report.records().settings();
    return new MonthRows(
        month,
        Stream.of(report.parts().chills(), report.parts().benches())
            .flatMap(List::stream)
            .flatMap(chart -> chart.ofMonth().stream().map(point -> row(month, chart, point)))
            .toList(),
        report.figures().all().stream()
            .filter(figure -> figure.bodies() > 0 || figure.species().isEmpty())
            .map(figure -> row(month, figure, settings))
            .toList());
  }

  private static List<String> row(YearMonth month, LossChart chart, LossChart.Point point) {
    return new RowBuilder()
        .text(month.toString())
        .text(chart.loss().id())
        .text(chart.species().id())
        .text(point.body())
        .text(point.account().body().killed().orElseThrow().toString())
        .decimal(Exact.round(point.percent(), RowBuilder.PERCENT))
        .optional(point.movingRange().map(ControlChart::output))
        .number(chart.baseline())
        .optional(chart.centre().map(ControlChart::output))
        .optional(chart.lower().map(ControlChart::output))
        .optional(chart.upper().map(ControlChart::output))
        .text(String.join(";", point.signals()))
        .cells();
  }

  private static List<String> row(YearMonth month, MonthFigure figure, Settings settings) {
    var unit = figure.name().unit();
    int decimals = unit.decimals(Money.digits(settings.currency()));
    var before = figure.before();
    var interval = figure.interval();
    return new RowBuilder()
        .text(month.toString())
        .text(figure.name().id())
        .text(figure.whose().map(Ownership::id).orElse(""))
        .text(figure.species().map(species -> species.id()).orElse(""))
        .text(figure.group().id())
        .number(figure.bodies())
        .optional(round(figure.value(), decimals))
        .text(unit.id(settings.unit().id(), settings.currency()))
        .number(before.bodies())
        .optional(round(before.value(), decimals))
        .percent(before.spread().map(Spread::lower))
        .percent(before.spread().map(Spread::median))
        .percent(before.spread().map(Spread::upper))
        .text(interval.map(i -> i.kind().id()).orElse(""))
        .optional(round(interval.map(MonthFigure.Interval::lower), decimals))
        .optional(round(interval.map(MonthFigure.Interval::upper), decimals))
        .cells();
  }

  private static Optional<BigDecimal> round(Optional<BigFraction> value, int decimals) {
    return value.map(v -> Exact.round(v, decimals));
  }
}
