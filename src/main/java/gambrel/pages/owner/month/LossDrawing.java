package gambrel.pages.owner.month;

import gambrel.insight.month.figures.BodyFigure;
import gambrel.insight.month.figures.BodyGroup;
import gambrel.insight.month.figures.BodyGroup.Split;
import gambrel.insight.month.loss.LossChart;
import gambrel.insight.month.loss.LossChart.Point;
import gambrel.pages.owner.month.ChartNames.Name;
import gambrel.pages.views.ChartView;
import gambrel.pages.words.Wording;
import gambrel.trade.measure.Exact;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntUnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Draws what bodies of one species lost, with centre and limits of the twelve months before, and
 * says which body of the month breaks the rules of the chart most. The month's bodies are points,
 * of another form for another chiller or bench scale; what is before them is a line. Bodies that
 * break a rule are filled and named, the farthest first, as long as their names have room. What
 * lies far beyond the limits is drawn at the edge, so that the lines stay apart.
 */
final class LossDrawing {
  private static final int WIDTH = 660;
  private static final int HEIGHT = 132;
  private static final ChartView.Frame PLOT = new ChartView.Frame(34, 14, 560, 110, 30, 564, 124);

  /** The most bodies before the month. */
  private static final int MOST_BEFORE = 80;

  /** A body of the month takes the room of so many before it. */
  private static final int WIDE = 4;

  /** More points than this would touch. */
  private static final int MOST_POINTS = 80;

  /** How many times the distance of the limits is drawn beyond them. */
  private static final int BEYOND = 2;

  /** Between the words of two months. */
  private static final int GAP = 6;

  private static final String RUN = "eight-on-one-side";

  private final LossChart chart;
  private final List<Point> points;
  private final int before;
  private final int monthBegins;
  private final List<BodyGroup> places;
  private final Wording wording;
  private final ChartScale scale;
  private final YearMonth month;
  private final List<Dot> dots;
  private final List<Dot> signals;
  private final Map<Name, ChartNames.Place> names;

  /** A value, its place and its name. */
  private record Dot(Point of, Name name) {}

  /**
   * A drawing of the month's points, and of the last ones before them.
   *
   * @param chart a chart with limits
   */
  LossDrawing(LossChart chart, YearMonth month, Wording wording) {
    this.chart = chart;
    this.month = month;
    this.wording = wording;
    this.before = Math.min(chart.baseline(), MOST_BEFORE);
    this.points = chart.points().subList(chart.baseline() - before, chart.points().size());
    int room = before + WIDE * chart.ofMonth().size();
    this.monthBegins = PLOT.left() + before * (PLOT.right() - PLOT.left()) / room;
    var split = chart.loss() == BodyFigure.CHILL ? Split.CHILLER : Split.BENCH_SCALE;
    this.places = BodyGroup.of(split, chart.ofMonth().stream().map(Point::account).toList());
    var values = points.stream().map(this::near);
    var levels = Stream.of(chart.centre(), lower(), chart.upper()).flatMap(Optional::stream);
    this.scale = new ChartScale(PLOT.top(), PLOT.bottom(), Stream.concat(values, levels).toList());
    this.dots = IntStream.range(0, points.size()).mapToObj(this::dot).toList();
    this.signals =
        dots.subList(before, dots.size()).stream()
            .filter(dot -> !dot.of().signals().isEmpty() && !goesOn(dot.of()))
            .sorted(Comparator.comparing(Dot::of, chart.farthestFirst()))
            .toList();
    this.names = ChartNames.of(PLOT, signals.stream().map(Dot::name).toList());
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
    var ofMonth = dots.subList(before, dots.size());
    return new ChartView(
        heading,
        description,
        WIDTH,
        HEIGHT,
        PLOT,
        monthBegins,
        lines(),
        dots.stream().map(d -> d.name().x() + "," + d.name().y()).collect(Collectors.joining(" ")),
        ofMonth.stream()
            .filter(dot -> ofMonth.size() <= MOST_POINTS || names.containsKey(dot.name()))
            .map(this::point)
            .toList(),
        months(),
        scale.ticks().stream().map(this::tick).toList(),
        notes());
  }

  /** Centre and limits; their words are at least a line of text apart. */
  private List<ChartView.Line> lines() {
    int centre = scale.y(chart.centre().orElseThrow()) + 3;
    return List.of(
        line("summary.chart.centre", chart.centre(), y -> y),
        line("summary.chart.upper", chart.upper(), y -> Math.min(y, centre - ChartNames.LINE)),
        line("summary.chart.lower", lower(), y -> Math.max(y, centre + ChartNames.LINE)));
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

  private Dot dot(int index) {
    var point = points.get(index);
    int x = (begins(index) + begins(index + 1)) / 2;
    return new Dot(point, new Name(name(point), x, scale.y(drawn(point)), isAbove(point)));
  }

  /** A point of the month; a filled one has its name beside it. */
  private ChartView.Point point(Dot dot) {
    var name = dot.name();
    var place = Optional.ofNullable(names.get(name));
    return new ChartView.Point(
        name.x(),
        name.y(),
        ChartMark.of(places, dot.of().account()).outline(name.x(), name.y(), place.isPresent()),
        place.isPresent(),
        place.map(at -> name.text()).orElse(""),
        place.map(ChartNames.Place::middle).orElse(0),
        place.map(ChartNames.Place::base).orElse(0));
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

  /** The body; if it lies beyond the drawing, with an arrow and what it lost. */
  private String name(Point point) {
    int beyond = value(point).compareTo(drawn(point));
    return beyond == 0
        ? point.body()
        : point.body() + (beyond > 0 ? " ↑ " : " ↓ ") + percent(Optional.of(value(point)));
  }

  /** Where a point is drawn: at the edge if it lies beyond the scale. */
  private BigDecimal drawn(Point point) {
    return scale.within(value(point));
  }

  /** What the scale must include of a point; limits without a distance bound nothing. */
  private BigDecimal near(Point point) {
    var upper = chart.upper().orElseThrow();
    var room = upper.subtract(lower().orElseThrow()).multiply(BigDecimal.valueOf(BEYOND));
    var value = value(point);
    return room.signum() == 0
        ? value
        : value.min(upper.add(room)).max(lower().orElseThrow().subtract(room));
  }

  /** What a point lost, in per cent. */
  private static BigDecimal value(Point point) {
    return Exact.round(point.percent(), 3);
  }

  /** Where the room of a point begins; those of the month have more. */
  private int begins(int index) {
    int ofMonth = points.size() - before;
    return index < before
        ? PLOT.left() + index * (monthBegins - PLOT.left()) / before
        : monthBegins + (index - before) * (PLOT.right() - monthBegins) / ofMonth;
  }

  private YearMonth month(int index) {
    return YearMonth.from(points.get(index).day());
  }

  /** Where months begin, from the last one back, as many as have room. */
  private List<ChartView.Tick> months() {
    var ticks = new ArrayList<ChartView.Tick>();
    int free = PLOT.right();
    for (int i = points.size() - 1; i >= 0; i--) {
      String label = wording.formats().month(month(i));
      int width = ChartNames.width(label);
      int middle = Math.min(begins(i) + width / 2, PLOT.right() - width / 2);
      boolean first = i == 0 || !month(i).equals(month(i - 1));
      if (first && middle + width / 2 <= free) {
        ticks.add(0, new ChartView.Tick(begins(i), middle, label));
        free = middle - width / 2 - GAP;
      }
    }
    return ticks;
  }

  /**
   * Which body of the month breaks the rules most, what the forms are, and how to read the rest.
   */
  private List<String> notes() {
    var notes = new ArrayList<String>();
    var formats = wording.formats();
    if (names.size() < signals.size()) {
      notes.add(wording.say("summary.chart.close"));
    }
    if (places.size() > 1) {
      var marks = chart.ofMonth().stream().map(point -> ChartMark.of(places, point.account()));
      var words = marks.distinct().sorted().map(mark -> mark.words(places, wording));
      notes.add(formats.opening(words.collect(Collectors.joining(", "))) + ".");
    }
    notes.add(
        wording.say(
            "summary.chart.read",
            formats.count(chart.baseline()),
            formats.month(month.minusMonths(12)),
            formats.month(month.minusMonths(1))));
    var worst = signals.stream().limit(1).map(dot -> signal(dot.of()));
    return Stream.concat(worst, Stream.of(String.join(" ", notes))).toList();
  }

  /** Whether a point only prolongs a run on one side that began to be a signal before it. */
  private boolean goesOn(Point point) {
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

  private static boolean isRun(Point point) {
    return !point.signals().isEmpty() && point.signals().get(0).equals(RUN);
  }

  private boolean isAbove(Point point) {
    return chart.aboveCentre(point).signum() > 0;
  }

  /** A sentence for the first rule that the point breaks, which says most. */
  private String signal(Point point) {
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
