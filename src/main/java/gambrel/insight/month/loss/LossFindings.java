package gambrel.insight.month.loss;

import gambrel.insight.month.figures.BodyFigure;
import gambrel.insight.month.figures.Evidence;
import gambrel.insight.month.figures.Finding;
import gambrel.insight.month.figures.MonthRecords;
import gambrel.trade.balance.BatchBalance;
import gambrel.trade.balance.BatchState;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Weight;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** Findings from the losses of bodies in the chiller and on the bench, and of batches. */
public final class LossFindings {
  private static final int MOST_BODIES = 3;
  private static final String BEYOND = "beyond-limits";

  private LossFindings() {}

  /**
   * The findings of a month.
   *
   * @param charts charts of chill shrink and bench loss
   * @param chillDays chill shrink by day
   */
  public static List<Finding> of(
      MonthRecords records, List<LossChart> charts, List<ChillDays> chillDays) {
    var found = new ArrayList<>(ShiftFindings.of(records, charts, chillDays));
    var explained = found.stream().flatMap(f -> f.subjects().stream()).collect(Collectors.toSet());
    for (var chart : charts) {
      chart.signals().stream()
          .filter(p -> p.signals().contains(BEYOND) && !explained.contains(p.body()))
          .sorted(Comparator.comparing((LossChart.Point p) -> distance(chart, p).abs()).reversed())
          .limit(MOST_BODIES)
          .map(point -> body(records, chart, point))
          .forEach(found::add);
    }
    records.bodies().batches().stream()
        .filter(batch -> batch.state() == BatchState.OUT && batch.lossShare().isPresent())
        .map(batch -> batch(records, batch))
        .forEach(found::add);
    return found;
  }

  private static BigFraction distance(LossChart chart, LossChart.Point point) {
    return point.percent().subtract(Exact.fraction(chart.centre().orElseThrow()));
  }

  /**
   * A single body beyond the limits of a chart, one of the farthest that no other finding names.
   */
  private static Finding body(MonthRecords records, LossChart chart, LossChart.Point point) {
    var distance = distance(chart, point);
    var lost = chart.loss().lost(List.of(point.account()), distance);
    // A loss below zero is a gain, which is not expected: the limit is printed as zero.
    var lower = Exact.max(BigFraction.ZERO, Exact.fraction(chart.lower().orElseThrow()));
    return Finding.likely(
        chart.loss() == BodyFigure.CHILL ? Finding.Kind.CHILLED_BODIES : Finding.Kind.BENCH_BODIES,
        distance.signum() > 0 ? "above" : "below",
        List.of(point.body()),
        Map.of(
            "body", new Evidence.Bodies(List.of(point.body())),
            "loss", new Evidence.Percent(point.percent(), 2),
            "species", new Evidence.Kind(chart.species()),
            "difference", new Evidence.Percent(distance, 2),
            "lower", new Evidence.Percent(lower, 2),
            "upper", new Evidence.Percent(Exact.fraction(chart.upper().orElseThrow()), 2),
            "bodies_before", Evidence.count(chart.baseline())),
        Finding.Cost.onRail(lost, chart.species(), records));
  }

  private static Finding batch(MonthRecords records, BatchBalance batch) {
    var loss = batch.loss().orElseThrow();
    var size = loss.isNegative() ? Weight.ZERO.minus(loss) : loss;
    var limit = Exact.fraction(records.settings().limits().batchLossPercent());
    return Finding.certain(
        Finding.Kind.BATCH,
        loss.isNegative() ? "gain" : "loss",
        List.of(batch.batch().id()),
        Map.of(
            "batch",
            new Evidence.Name(batch.batch().id()),
            "weight",
            new Evidence.Mass(size),
            "loss",
            Evidence.percent(batch.lossShare().orElseThrow().percent().abs()),
            "limit",
            Evidence.percent(limit)),
        List.of());
  }
}
