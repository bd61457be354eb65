package gambrel.pages.owner.month;

import gambrel.insight.month.loss.LossChart;
import gambrel.pages.views.ChartView;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Charts of what bodies lost in the chiller and on the bench: of the month's main species, and of
 * each other that has enough bodies in the month. A species with too few in the twelve months
 * before has none.
 */
final class ChartPart {
  private static final int ENOUGH = 5;

  /** More points than this would touch. */
  private static final int MOST_POINTS = 120;

  private final MonthPage page;

  ChartPart(MonthPage page) {
    this.page = page;
  }

  List<ChartView> charts() {
    return chosen()
        .filter(LossChart::hasLimits)
        .map(
            chart ->
                new LossDrawing(chart, shown(chart), page.records().month(), page.wording()).view())
        .toList();
  }

  /** Species that cannot be charted yet, in a sentence each. */
  List<String> few() {
    return chosen()
        .filter(chart -> !chart.hasLimits())
        .map(
            chart ->
                page.wording()
                    .count(
                        "summary.chart.few." + chart.loss().id(),
                        chart.baseline(),
                        page.species(chart.species()),
                        page.count(chart.baseline())))
        .toList();
  }

  private Stream<LossChart> chosen() {
    return Stream.of(page.parts().chills(), page.parts().benches()).flatMap(ChartPart::chosen);
  }

  /** The chart of the main species, and of each other with enough bodies in the month. */
  private static Stream<LossChart> chosen(List<LossChart> charts) {
    var sorted =
        charts.stream()
            .sorted(Comparator.comparingInt((LossChart c) -> c.ofMonth().size()).reversed())
            .toList();
    return Stream.concat(
        sorted.stream().limit(1),
        sorted.stream().skip(1).filter(chart -> chart.ofMonth().size() >= ENOUGH));
  }

  /** The month's points, and as many before them as do not touch. */
  private static List<LossChart.Point> shown(LossChart chart) {
    var points = chart.points();
    int number = Math.min(points.size(), Math.max(chart.ofMonth().size(), MOST_POINTS));
    return points.subList(points.size() - number, points.size());
  }
}
