package gambrel.insight.month.loss;

import gambrel.insight.month.bodies.Loss;
import gambrel.insight.month.bodies.MonthRecords;
import gambrel.insight.month.findings.Evidence;
import gambrel.insight.month.findings.Finding;
import gambrel.insight.month.findings.FindingKind;
import gambrel.insight.month.findings.OwnerCosts;
import gambrel.insight.month.findings.Sureness;
import gambrel.trade.balance.BatchBalance;
import gambrel.trade.balance.BatchState;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Weight;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Findings from the losses of bodies in the chiller and on the bench, and of batches. */
public final class LossFindings {
  private static final int MOST_BODIES = 3;
  private static final String BEYOND = "beyond-limits";

  private final MonthRecords records;
  private final List<Finding> found = new ArrayList<>();

  private LossFindings(MonthRecords records) {
    this.records = records;
  }

  /**
   * The findings of a month.
   *
   * @param chills charts of chill shrink
   * @param benches charts of bench loss
   * @param chillDays chill shrink by day
   */
  public static List<Finding> of(
      MonthRecords records,
      List<LossChart> chills,
      List<LossChart> benches,
      List<ChillDays> chillDays) {
    var findings = new LossFindings(records);
    findings.shifts(benches, chillDays);
    findings.bodies(Stream.concat(chills.stream(), benches.stream()).toList());
    records.bodies().batches().stream()
        .filter(batch -> batch.state() == BatchState.OUT && batch.lossShare().isPresent())
        .map(findings::batch)
        .forEach(findings.found::add);
    return findings.found;
  }

  private void shifts(List<LossChart> benches, List<ChillDays> chillDays) {
    for (var chart : benches) {
      var chill =
          chillDays.stream()
              .filter(days -> days.species() == chart.species())
              .flatMap(days -> days.shift().stream())
              .findFirst();
      found.addAll(new BenchFindings(records, chart, chill).all());
    }
    for (var days : chillDays) {
      days.shift()
          .filter(shift -> !isRailScale(days.species()))
          .ifPresent(shift -> found.add(chiller(days, shift)));
    }
  }

  /** Whether a finding says that the rail scale explains the chill shrink of a species. */
  private boolean isRailScale(Species species) {
    return found.stream()
        .filter(f -> f.kind() == FindingKind.SCALE && f.variant().equals(BenchFindings.RAIL))
        .anyMatch(f -> new Evidence.Kind(species).equals(f.evidence().get("species")));
  }

  /**
   * A chiller that takes more than before. If it seems to take less, the cause is a scale that
   * reads cold weights heavy or hot ones light.
   */
  private Finding chiller(ChillDays days, MeanShift shift) {
    return shifted(
        records,
        Loss.CHILL,
        shift.isMore() ? FindingKind.CHILLER : FindingKind.SCALE,
        shift.isMore() ? "" : "chill",
        days.species(),
        shift,
        days.baseline().size(),
        List.of());
  }

  /**
   * A finding about a loss that changed.
   *
   * @param baseline how many bodies of the baseline it is compared with
   * @param scales ids of the scales that may have caused it
   */
  static Finding shifted(
      MonthRecords records,
      Loss loss,
      FindingKind kind,
      String variant,
      Species species,
      MeanShift shift,
      int baseline,
      List<String> scales) {
    var bodies = shift.subjects().stream().map(LossChart.Point::account).toList();
    var lost = OwnerCosts.lost(bodies, loss, shift.excess());
    var subjects = new ArrayList<>(scales);
    subjects.addAll(shift.bodies());
    var evidence = new HashMap<>(shift.evidence());
    evidence.put("species", new Evidence.Kind(species));
    evidence.put("bodies_before", Evidence.count(baseline));
    evidence.put("weight", OwnerCosts.borne(lost));
    evidence.put("scales", new Evidence.Name(String.join(", ", scales)));
    return new Finding(
        kind,
        variant,
        subjects,
        evidence,
        OwnerCosts.costs(lost, records.rail().of(species), records.settings().currency()),
        Sureness.LIKELY);
  }

  /** Single bodies beyond the limits of a chart: the farthest ones that no other finding names. */
  private void bodies(List<LossChart> charts) {
    var explained = new HashSet<String>();
    found.forEach(finding -> explained.addAll(finding.subjects()));
    for (var chart : charts) {
      chart.signals().stream()
          .filter(p -> p.signals().contains(BEYOND) && !explained.contains(p.body()))
          .sorted(Comparator.comparing((LossChart.Point p) -> distance(chart, p).abs()).reversed())
          .limit(MOST_BODIES)
          .map(point -> body(chart, point))
          .forEach(found::add);
    }
  }

  private static BigFraction distance(LossChart chart, LossChart.Point point) {
    return point.percent().subtract(Exact.fraction(chart.centre().orElseThrow()));
  }

  private Finding body(LossChart chart, LossChart.Point point) {
    var distance = distance(chart, point);
    var lost = OwnerCosts.lost(List.of(point.account()), chart.loss(), distance);
    // A loss below zero is a gain, which is not expected: the limit is printed as zero.
    var lower = Exact.max(BigFraction.ZERO, Exact.fraction(chart.lower().orElseThrow()));
    return new Finding(
        chart.loss() == Loss.CHILL ? FindingKind.CHILLED_BODIES : FindingKind.BENCH_BODIES,
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
        OwnerCosts.costs(lost, records.rail().of(chart.species()), records.settings().currency()),
        Sureness.LIKELY);
  }

  private Finding batch(BatchBalance batch) {
    var loss = batch.loss().orElseThrow();
    var limit = Exact.fraction(records.settings().limits().batchLossPercent());
    return new Finding(
        FindingKind.BATCH,
        loss.isNegative() ? "gain" : "loss",
        List.of(batch.batch().id()),
        Map.of(
            "batch",
            new Evidence.Name(batch.batch().id()),
            "weight",
            new Evidence.Mass(loss.isNegative() ? Weight.ZERO.minus(loss) : loss),
            "loss",
            Evidence.percent(batch.lossShare().orElseThrow().percent().abs()),
            "limit",
            Evidence.percent(limit)),
        List.of(),
        Sureness.CERTAIN);
  }
}
