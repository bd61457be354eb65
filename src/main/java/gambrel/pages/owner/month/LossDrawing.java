package gambrel.pages.owner.month;

import gambrel.insight.month.loss.LossChart;
import gambrel.pages.views.ChartView;
import gambrel.pages.words.Wording;
import gambrel.trade.measure.Exact;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntUnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Draws what bodies of one species lost, with centre and limits of the twelve months before, and
 * says which body of the month breaks the rules of the chart most. The month is set apart from what
 * is before it. Bodies that break a rule are filled points; the farthest is named. What lies far
 * beyond the limits is drawn at the edge, so that the lines stay apart.
 */
final class LossDrawing {
  private static final int WIDTH = 660;
  private static final int HEIGHT = 132;
  private static final ChartView.Frame PLOT = new ChartView.Frame(34, 14, 560, 110, 30, 564, 124);
  private static final int LINE_OF_TEXT = 10;

  /** More points than this would touch. */
  private static final int MOST_POINTS = 120;

  /** More dots than this would touch. */
  private static final int MOST_DOTS = 80;

  /** How many times the distance of the limits is drawn beyond them. */
  private static final int BEYOND = 4;

  /** The width of a letter. */
  private static final int LETTER = 6;

  private static final String RUN = "eight-on-one-side";

  private final LossChart chart;
  private final List<LossChart.Point> points;
  private final List<LossChart.Point> signals;
  private final Optional<LossChart.Point> farthest;
  private final Wording wording;
  private final ChartScale scale;
  private final YearMonth month;

  /**
   * A drawing of the month's points, and of as many before them as do not touch.
   *
   * @param chart a chart with limits
   */
  LossDrawing(LossChart chart, YearMonth month, Wording wording) {
    this.chart = chart;
    this.month = month;
    this.wording = wording;
    int all = chart.points().size();
    int shown = Math.min(all, Math.max(chart.ofMonth().size(), MOST_POINTS));
    this.points = chart.points().subList(all - shown, all);
    this.signals = chart.signals().stream().filter(point -> !goesOn(point)).toList();
    this.farthest = signals.stream().min(chart.farthestFirst());
    var values = points.stream().map(this::drawn);
    var levels = Stream.of(chart.centre(), lower(), chart.upper()).flatMap(Optional::stream);
    this.scale = new ChartScale(PLOT.top(), PLOT.bottom(), Stream.concat(values, levels).toList());
  }

  ChartView view() {
    String heading =
        wording.say("summary.chart." + chart.loss().id(), wording.kind(chart.species()));
    String description =
        wording.say(
            "summary.chart.description",
            heading,
            wording.formats().count(points.size()),
            percent(chart.centre()),
            percent(lower()),
            percent(chart.upper()));
    var dots = IntStream.range(0, points.size()).mapToObj(this::dot).toList();
    return new ChartView(
        heading,
        description,
        WIDTH,
        HEIGHT,
        PLOT,
        month(),
        lines(),
        dots.stream().map(p -> p.x() + "," + p.y()).collect(Collectors.joining(" ")),
        points.size() <= MOST_DOTS,
        dots,
        months(),
        scale.ticks().stream().map(this::tick).toList(),
        notes());
  }

  /** The part of the plot in which the month's points lie. */
  private ChartView.Band month() {
    int before = points.size() - chart.ofMonth().size();
    int x = PLOT.left() + before * (PLOT.right() - PLOT.left()) / points.size();
    return new ChartView.Band(x, PLOT.top(), PLOT.right() - x, PLOT.bottom() - PLOT.top());
  }

  /** Centre and limits; their words are at least a line of text apart. */
  private List<ChartView.Line> lines() {
    int centre = scale.y(chart.centre().orElseThrow()) + 3;
    return List.of(
        line("summary.chart.centre", chart.centre(), y -> y),
        line("summary.chart.upper", chart.upper(), y -> Math.min(y, centre - LINE_OF_TEXT)),
        line("summary.chart.lower", lower(), y -> Math.max(y, centre + LINE_OF_TEXT)));
  }

  /** The lower limit; not below zero, since no body gains weight on the way. */
  private Optional<BigDecimal> lower() {
    return chart.lower().map(limit -> limit.max(BigDecimal.ZERO));
  }

  private ChartView.Line line(String key, Optional<BigDecimal> value, IntUnaryOperator apart) {
    int y = scale.y(value.orElseThrow());
    boolean centre = key.endsWith("centre");
    String label = wording.say(key, percent(value));
    return new ChartView.Line(y, apart.applyAsInt(y + 3), label, centre);
  }

  /** A point; the farthest signal has its name on the side away from the centre. */
  private ChartView.Point dot(int index) {
    var point = points.get(index);
    int x = x(index);
    int y = scale.y(drawn(point));
    String name = farthest.filter(point::equals).map(this::name).orElse("");
    int below = y + LINE_OF_TEXT + 4;
    int at = isAbove(point) || below > PLOT.bottom() ? y - 7 : below;
    return new ChartView.Point(x, y, signals.contains(point), name, middle(name, x), at);
  }

  private ChartView.Tick tick(BigDecimal value) {
    int y = scale.y(value);
    return new ChartView.Tick(y, y + 3, wording.formats().percent(Exact.fraction(value)));
  }

  /** A percentage with two decimals, since bodies of one chiller differ by tenths. */
  private String percent(Optional<BigDecimal> value) {
    return wording.say(
        "number.percent",
        wording.formats().number(value.orElseThrow().setScale(2, RoundingMode.HALF_UP)));
  }

  /** The body, and what it lost if that is beyond the drawing. */
  private String name(LossChart.Point point) {
    return isBeyond(point) ? point.body() + ' ' + percent(Optional.of(value(point))) : point.body();
  }

  private boolean isBeyond(LossChart.Point point) {
    return drawn(point).compareTo(value(point)) != 0;
  }

  /** Where a point is drawn; limits without a distance bound nothing. */
  private BigDecimal drawn(LossChart.Point point) {
    var upper = chart.upper().orElseThrow();
    var room = upper.subtract(lower().orElseThrow()).multiply(BigDecimal.valueOf(BEYOND));
    var value = value(point);
    return room.signum() == 0
        ? value
        : value.min(upper.add(room)).max(lower().orElseThrow().subtract(room));
  }

  /** What a point lost, in per cent. */
  private static BigDecimal value(LossChart.Point point) {
    return Exact.round(point.percent(), 3);
  }

  /** The place of a point; all are at equal distances. */
  private int x(int index) {
    return PLOT.left() + (2 * index + 1) * (PLOT.right() - PLOT.left()) / (2 * points.size());
  }

  private LocalDate day(int index) {
    return points.get(index).day();
  }

  private YearMonth month(int index) {
    return YearMonth.from(day(index));
  }

  /** The middle nearest to {@code x} at which a text lies between the sides of the plot. */
  private static int middle(String text, int x) {
    int half = text.length() * LETTER / 2;
    return Math.min(Math.max(x, PLOT.left() + half), PLOT.right() - half);
  }

  /** Where months begin, from the last one back, as many as have room. */
  private List<ChartView.Tick> months() {
    var ticks = new ArrayList<ChartView.Tick>();
    int free = PLOT.right();
    for (int i = points.size() - 1; i >= 0; i--) {
      String label = wording.formats().month(month(i));
      int width = LETTER * label.length();
      int begins = PLOT.left() + i * (PLOT.right() - PLOT.left()) / points.size();
      int middle = Math.min(begins + width / 2, PLOT.right() - width / 2);
      boolean first = i == 0 || !month(i).equals(month(i - 1));
      if (first && middle + width / 2 <= free) {
        ticks.add(0, new ChartView.Tick(begins, middle, label));
        free = middle - width / 2 - LETTER;
      }
    }
    return ticks;
  }

  /** How to read the chart, and which body of the month breaks its rules most. */
  private List<String> notes() {
    var notes = new ArrayList<>(farthest.map(this::signal).stream().toList());
    if (points.stream().anyMatch(this::isBeyond)) {
      notes.add(wording.say("summary.chart.beyond"));
    }
    notes.add(
        wording.say(
            "summary.chart.read",
            wording.formats().count(chart.baseline()),
            wording.formats().month(month.minusMonths(12)),
            wording.formats().month(month.minusMonths(1))));
    return notes;
  }

  /** Whether a point only prolongs a run on one side that began to be a signal before it. */
  private boolean goesOn(LossChart.Point point) {
    int at = chart.points().indexOf(point);
    if (at <= 0) {
      return false;
    }
    var before = chart.points().get(at - 1);
    return isRun(point)
        && isRun(before)
        && YearMonth.from(before.day()).equals(month)
        && isAbove(point) == isAbove(before);
  }

  private static boolean isRun(LossChart.Point point) {
    return !point.signals().isEmpty() && point.signals().get(0).equals(RUN);
  }

  private boolean isAbove(LossChart.Point point) {
    return chart.aboveCentre(point).signum() > 0;
  }

  /** A sentence for the first rule that the point breaks, which says most. */
  private String signal(LossChart.Point point) {
    return wording.say(
        "summary.signal." + point.signals().get(0) + (isAbove(point) ? ".above" : ".below"),
        point.body(),
        percent(Optional.of(value(point))),
        wording.say("summary.where." + chart.loss().id()),
        percent(lower()),
        percent(chart.upper()),
        percent(chart.centre()));
  }
}
