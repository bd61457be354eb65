package gambrel.data;

import gambrel.measure.Exact;
import gambrel.month.Completeness;
import gambrel.month.Hanging;
import gambrel.month.LossRow;
import gambrel.month.MonthRecords;
import gambrel.month.Ratio;
import gambrel.shrink.Trend;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;

/** A month's losses, what hanging costs and what is missing, as figures. */
final class ShrinkMonthFigures {
  private static final String PERCENT = "%";

  private ShrinkMonthFigures() {}

  static List<MonthFigure> of(MonthRecords records) {
    var settings = records.night().shop().settings();
    var figures = new ArrayList<MonthFigure>();
    for (var row : LossRow.of(records)) {
      figures.addAll(losses(row, settings.unit().id(), settings.currency()));
    }
    for (var hanging : Hanging.of(records)) {
      figures.addAll(hanging(hanging));
    }
    figures.addAll(FurtherDayFigures.of(records));
    for (var weight : Completeness.of(records)) {
      figures.add(known(weight));
    }
    return figures;
  }

  private static List<MonthFigure> losses(LossRow row, String unit, Currency currency) {
    var before = Optional.of(row.before()).filter(Ratio::isKnown);
    var figures = new ArrayList<MonthFigure>();
    figures.add(figure(row, "_pct", percent(row.month()), PERCENT, percent(row.before()), true));
    figures.add(
        figure(
            row,
            "",
            Optional.of(row.month().part().output()),
            unit,
            before.map(r -> r.part().output()),
            false));
    if (row.money().isPresent()) {
      var money = row.money().map(m -> m.decimal(currency));
      figures.add(
          figure(row, "_value", money, currency.getCurrencyCode(), Optional.empty(), false));
    }
    return figures;
  }

  private static MonthFigure figure(
      LossRow row,
      String what,
      Optional<BigDecimal> value,
      String unit,
      Optional<BigDecimal> before,
      boolean spread) {
    return MonthFigure.plain(
        row.loss().id() + "_loss" + what,
        row.whose().id(),
        row.species().id(),
        row.band().id(),
        row.month().bodies(),
        value,
        unit,
        row.before().bodies(),
        before,
        row.spread().filter(s -> spread));
  }

  private static Optional<BigDecimal> percent(Ratio ratio) {
    return ratio.percent().map(p -> Exact.round(p, 3));
  }

  /** The slope with its confidence interval, and what one more body would lose in the usual days. */
  private static List<MonthFigure> hanging(Hanging hanging) {
    var trend = hanging.trend();
    double margin = trend.slopeMargin(Hanging.CONFIDENCE);
    double days = hanging.days().median().doubleValue();
    double expected = trend.predictionMargin(days, Hanging.CONFIDENCE);
    return List.of(
        line(hanging, trend, "ageing_pct_a_day", trend.slope(), "95 % confidence", margin),
        line(
            hanging,
            trend,
            "ageing_pct_at_median_days",
            trend.at(days),
            "95 % prediction",
            expected));
  }

  private static MonthFigure line(
      Hanging hanging, Trend trend, String name, double value, String interval, double margin) {
    return new MonthFigure(
        name,
        "",
        hanging.species().id(),
        "",
        trend.number(),
        decimal(value),
        PERCENT,
        0,
        Optional.empty(),
        Optional.empty(),
        interval,
        decimal(value - margin),
        decimal(value + margin));
  }

  private static Optional<BigDecimal> decimal(double value) {
    return Optional.of(Exact.round(Exact.ofStatistic(value), 3));
  }

  private static MonthFigure known(Completeness weight) {
    return MonthFigure.plain(
        weight.what().id() + "_known",
        "",
        "",
        "",
        weight.of(),
        Optional.of(BigDecimal.valueOf(weight.known())),
        "bodies",
        0,
        Optional.empty(),
        Optional.empty());
  }
}
