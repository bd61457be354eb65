package gambrel.pages.owner.month;

import gambrel.insight.month.loss.LossChart;
import gambrel.pages.words.Wording;
import gambrel.trade.measure.Exact;
import java.math.BigDecimal;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** How to read a chart, and what stands out in the month. */
final class ChartNotes {
  private static final int MOST_SIGNALS = 4;
  private static final String RUN = "eight-on-one-side";

  private final LossChart chart;
  private final YearMonth month;
  private final Wording wording;

  ChartNotes(LossChart chart, YearMonth month, Wording wording) {
    this.chart = chart;
    this.month = month;
    this.wording = wording;
  }

  /** The signals that get a sentence: those farthest from the usual, in order of kill. */
  List<LossChart.Point> told() {
    var farthest =
        signals().stream()
            .sorted(Comparator.comparing(this::distance).reversed())
            .limit(MOST_SIGNALS)
            .toList();
    return signals().stream().filter(farthest::contains).toList();
  }

  private List<LossChart.Point> signals() {
    return chart.signals().stream().filter(point -> !goesOn(point)).toList();
  }

  private BigDecimal distance(LossChart.Point point) {
    return Exact.round(point.percent(), 3).subtract(chart.centre().orElseThrow()).abs();
  }

  List<String> sentences() {
    var told = told();
    var notes = new ArrayList<>(told.stream().map(this::signal).toList());
    int more = signals().size() - told.size();
    if (more > 0) {
      notes.add(wording.count("summary.chart.more", more, wording.formats().count(more)));
    }
    notes.add(base());
    return notes;
  }

  /** Whether it only prolongs a run whose eighth body has a sentence. */
  private boolean goesOn(LossChart.Point point) {
    int at = chart.points().indexOf(point);
    return at > 0
        && isRun(point)
        && isRun(chart.points().get(at - 1))
        && YearMonth.from(chart.points().get(at - 1).day()).equals(month)
        && isAbove(point) == isAbove(chart.points().get(at - 1));
  }

  private static boolean isRun(LossChart.Point point) {
    return !point.signals().isEmpty() && point.signals().get(0).equals(RUN);
  }

  private boolean isAbove(LossChart.Point point) {
    return Exact.round(point.percent(), 3).compareTo(chart.centre().orElseThrow()) > 0;
  }

  /** The first rule is the one that says most. */
  private String signal(LossChart.Point point) {
    var value = Exact.round(point.percent(), 3);
    boolean above = isAbove(point);
    return wording.say(
        "summary.signal." + point.signals().get(0) + (above ? ".above" : ".below"),
        point.body(),
        LossDrawing.percent(value, wording),
        wording.say("summary.where." + chart.loss().id()),
        LossDrawing.percent(atLeastNothing(chart.lower()), wording),
        LossDrawing.percent(chart.upper().orElseThrow(), wording),
        LossDrawing.percent(chart.centre().orElseThrow(), wording));
  }

  /** A limit below zero is printed as zero: no body gains weight on the rail. */
  private BigDecimal atLeastNothing(Optional<BigDecimal> limit) {
    return limit.orElseThrow().max(BigDecimal.ZERO);
  }

  private String base() {
    return wording.say(
        "summary.chart.read",
        wording.formats().count(chart.baseline()),
        wording.formats().month(month.minusMonths(12)),
        wording.formats().month(month.minusMonths(1)));
  }
}
