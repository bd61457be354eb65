package gambrel.insight.month.loss;

import gambrel.insight.month.bodies.BodyFigure;
import gambrel.insight.month.bodies.MonthBody;
import gambrel.insight.month.bodies.MonthRecords;
import gambrel.insight.month.findings.Evidence;
import gambrel.insight.month.findings.Finding;
import gambrel.trade.cuts.Species;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * Findings from losses that changed from a day on. The cause of a changed bench loss may be the
 * bench or a scale:
 *
 * <ul>
 *   <li>A rail scale that reads light makes the chiller seem to take more, and the bench less.
 *   <li>A bench scale that drifts changes the loss of the bodies weighed on it and of no others.
 *   <li>A smaller loss is a scale's fault: work does not make weight.
 * </ul>
 */
final class ShiftFindings {
  /** Variant of a finding: the rail scale explains the changes of chiller and bench. */
  private static final String RAIL = "rail";

  private final MonthRecords records;
  private final List<Finding> found = new ArrayList<>();

  private ShiftFindings(MonthRecords records) {
    this.records = records;
  }

  static List<Finding> of(MonthRecords records, List<LossChart> charts, List<ChillDays> chillDays) {
    var findings = new ShiftFindings(records);
    charts.stream()
        .filter(chart -> chart.loss() == BodyFigure.BENCH)
        .forEach(chart -> findings.bench(chart, chillDays));
    for (var days : chillDays) {
      days.shift()
          .filter(shift -> !findings.isRailScale(days.species()))
          .ifPresent(shift -> findings.chiller(days, shift));
    }
    return findings.found;
  }

  /** Whether a finding says that the rail scale explains the chill shrink of a species. */
  private boolean isRailScale(Species species) {
    return found.stream()
        .filter(f -> f.variant().equals(RAIL))
        .anyMatch(f -> new Evidence.Kind(species).equals(f.evidence().get("species")));
  }

  /**
   * A chiller that takes more than before. If it seems to take less, the cause is a scale that
   * reads cold weights heavy or hot ones light.
   */
  private void chiller(ChillDays days, MeanShift shift) {
    add(
        shift.isMore() ? Finding.Kind.CHILLER : Finding.Kind.SCALE,
        shift.isMore() ? "" : "chill",
        days.chart(),
        days.baseline().size(),
        shift,
        List.of());
  }

  private void bench(LossChart chart, List<ChillDays> chillDays) {
    var ofScales = ofSingleScales(chart);
    ofScales.forEach(
        (scale, shift) -> scale(shift.isMore() ? "light" : "heavy", chart, shift, List.of(scale)));
    if (ofScales.isEmpty()) {
      var opposite =
          chillDays.stream()
              .filter(days -> days.species() == chart.species())
              .flatMap(days -> days.shift().stream())
              .findFirst();
      MeanShift.of(chart.before(), chart.ofMonth())
          .ifPresent(shift -> bench(chart, shift, opposite));
    }
  }

  private void bench(LossChart chart, MeanShift shift, Optional<MeanShift> chill) {
    var rails = scales(shift.subjects(), MonthBody::railScale);
    if (chill.filter(c -> c.isMore() != shift.isMore()).isPresent()) {
      scale(RAIL, chart, shift, rails);
    } else if (shift.isMore()) {
      add(Finding.Kind.BENCH, "", chart, chart.baseline(), shift, List.of());
    } else {
      rails.addAll(scales(shift.subjects(), MonthBody::benchScale));
      scale("balance", chart, shift, rails);
    }
  }

  private void scale(String variant, LossChart chart, MeanShift shift, Collection<String> scales) {
    add(Finding.Kind.SCALE, variant, chart, chart.baseline(), shift, scales);
  }

  /**
   * Bench scales whose bodies changed while those of another scale did not, or less than half as
   * much. The second condition leaves out scales that seem to change by chance.
   */
  private static TreeMap<String, MeanShift> ofSingleScales(LossChart chart) {
    var scales = scales(chart.ofMonth(), MonthBody::benchScale);
    var moved = new TreeMap<String, MeanShift>();
    for (String scale : scales) {
      MeanShift.of(on(scale, chart.before()), on(scale, chart.ofMonth()))
          .ifPresent(shift -> moved.put(scale, shift));
    }
    var most = moved.values().stream().map(s -> s.excess().abs()).max(Comparator.naturalOrder());
    moved.values().removeIf(s -> s.excess().abs().multiply(2).compareTo(most.orElseThrow()) < 0);
    return moved.size() == scales.size() ? new TreeMap<>() : moved;
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

  private static List<String> chillers(List<MonthBody> bodies) {
    return bodies.stream().map(body -> body.body().chiller()).distinct().toList();
  }

  /**
   * Adds a finding about a loss that changed.
   *
   * @param baseline how many bodies of the baseline it is compared with
   * @param scales ids of the scales that may have caused it
   */
  private void add(
      Finding.Kind kind,
      String variant,
      LossChart chart,
      int baseline,
      MeanShift shift,
      Collection<String> scales) {
    var bodies = shift.subjects().stream().map(LossChart.Point::account).toList();
    var lost = chart.loss().lost(bodies, shift.excess());
    var subjects = new ArrayList<>(scales);
    subjects.addAll(shift.bodies());
    var evidence = new HashMap<>(shift.evidence());
    evidence.put("species", new Evidence.Kind(chart.species()));
    evidence.put("bodies_before", Evidence.count(baseline));
    evidence.put("weight", new Evidence.Borne(lost));
    evidence.put("scales", new Evidence.Names(List.copyOf(scales)));
    evidence.put("chillers", new Evidence.Names(chillers(bodies)));
    var costs = Finding.Cost.onRail(lost, chart.species(), records);
    found.add(Finding.likely(kind, variant, subjects, evidence, costs));
  }
}
