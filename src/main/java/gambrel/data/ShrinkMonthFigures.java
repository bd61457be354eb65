package gambrel.data;

import gambrel.measure.Exact;
import gambrel.measure.Weight;
import gambrel.month.Completeness;
import gambrel.month.Hanging;
import gambrel.month.LossRow;
import gambrel.month.MonthRecords;
import gambrel.month.Ratio;
import gambrel.shrink.Trend;
import java.math.BigDecimal;
import java.math.RoundingMode;
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
    for (var weight : Completeness.of(records)) {
      figures.add(known(weight));
    }
    return figures;
  }

  private static List<MonthFigure> losses(LossRow row, String unit, Currency currency) {
    var month = row.month();
    var before = row.before();
    String name = row.loss().id() + "_loss";
    String group = (row.whose().id() + " " + row.species().id() + " " + row.band().id()).strip();
    var figures = new ArrayList<MonthFigure>();
    figures.add(
        MonthFigure.plain(
            name + "_pct",
            group,
            month.bodies(),
            percent(month),
            PERCENT,
            before.bodies(),
            percent(before),
            row.spread()));
    figures.add(
        plain(name, group, month, Optional.of(month.part()), unit, before));
    row.money()
        .ifPresent(
            money ->
                figures.add(
                    MonthFigure.plain(
                        name + "_value",
                        group,
                        month.bodies(),
                        Optional.of(money.decimal(currency)),
                        currency.getCurrencyCode(),
                        before.bodies(),
                        Optional.empty(),
                        Optional.empty())));
    return figures;
  }

  private static MonthFigure plain(
      String name,
      String group,
      Ratio month,
      Optional<Weight> weight,
      String unit,
      Ratio before) {
    return MonthFigure.plain(
        name,
        group,
        month.bodies(),
        weight.map(Weight::output),
        unit,
        before.bodies(),
        Optional.of(before).filter(Ratio::isKnown).map(r -> r.part().output()),
        Optional.empty());
  }

  private static Optional<BigDecimal> percent(Ratio ratio) {
    return ratio.percent().map(p -> Exact.round(p, 3));
  }

  /** The slope with its confidence interval, and what one more body would lose in two weeks. */
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
        hanging.species().id(),
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
    return Optional.of(BigDecimal.valueOf(value).setScale(3, RoundingMode.HALF_UP));
  }

  private static MonthFigure known(Completeness weight) {
    return MonthFigure.plain(
        weight.what().id() + "_known",
        "",
        weight.of(),
        Optional.of(BigDecimal.valueOf(weight.known())),
        "bodies",
        0,
        Optional.empty(),
        Optional.empty());
  }
}
