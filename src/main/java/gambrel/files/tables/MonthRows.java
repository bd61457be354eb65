package gambrel.files.tables;

import gambrel.insight.month.MonthReport;
import gambrel.insight.month.figures.Finding;
import gambrel.insight.month.figures.MonthFigure;
import gambrel.insight.month.figures.Ownership;
import gambrel.insight.month.figures.Spread;
import gambrel.insight.month.loss.LossChart;
import gambrel.insight.statistics.ControlChart;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Money;
import gambrel.trade.shop.Settings;
import java.math.BigDecimal;
import java.time.YearMonth;
import java.util.Collection;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A month's rows of the data files about months.
 *
 * @param month the month
 * @param charts its rows of {@code month-charts.csv}: each body with the limits of its chart, which
 *     come from the twelve months before
 * @param figures its rows of {@code month-figures.csv}
 * @param findings its rows of {@code findings.csv}
 */
public record MonthRows(
    YearMonth month,
    List<List<String>> charts,
    List<List<String>> figures,
    List<List<String>> findings) {
  private static final Columns<Charted> CHARTS =
      new Columns<Charted>()
          .add("month", Charted::month)
          .add("chart", row -> row.chart().loss().id())
          .add("species", row -> row.chart().species().id())
          .add("body", row -> row.point().body())
          .add("killed", row -> row.point().account().body().killed())
          .add("value_pct", row -> row.point().percent())
          .add("moving_range", row -> row.point().movingRange().map(ControlChart::output))
          .add("baseline_bodies", row -> row.chart().baseline())
          .add("centre", row -> row.chart().centre().map(ControlChart::output))
          .add("lower", row -> row.chart().lower().map(ControlChart::output))
          .add("upper", row -> row.chart().upper().map(ControlChart::output))
          .add("signal", row -> String.join(";", row.point().signals()));

  private static final Columns<Figure> FIGURES =
      new Columns<Figure>()
          .add("month", Figure::month)
          .add("figure", row -> row.figure().name().id())
          .add("whose", row -> row.figure().whose().map(Ownership::id))
          .add("species", row -> row.figure().species().map(Species::id))
          .add("group", row -> row.figure().group().id())
          .add("bodies", row -> row.figure().bodies())
          .add("value", row -> row.rounded(row.figure().value()))
          .add("unit", Figure::unit)
          .add("baseline_bodies", row -> row.figure().before().bodies())
          .add("baseline_value", row -> row.rounded(row.figure().before().value()))
          .add("baseline_lower_quartile", row -> row.figure().before().spread().map(Spread::lower))
          .add("baseline_median", row -> row.figure().before().spread().map(Spread::median))
          .add("baseline_upper_quartile", row -> row.figure().before().spread().map(Spread::upper))
          .add("interval", row -> row.figure().interval().map(i -> i.kind().id()))
          .add("lower", row -> row.end(MonthFigure.Interval::lower))
          .add("upper", row -> row.end(MonthFigure.Interval::upper));

  private static final Columns<Ranked> FINDINGS =
      new Columns<Ranked>()
          .add("month", Ranked::month)
          .add("rank", Ranked::rank)
          .add("finding", row -> row.finding().kind().id())
          .add("whose", row -> row.finding().whose().map(Ownership::id))
          .add("species", row -> row.finding().species().map(Species::id))
          .add("group", row -> String.join(";", row.finding().accused()))
          .add("since", row -> row.finding().since())
          .add("worth", row -> row.finding().money().map(m -> m.decimal(row.currency())))
          .add("page", row -> row.first() ? Optional.of(1) : Optional.empty());

  /**
   * A finding of a month.
   *
   * @param rank 1 for the first
   * @param first whether it stands on the first page of the summary
   */
  private record Ranked(
      YearMonth month, int rank, Finding finding, boolean first, Currency currency) {}

  /** A body on a chart of a month. */
  private record Charted(YearMonth month, LossChart chart, LossChart.Point point) {}

  /** A figure of a month. */
  private record Figure(YearMonth month, MonthFigure figure, Settings settings) {
    String unit() {
      return figure.name().unit().id(settings.unit().id(), settings.currency());
    }

    /** A value with the decimals of the figure's unit. */
    Optional<BigDecimal> rounded(Optional<BigFraction> value) {
      int decimals = figure.name().unit().decimals(Money.digits(settings.currency()));
      return value.map(v -> Exact.round(v, decimals));
    }

    Optional<BigDecimal> end(Function<MonthFigure.Interval, BigFraction> end) {
      return rounded(figure.interval().map(end));
    }
  }

  /**
   * The rows of a month's report. A figure that is known of no body is left out.
   *
   * @param onFirstPage how many findings stand on the first page of the summary
   */
  public static MonthRows of(MonthReport report, int onFirstPage) {
    var month = report.records().month();
    var settings = report.records().settings();
    return new MonthRows(
        month,
        report.charts().stream()
            .flatMap(chart -> chart.ofMonth().stream().map(p -> new Charted(month, chart, p)))
            .map(CHARTS::row)
            .toList(),
        report.figures().stream()
            .filter(figure -> figure.bodies() > 0 || figure.species().isEmpty())
            .map(figure -> FIGURES.row(new Figure(month, figure, settings)))
            .toList(),
        IntStream.range(0, report.findings().size())
            .mapToObj(
                i ->
                    new Ranked(
                        month,
                        i + 1,
                        report.findings().get(i),
                        i < onFirstPage,
                        settings.currency()))
            .map(FINDINGS::row)
            .toList());
  }

  /** The files, earliest month first. */
  public static List<Table> tables(Collection<MonthRows> months) {
    var sorted = months.stream().sorted(Comparator.comparing(MonthRows::month)).toList();
    return List.of(
        new Table(
            "month-charts.csv",
            CHARTS.names(),
            () -> sorted.stream().flatMap(month -> month.charts().stream())),
        new Table(
            "month-figures.csv",
            FIGURES.names(),
            () -> sorted.stream().flatMap(month -> month.figures().stream())),
        new Table(
            "findings.csv",
            FINDINGS.names(),
            () -> sorted.stream().flatMap(month -> month.findings().stream())));
  }
}
