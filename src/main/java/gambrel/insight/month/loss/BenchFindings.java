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
 * A bench loss that changed from a day on. What else changed decides between the bench and a scale:
 * a rail scale that reads light makes the chiller seem to take more and the bench less by as much;
 * a bench scale that drifts shows on the bodies weighed on it and on no others. Less loss than ever
 * is no better work: more is weighed out than comes in, which a scale does.
 */
final class BenchFindings {
  /** The rail scale alone explains chiller and bench. */
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
    var shift = MeanShift.of(chart.before(), chart.ofMonth());
    var scales = ofSingleScales();
    if (!scales.isEmpty()) {
      return scales;
    }
    return shift.map(this::all).orElse(List.of());
  }

  private List<Finding> all(MeanShift shift) {
    if (chill.filter(c -> c.isMore() != shift.isMore()).isPresent()) {
      return List.of(scale(RAIL, rails(shift.subjects()), shift));
    }
    return List.of(
        shift.isMore()
            ? finding(FindingKind.BENCH, "", List.of(), shift)
            : scale("balance", all(shift.subjects()), shift));
  }

  /**
   * Scales on which a group of bodies moved while the rest did not, or not half as far: of several
   * groups tried, one may seem to move by chance.
   */
  private List<Finding> ofSingleScales() {
    var scales = benches(chart.ofMonth());
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
    return moved.entrySet().stream()
        .map(e -> scale(reads(e.getValue()), List.of(e.getKey()), e.getValue()))
        .toList();
  }

  private static String reads(MeanShift shift) {
    return shift.isMore() ? "light" : "heavy";
  }

  private static SortedSet<String> benches(List<LossChart.Point> points) {
    return scales(points, MonthBody::benchScale);
  }

  private static SortedSet<String> rails(List<LossChart.Point> points) {
    return scales(points, MonthBody::railScale);
  }

  private static SortedSet<String> scales(
      List<LossChart.Point> points, Function<MonthBody, Optional<String>> scale) {
    var scales = new TreeSet<String>();
    points.forEach(p -> scale.apply(p.account()).ifPresent(scales::add));
    return scales;
  }

  /** The points that were weighed mostly on a bench scale. */
  private static List<LossChart.Point> on(String scale, List<LossChart.Point> points) {
    return points.stream()
        .filter(p -> p.account().benchScale().filter(scale::equals).isPresent())
        .toList();
  }

  private static SortedSet<String> all(List<LossChart.Point> points) {
    var scales = rails(points);
    scales.addAll(benches(points));
    return scales;
  }

  private Finding scale(String variant, Collection<String> scales, MeanShift shift) {
    return finding(FindingKind.SCALE, variant, scales, shift);
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
