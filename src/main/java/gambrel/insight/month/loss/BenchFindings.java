package gambrel.insight.month.loss;

import gambrel.insight.month.bodies.Loss;
import gambrel.insight.month.bodies.MonthBody;
import gambrel.insight.month.bodies.MonthRecords;
import gambrel.insight.month.findings.Finding;
import gambrel.insight.month.findings.FindingKind;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * Findings from a bench loss that changed from a day on. The cause may be the bench or a scale:
 *
 * <ul>
 *   <li>A rail scale that reads light makes the chiller seem to take more, and the bench less.
 *   <li>A bench scale that drifts changes the loss of the bodies weighed on it and of no others.
 *   <li>A smaller loss is a scale's fault: work does not make weight.
 * </ul>
 */
final class BenchFindings {
  /** Variant of a finding: the rail scale explains the changes of chiller and bench. */
  static final String RAIL = "rail";

  private final MonthRecords records;
  private final LossChart chart;
  private final Optional<MeanShift> chill;

  BenchFindings(MonthRecords records, LossChart chart, Optional<MeanShift> chill) {
    this.records = records;
    this.chart = chart;
    this.chill = chill;
  }

  List<Finding> all() {
    var ofScales = ofSingleScales();
    return ofScales.isEmpty()
        ? MeanShift.of(chart.before(), chart.ofMonth()).map(this::finding).stream().toList()
        : ofScales;
  }

  private Finding finding(MeanShift shift) {
    var rails = scales(shift.subjects(), MonthBody::railScale);
    if (chill.filter(c -> c.isMore() != shift.isMore()).isPresent()) {
      return finding(FindingKind.SCALE, RAIL, rails, shift);
    }
    if (shift.isMore()) {
      return finding(FindingKind.BENCH, "", List.of(), shift);
    }
    rails.addAll(scales(shift.subjects(), MonthBody::benchScale));
    return finding(FindingKind.SCALE, "balance", rails, shift);
  }

  /**
   * Bench scales whose bodies changed while those of another scale did not, or less than half as
   * much. The second condition leaves out scales that seem to change by chance.
   */
  private List<Finding> ofSingleScales() {
    var scales = scales(chart.ofMonth(), MonthBody::benchScale);
    var moved = new TreeMap<String, MeanShift>();
    for (String scale : scales) {
      MeanShift.of(on(scale, chart.before()), on(scale, chart.ofMonth()))
          .ifPresent(shift -> moved.put(scale, shift));
    }
    var most = moved.values().stream().map(s -> s.excess().abs()).max(Comparator.naturalOrder());
    moved.values().removeIf(s -> s.excess().abs().multiply(2).compareTo(most.orElseThrow()) < 0);
    if (moved.size() == scales.size()) {
      return List.of();
    }
    return moved.entrySet().stream().map(e -> finding(e.getKey(), e.getValue())).toList();
  }

  private Finding finding(String scale, MeanShift shift) {
    return finding(FindingKind.SCALE, shift.isMore() ? "light" : "heavy", List.of(scale), shift);
  }

  private static SortedSet<String> scales(
      List<LossChart.Point> points, Function<MonthBody, Optional<String>> scale) {
    var scales = new TreeSet<String>();
    points.forEach(p -> scale.apply(p.account()).ifPresent(scales::add));
    return scales;
  }

  /** The bodies that were mostly weighed on a bench scale. */
  private static List<LossChart.Point> on(String scale, List<LossChart.Point> points) {
    return points.stream()
        .filter(p -> p.account().benchScale().filter(scale::equals).isPresent())
        .toList();
  }

  private Finding finding(
      FindingKind kind, String variant, Collection<String> scales, MeanShift shift) {
    return LossFindings.shifted(
        records,
        Loss.BENCH,
        kind,
        variant,
        chart.species(),
        shift,
        chart.baseline(),
        List.copyOf(scales));
  }
}
