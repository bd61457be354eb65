package gambrel.ownerpages;

import gambrel.month.Loss;
import gambrel.month.LossChart;
import gambrel.month.MonthRecords;
import gambrel.statement.ChartView;
import gambrel.wording.Wording;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Charts of what bodies lost in the chiller and on the bench: of the month's main species, and of
 * each other that has enough bodies in the month. A species with too few in the twelve months before
 * has none.
 */
final class ChartPart {
  private static final int ENOUGH = 5;

  /** So many points can be told apart. */
  private static final int MOST_POINTS = 120;

  private final MonthRecords records;
  private final Wording wording;

  ChartPart(MonthRecords records, Wording wording) {
    this.records = records;
    this.wording = wording;
  }

  List<ChartView> charts() {
    return Stream.of(Loss.CHILL, Loss.BENCH).flatMap(loss -> chosen(loss).stream())
        .filter(LossChart::hasLimits)
        .map(chart -> new LossDrawing(chart, shown(chart), records.month(), wording).view())
        .toList();
  }

  /** Species that cannot be charted yet, in a sentence each. */
  List<String> few() {
    return Stream.of(Loss.CHILL, Loss.BENCH).flatMap(loss -> chosen(loss).stream())
        .filter(chart -> !chart.hasLimits())
        .map(
            chart ->
                wording.count(
                    "summary.chart.few." + chart.loss().id(),
                    chart.baseline(),
                    wording.say("species." + chart.species().id()),
                    wording.formats().count(chart.baseline())))
        .toList();
  }

  private List<LossChart> chosen(Loss loss) {
    var charts =
        LossChart.of(records, loss).stream()
            .sorted(Comparator.comparingInt((LossChart c) -> c.ofMonth().size()).reversed())
            .toList();
    var chosen = new ArrayList<LossChart>();
    for (var chart : charts) {
      if (chosen.isEmpty() || chart.ofMonth().size() >= ENOUGH) {
        chosen.add(chart);
      }
    }
    return chosen;
  }

  /** The month's points, and as many before them as can be told apart. */
  private static List<LossChart.Point> shown(LossChart chart) {
    var points = chart.points();
    int number = Math.min(points.size(), Math.max(chart.ofMonth().size(), MOST_POINTS));
    return points.subList(points.size() - number, points.size());
  }
}
