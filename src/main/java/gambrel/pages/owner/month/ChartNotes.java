package gambrel.pages.owner.month;

import gambrel.insight.month.loss.LossChart;
import gambrel.pages.words.Wording;
import java.math.BigDecimal;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Says how to read a chart, and which bodies of the month break its rules. */
record ChartNotes(LossChart chart, YearMonth month, Wording wording) {
  private static final int MOST_SIGNALS = 4;
  private static final String RUN = "eight-on-one-side";

  /** The signals that get a sentence: the farthest from the centre, in order of kill. */
  List<LossChart.Point> named() {
    var farthest = signals().stream().sorted(chart.farthestFirst()).limit(MOST_SIGNALS).toList();
    return signals().stream().filter(farthest::contains).toList();
  }

  private List<LossChart.Point> signals() {
    return chart.signals().stream().filter(point -> !goesOn(point)).toList();
  }

  List<String> sentences() {
    var named = named();
    var notes = new ArrayList<>(named.stream().map(this::signal).toList());
    int more = signals().size() - named.size();
    if (more > 0) {
      notes.add(wording.counted("summary.chart.more", more));
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
    // A limit below zero is printed as zero: no body gains weight on the rail.
    var lower = chart.lower().map(limit -> limit.max(BigDecimal.ZERO));
    return wording.say(
        "summary.signal." + point.signals().get(0) + (isAbove(point) ? ".above" : ".below"),
        point.body(),
        LossDrawing.percent(Optional.of(LossDrawing.value(point)), wording),
        wording.say("summary.where." + chart.loss().id()),
        LossDrawing.percent(lower, wording),
        LossDrawing.percent(chart.upper(), wording),
        LossDrawing.percent(chart.centre(), wording));
  }
}
