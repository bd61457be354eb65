package gambrel.ownerpages;

import gambrel.shrink.ShrinkSeries;
import gambrel.wording.Wording;
import java.math.BigDecimal;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;

/** How to read a chart, and what stands out in the month. */
final class ChartNotes {
  private static final int MOST_SIGNALS = 6;

  /** Mean range of two values of a normal distribution, in standard deviations. */
  private static final BigDecimal D2 = new BigDecimal("1.128");

  private final ShrinkSeries series;
  private final List<ShrinkSeries.Point> points;
  private final YearMonth month;
  private final Wording wording;

  ChartNotes(
      ShrinkSeries series, List<ShrinkSeries.Point> points, YearMonth month, Wording wording) {
    this.series = series;
    this.points = points;
    this.month = month;
    this.wording = wording;
  }

  List<String> sentences() {
    var signals =
        points.stream()
            .filter(p -> !p.signals().isEmpty() && ChartPart.monthOf(p).equals(month))
            .toList();
    var notes = new ArrayList<String>();
    signals.stream().limit(MOST_SIGNALS).map(this::signal).forEach(notes::add);
    int more = signals.size() - MOST_SIGNALS;
    if (more > 0) {
      notes.add(wording.count("summary.chart.more", more, wording.formats().count(more)));
    }
    notes.add(base());
    return notes;
  }

  /** The first rule is the one that says most. */
  private String signal(ShrinkSeries.Point point) {
    var value = ShrinkChart.value(point);
    boolean above = value.compareTo(series.chart().centre().orElseThrow()) > 0;
    return wording.say(
        "summary.signal." + point.signals().get(0) + (above ? ".above" : ".below"),
        point.balance().body().id(),
        ShrinkChart.percent(value, wording));
  }

  private String base() {
    var all = ChartPart.charted(series);
    if (series.chart().lower().isEmpty()) {
      return wording.say("summary.chart.few");
    }
    return wording.say("summary.chart.read", wording.formats().number(D2))
        + " "
        + wording.say(
            "summary.chart.base",
            wording.formats().count(all.size()),
            wording.formats().date(ChartPart.killed(all.get(0))),
            wording.formats().date(ChartPart.killed(all.get(all.size() - 1))));
  }
}
