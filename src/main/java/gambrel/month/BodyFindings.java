package gambrel.month;

import gambrel.measure.Exact;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/** Single bodies beyond the limits of a chart: the few that are farthest out. */
final class BodyFindings {
  private static final int MOST = 3;
  private static final String BEYOND = "beyond-limits";

  private final LossChart chart;
  private final Costs costs;

  BodyFindings(MonthRecords records, LossChart chart) {
    this.chart = chart;
    this.costs = new Costs(records, chart.loss());
  }

  /** Those that no other finding speaks of. */
  List<Finding> but(Set<String> explained) {
    return chart.signals().stream()
        .filter(p -> p.signals().contains(BEYOND) && !explained.contains(p.body()))
        .sorted(Comparator.comparing((LossChart.Point p) -> distance(p).abs()).reversed())
        .limit(MOST)
        .map(this::finding)
        .toList();
  }

  private BigFraction distance(LossChart.Point point) {
    return point.percent().subtract(Exact.fraction(chart.centre().orElseThrow()));
  }

  private Finding finding(LossChart.Point point) {
    boolean above = distance(point).signum() > 0;
    return Costs.finding(
        chart.loss() == Loss.CHILL ? FindingKind.CHILLED_BODIES : FindingKind.BENCH_BODIES,
        above ? "above" : "below",
        List.of(point.body()),
        List.of(
            new Evidence.Bodies(List.of(point.body())),
            new Evidence.Percent(point.percent(), 2),
            new Evidence.Kind(chart.species()),
            // Nobody expects a gain: a limit below zero is told as zero.
            new Evidence.Percent(
                Exact.max(BigFraction.ZERO, Exact.fraction(chart.lower().orElseThrow())), 2),
            new Evidence.Percent(Exact.fraction(chart.upper().orElseThrow()), 2),
            Evidence.count(chart.baseline())),
        costs.of(List.of(point), distance(point)),
        Sureness.LIKELY);
  }
}
