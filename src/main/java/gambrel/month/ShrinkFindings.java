package gambrel.month;

import gambrel.cuts.Species;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Findings from what was lost in the chiller, on the rail, on the bench and in batches. */
final class ShrinkFindings {
  private final MonthRecords records;
  private final List<Finding> found = new ArrayList<>();

  private ShrinkFindings(MonthRecords records) {
    this.records = records;
  }

  static List<Finding> of(MonthRecords records) {
    var findings = new ShrinkFindings(records);
    findings.charts();
    var hanging = new HangingFindings(records);
    Hanging.of(records).forEach(h -> hanging.of(h).ifPresent(findings.found::add));
    findings.found.addAll(BatchFindings.of(records));
    Completeness.of(records).stream()
        .flatMap(Completeness::finding)
        .forEach(findings.found::add);
    return findings.found;
  }

  private void charts() {
    var chills = LossChart.of(records, Loss.CHILL);
    var benches = LossChart.of(records, Loss.BENCH);
    var shifts = new ArrayList<ChillDays>();
    chills.forEach(chart -> ChillDays.of(chart).ifPresent(shifts::add));
    for (var chart : benches) {
      found.addAll(new BenchFindings(records, chart, chill(chart, shifts)).all());
    }
    for (var days : shifts) {
      boolean scale = benches.stream().anyMatch(b -> isScale(b.species(), days.species()));
      if (!scale) {
        new ChillerFindings(records).of(days).ifPresent(found::add);
      }
    }
    var all = explained();
    Stream.concat(chills.stream(), benches.stream())
        .flatMap(chart -> new BodyFindings(records, chart).but(all).stream())
        .forEach(found::add);
  }

  /** Whether the rail scale explains what the chiller seems to do to a species. */
  private boolean isScale(Species bench, Species chilled) {
    return bench == chilled
        && found.stream()
            .anyMatch(
                f ->
                    f.kind() == FindingKind.SCALE
                        && f.variant().equals(BenchFindings.RAIL)
                        && f.evidence().contains(new Evidence.Kind(chilled)));
  }

  private static Optional<Shift> chill(LossChart bench, List<ChillDays> shifts) {
    return shifts.stream()
        .filter(days -> days.species() == bench.species())
        .flatMap(days -> days.shift().stream())
        .findFirst();
  }

  /** Bodies that a finding of many speaks of need none of their own. */
  private Set<String> explained() {
    var ids = new HashSet<String>();
    found.forEach(finding -> ids.addAll(finding.subjects()));
    return ids;
  }
}
