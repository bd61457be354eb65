package gambrel.insight.month.loss;

import gambrel.insight.month.figures.BodyFigure;
import gambrel.insight.month.figures.Evidence;
import gambrel.insight.month.figures.Finding;
import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.month.figures.MonthRecords;
import gambrel.insight.statistics.ControlChart;
import gambrel.trade.balance.BatchBalance;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Weight;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Findings from the losses of bodies in the chiller and on the bench, and of batches. The cause of
 * a bench loss that changed from a day on may be the bench or a scale:
 *
 * <ul>
 *   <li>A rail scale that reads light makes the chiller seem to take more, and the bench less.
 *   <li>A bench scale that drifts changes the loss of the bodies weighed on it and of no others.
 *   <li>A smaller loss is a scale's fault: work does not make weight.
 * </ul>
 */
public final class LossFindings {
  private static final int MOST_BODIES = 3;

  /** Variant of a finding: the rail scale explains the changes of chiller and bench. */
  private static final String RAIL = "rail";

  private final MonthRecords records;
  private final List<ChillDays> chillDays;
  private final List<Finding> found = new ArrayList<>();

  private LossFindings(MonthRecords records, List<ChillDays> chillDays) {
    this.records = records;
    this.chillDays = chillDays;
  }

  /**
   * The findings of a month.
   *
   * @param charts charts of chill shrink and bench loss
   * @param chillDays chill shrink by day
   */
  public static List<Finding> of(
      MonthRecords records, List<LossChart> charts, List<ChillDays> chillDays) {
    var findings = new LossFindings(records, chillDays);
    findings.addShifts(charts);
    findings.addBodies(charts);
    records.bodies().batches().stream()
        .filter(batch -> batch.isOut() && batch.lossShare().isPresent())
        .forEach(findings::addBatch);
    return findings.found;
  }

  private void addShifts(List<LossChart> charts) {
    charts.stream().filter(chart -> chart.loss() == BodyFigure.BENCH).forEach(this::bench);
    for (var days : chillDays) {
      days.shift()
          .filter(shift -> !isRailScale(days.species()))
          .ifPresent(shift -> chiller(days.chart(), shift));
    }
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
  private void chiller(LossChart chart, MeanShift shift) {
    if (shift.isMore()) {
      add(Finding.Kind.CHILLER, "", chart, shift, List.of());
    } else {
      add(Finding.Kind.SCALE, "chill", chart, shift, List.of());
    }
  }

  private void bench(LossChart chart) {
    var ofScales = ofSingleScales(chart);
    ofScales.forEach(
        (scale, shift) ->
            add(
                Finding.Kind.SCALE,
                shift.isMore() ? "light" : "heavy",
                chart,
                shift,
                List.of(scale)));
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
      add(Finding.Kind.SCALE, RAIL, chart, shift, rails);
    } else if (shift.isMore()) {
      add(Finding.Kind.BENCH, "", chart, shift, List.of());
    } else {
      rails.addAll(scales(shift.subjects(), MonthBody::benchScale));
      add(Finding.Kind.SCALE, "balance", chart, shift, rails);
    }
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

  /**
   * Adds a finding about a loss that changed.
   *
   * @param scales ids of the scales that may have caused it
   */
  private void add(
      Finding.Kind kind,
      String variant,
      LossChart chart,
      MeanShift shift,
      Collection<String> scales) {
    var bodies = shift.subjects().stream().map(LossChart.Point::account).toList();
    var lost = chart.loss().lost(bodies, shift.excess());
    var subjects = new ArrayList<>(scales);
    subjects.addAll(shift.bodies());
    var evidence = new HashMap<>(shift.evidence());
    evidence.put("species", new Evidence.Kind(chart.species()));
    evidence.put("weight", new Evidence.Borne(lost));
    evidence.put("scales", new Evidence.Names(List.copyOf(scales)));
    evidence.put("chillers", new Evidence.Names(chillers(bodies)));
    var costs = Finding.Cost.onRail(lost, chart.species(), records);
    found.add(Finding.likely(kind, variant, subjects, evidence, costs));
  }

  private static List<String> chillers(List<MonthBody> bodies) {
    return bodies.stream().map(body -> body.body().chiller()).distinct().toList();
  }

  /** Single bodies beyond the limits of a chart: the farthest that no other finding names. */
  private void addBodies(List<LossChart> charts) {
    var explained = found.stream().flatMap(f -> f.subjects().stream()).collect(Collectors.toSet());
    for (var chart : charts) {
      chart.signals().stream()
          .filter(p -> p.signals().contains(ControlChart.BEYOND_LIMITS))
          .filter(p -> !explained.contains(p.body()))
          .sorted(chart.farthestFirst())
          .limit(MOST_BODIES)
          .map(point -> body(chart, point))
          .forEach(found::add);
    }
  }

  private Finding body(LossChart chart, LossChart.Point point) {
    var distance = chart.aboveCentre(point);
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
            "bodies_before", new Evidence.Count(chart.baseline())),
        Finding.Cost.onRail(lost, chart.species(), records));
  }

  private void addBatch(BatchBalance batch) {
    var loss = batch.loss().orElseThrow();
    var size = loss.isNegative() ? Weight.ZERO.minus(loss) : loss;
    var limit = Exact.fraction(records.settings().limits().batchLossPercent());
    found.add(
        Finding.certain(
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
            List.of()));
  }
}
