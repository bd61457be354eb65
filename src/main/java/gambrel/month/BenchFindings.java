package gambrel.month;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A bench loss that changed from a day on. Whether the bench or a scale changed is told by what else
 * changed: a rail scale that reads light makes the chiller seem to take more and the bench less by as
 * much; a bench scale that drifts shows on the bodies weighed on it and on no others. Less loss than
 * ever is no better work: more is weighed out than comes in, which a scale does.
 */
final class BenchFindings {
  /** The rail scale alone explains chiller and bench. */
  static final String RAIL = "rail";

  private final LossChart chart;
  private final Optional<Shift> chill;
  private final Costs costs;

  BenchFindings(MonthRecords records, LossChart chart, Optional<Shift> chill) {
    this.chart = chart;
    this.chill = chill;
    this.costs = new Costs(records, Loss.BENCH);
  }

  List<Finding> all() {
    var shift = Shift.of(chart.before(), chart.ofMonth());
    var scales = ofSingleScales();
    if (!scales.isEmpty()) {
      return scales;
    }
    return shift.map(this::all).orElse(List.of());
  }

  private List<Finding> all(Shift shift) {
    if (chill.filter(c -> c.isMore() != shift.isMore()).isPresent()) {
      return List.of(scale(RAIL, ScaleGroup.rails(shift.subjects()), shift));
    }
    return List.of(
        shift.isMore()
            ? finding(FindingKind.BENCH, "", List.of(), shift)
            : scale("balance", scales(shift.subjects()), shift));
  }

  /**
   * Scales on which a group of bodies moved while the rest did not, or not half as far: of several
   * groups tried, one may seem to move by chance.
   */
  private List<Finding> ofSingleScales() {
    var scales = ScaleGroup.benches(chart.ofMonth());
    var moved = new TreeMap<String, Shift>();
    for (String scale : scales) {
      Shift.of(ScaleGroup.on(scale, chart.before()), ScaleGroup.on(scale, chart.ofMonth()))
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

  private static String reads(Shift shift) {
    return shift.isMore() ? "light" : "heavy";
  }

  private static Collection<String> scales(List<LossChart.Point> points) {
    var scales = ScaleGroup.rails(points);
    scales.addAll(ScaleGroup.benches(points));
    return scales;
  }

  private Finding scale(String variant, Collection<String> scales, Shift shift) {
    return finding(FindingKind.SCALE, variant, scales, shift);
  }

  private Finding finding(
      FindingKind kind, String variant, Collection<String> scales, Shift shift) {
    var subjects = new ArrayList<>(scales);
    subjects.addAll(shift.bodies());
    return Costs.finding(
        kind,
        variant,
        subjects,
        List.of(
            new Evidence.Day(shift.from()),
            Evidence.count(shift.subjects().size()),
            new Evidence.Kind(chart.species()),
            new Evidence.Percent(shift.mean(), 2),
            new Evidence.Percent(shift.before(), 2),
            Evidence.count(chart.baseline()),
            costs.borne(shift.subjects(), shift.excess()),
            new Evidence.Name(String.join(", ", scales))),
        costs.of(shift.subjects(), shift.excess()),
        Sureness.LIKELY);
  }
}
