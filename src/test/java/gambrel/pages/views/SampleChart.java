package gambrel.pages.views;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** An individuals chart for samples: centre, and limits at 3 mean moving ranges over 1.128. */
final class SampleChart {

  private static final ChartView.Frame PLOT = new ChartView.Frame(34, 14, 560, 150, 30, 564, 164);
  private static final int WIDTH = 660;
  private static final int HEIGHT = 172;

  private SampleChart() {}

  /** {@code hundredths}: chill shrink of each body, in hundredths of a percent. */
  static ChartView of(String kind, int... hundredths) {
    var words = SampleWords.ENGLISH;
    var mean = 0.0;
    var range = 0.0;
    for (var i = 0; i < hundredths.length; i++) {
      mean += hundredths[i] / (double) hundredths.length;
      if (i > 0) {
        range += Math.abs(hundredths[i] - hundredths[i - 1]) / (hundredths.length - 1.0);
      }
    }
    var reach = 3 * range / 1.128;
    var signals = new ArrayList<String>();
    var points = new ArrayList<ChartView.Point>();
    for (var i = 0; i < hundredths.length; i++) {
      var signal = Math.abs(hundredths[i] - mean) > reach && hundredths.length > 1;
      var body = "B-" + (300 + i);
      if (signal) {
        signals.add(
            words.say(
                "summary.signal.beyond-limits.above",
                body,
                percent(hundredths[i]),
                words.say("summary.where.chill"),
                percent(mean - reach),
                percent(mean + reach)));
      }
      var x = PLOT.left() + (2 * i + 1) * (PLOT.right() - PLOT.left()) / (2 * hundredths.length);
      points.add(
          new ChartView.Point(
              x,
              y(hundredths[i]),
              "",
              signal,
              signal ? body : "",
              Math.max(x, PLOT.left() + 16),
              y(hundredths[i]) - 7));
    }
    var lines = new ArrayList<ChartView.Line>();
    lines.add(line("summary.chart.centre", mean, true));
    if (hundredths.length > 1) {
      lines.add(line("summary.chart.upper", mean + reach, false));
      lines.add(line("summary.chart.lower", mean - reach, false));
    }
    return new ChartView(
        words.say("summary.chart.chill", kind),
        words.say(
            "summary.chart.description",
            words.say("summary.chart.chill", kind),
            "" + hundredths.length,
            percent(mean),
            percent(mean - reach),
            percent(mean + reach)),
        WIDTH,
        HEIGHT,
        PLOT,
        PLOT.left(),
        lines,
        points.stream().map(p -> p.x() + "," + p.y()).collect(Collectors.joining(" ")),
        points,
        List.of(
            new ChartView.Tick(PLOT.left(), PLOT.left() + 10, "2 Mar"),
            new ChartView.Tick(PLOT.right(), PLOT.right() - 10, "31 Mar")),
        List.of(tick(0), tick(100), tick(200), tick(300), tick(400)),
        notes(words, signals, hundredths.length));
  }

  private static List<String> notes(Words words, List<String> signals, int values) {
    var notes = new ArrayList<>(signals);
    notes.add(words.say("summary.chart.read", "" + values, "March 2025", "February 2026"));
    return notes;
  }

  private static ChartView.Line line(String key, double value, boolean centre) {
    return new ChartView.Line(
        y(value), y(value) + 3, SampleWords.ENGLISH.say(key, percent(value)), centre);
  }

  private static ChartView.Tick tick(int hundredths) {
    return new ChartView.Tick(y(hundredths), y(hundredths) + 3, hundredths / 100 + "%");
  }

  private static int y(double hundredths) {
    return (int) Math.round(PLOT.bottom() - hundredths * (PLOT.bottom() - PLOT.top()) / 400);
  }

  private static String percent(double hundredths) {
    return BigDecimal.valueOf(Math.round(hundredths / 10), 1) + "%";
  }
}
