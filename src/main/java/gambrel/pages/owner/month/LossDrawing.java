package gambrel.pages.owner.month;

import gambrel.insight.month.loss.LossChart;
import gambrel.pages.views.ChartView;
import gambrel.pages.words.Wording;
import gambrel.trade.measure.Exact;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntUnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Draws what bodies of one species lost, with the lines that their twelve months before gave. */
final class LossDrawing {
  private static final int WIDTH = 660;
  private static final int HEIGHT = 172;
  private static final ChartView.Frame PLOT = new ChartView.Frame(34, 14, 560, 150, 30, 564, 164);
  private static final int LINE_OF_TEXT = 10;

  /** More dots than this would touch. */
  private static final int MOST_DOTS = 80;

  private final LossChart chart;
  private final List<LossChart.Point> points;
  private final Wording wording;
  private final ChartScale scale;
  private final ChartNotes notes;

  /**
   * A drawing.
   *
   * @param chart one that has limits
   * @param points those of it to show, at least one; the last ones are the month's
   */
  LossDrawing(LossChart chart, List<LossChart.Point> points, YearMonth month, Wording wording) {
    this.chart = chart;
    this.points = points;
    this.wording = wording;
    this.notes = new ChartNotes(chart, month, wording);
    this.scale = new ChartScale(PLOT.top(), PLOT.bottom(), range());
  }

  private List<BigDecimal> range() {
    var values = new ArrayList<>(points.stream().map(LossDrawing::value).toList());
    Stream.of(chart.centre(), chart.lower(), chart.upper())
        .flatMap(Optional::stream)
        .forEach(values::add);
    return values;
  }

  ChartView view() {
    var placed = placed();
    return new ChartView(
        heading(),
        description(),
        WIDTH,
        HEIGHT,
        PLOT,
        lines(),
        placed.stream().map(p -> p.x() + "," + p.y()).collect(Collectors.joining(" ")),
        points.size() <= MOST_DOTS,
        placed,
        new ChartMonths(PLOT, points, wording).ticks(),
        scale.ticks().stream().map(this::tick).toList(),
        notes.sentences());
  }

  private String heading() {
    return wording.say(
        "summary.chart." + chart.loss().id(), wording.say("summary.kind." + chart.species().id()));
  }

  private String description() {
    return wording.say(
        "summary.chart.description",
        heading(),
        wording.formats().count(points.size()),
        percent(chart.centre()),
        percent(chart.lower()),
        percent(chart.upper()));
  }

  /** Centre and limits; their words keep a line apart. */
  private List<ChartView.Line> lines() {
    var lines = new ArrayList<ChartView.Line>();
    int centre = scale.y(chart.centre().orElseThrow());
    int text = centre + 3;
    lines.add(line(centre, text, "summary.chart.centre", chart.centre(), true));
    limit(chart.upper(), "summary.chart.upper", y -> Math.min(y, text - LINE_OF_TEXT), lines);
    limit(chart.lower(), "summary.chart.lower", y -> Math.max(y, text + LINE_OF_TEXT), lines);
    return lines;
  }

  private void limit(
      Optional<BigDecimal> value, String key, IntUnaryOperator apart, List<ChartView.Line> lines) {
    if (value.isPresent()) {
      int y = scale.y(value.get());
      lines.add(line(y, apart.applyAsInt(y + 3), key, value, false));
    }
  }

  private ChartView.Line line(
      int y, int textY, String key, Optional<BigDecimal> value, boolean centre) {
    return new ChartView.Line(y, textY, wording.say(key, percent(value)), centre);
  }

  private List<ChartView.Point> placed() {
    var dots = IntStream.range(0, points.size()).mapToObj(this::dot).toList();
    var levels = lines().stream().map(ChartView.Line::y).toList();
    var labels = new ChartLabels(PLOT, dots, levels);
    var told = notes.told();
    return IntStream.range(0, points.size())
        .mapToObj(i -> point(points.get(i), dots.get(i), told, labels))
        .toList();
  }

  private ChartLabels.Dot dot(int index) {
    int width = PLOT.right() - PLOT.left();
    int x = PLOT.left() + (2 * index + 1) * width / (2 * points.size());
    return new ChartLabels.Dot(x, scale.y(value(points.get(index))));
  }

  /** Every signal is marked; named are those that a sentence tells of. */
  private ChartView.Point point(
      LossChart.Point point, ChartLabels.Dot dot, List<LossChart.Point> told, ChartLabels labels) {
    boolean signal = !point.signals().isEmpty();
    boolean named = told.contains(point);
    var label = labels.place(named ? point.body() : "", dot);
    return new ChartView.Point(dot.x(), dot.y(), signal, label.text(), label.x(), label.y());
  }

  private ChartView.Tick tick(BigDecimal value) {
    int y = scale.y(value);
    return new ChartView.Tick(y, y + 3, wording.formats().percent(Exact.fraction(value)));
  }

  private String percent(Optional<BigDecimal> value) {
    return value.map(v -> percent(v, wording)).orElse("");
  }

  /** A percentage with two decimals: bodies of one chiller differ by tenths. */
  static String percent(BigDecimal value, Wording wording) {
    var shown = value.setScale(2, RoundingMode.HALF_UP);
    return wording.say("number.percent", wording.formats().number(shown));
  }

  private static BigDecimal value(LossChart.Point point) {
    return Exact.round(point.percent(), 3);
  }
}
