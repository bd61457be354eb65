package gambrel.files.tables;

import gambrel.insight.statistics.ControlChart;
import gambrel.insight.statistics.ShrinkSeries;
import gambrel.trade.measure.Exact;
import gambrel.trade.reckoning.Night;
import java.math.BigDecimal;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;

/** {@code data/shrink.csv}: the chill shrink of every body with its species' control chart. */
final class ShrinkTable {
  private static final List<String> COLUMNS =
      List.of(
          "month",
          "killed",
          "body",
          "species",
          "days_hung",
          "hours_chilled",
          "chill_shrink_pct",
          "ageing_shrink_pct",
          "centre",
          "lower",
          "upper",
          "signal");

  private ShrinkTable() {}

  static Table of(Night night) {
    return new Table(
        "shrink.csv",
        COLUMNS,
        () ->
            ShrinkSeries.of(night).stream()
                .flatMap(series -> series.points().stream().map(point -> row(series, point))));
  }

  private static List<String> row(ShrinkSeries series, ShrinkSeries.Point point) {
    var balance = point.balance();
    var killed = balance.body().killed().orElseThrow();
    boolean charted = balance.shares().chillShrink().isPresent();
    var chart = series.chart();
    return new RowBuilder()
        .text(YearMonth.from(killed).toString())
        .text(killed.toString())
        .text(balance.body().id())
        .text(series.species().id())
        .number(balance.daysHung())
        .optional(balance.hoursChilled().map(hours -> Exact.round(hours, 3)))
        .share(balance.shares().chillShrink())
        .share(balance.shares().ageingShrink())
        .optional(shown(charted, chart.centre()))
        .optional(shown(charted, chart.lower()))
        .optional(shown(charted, chart.upper()))
        .text(String.join(";", point.signals()))
        .cells();
  }

  private static Optional<BigDecimal> shown(boolean charted, Optional<BigDecimal> value) {
    return value.filter(v -> charted).map(ControlChart::output);
  }
}
