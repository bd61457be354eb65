package gambrel.insight.month.pace;

import gambrel.insight.month.bodies.MonthRecords;
import gambrel.insight.month.findings.Evidence;
import gambrel.insight.month.findings.Finding;
import gambrel.insight.month.findings.FindingKind;
import gambrel.insight.month.findings.GroupComparison;
import gambrel.insight.month.findings.GroupComparison.Sample;
import gambrel.insight.month.findings.Sureness;
import gambrel.trade.measure.Exact;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Work on the block that took longer than in the twelve months before, the same boners compared.
 */
public final class PaceFindings {
  private static final String MONTH = "month";
  private static final String BEFORE = "before";

  private PaceFindings() {}

  /** The findings of a month. */
  public static List<Finding> of(MonthRecords records, PaceReadings readings) {
    var pieces =
        readings.month().counted().stream().map(PieceKind::of).distinct().sorted().toList();
    var findings = new ArrayList<Finding>();
    for (var piece : pieces) {
      var samples = new ArrayList<Sample>();
      add(samples, piece, MONTH, readings.month());
      add(samples, piece, BEFORE, readings.before());
      GroupComparison.of(samples, MONTH, pieces.size())
          .filter(difference -> difference.low() > 0)
          .ifPresent(difference -> findings.add(finding(records, readings, piece, difference)));
    }
    return findings;
  }

  private static void add(
      List<Sample> samples, PieceKind piece, String group, BoningIntervals stints) {
    for (var stint : stints.counted()) {
      if (PieceKind.of(stint).equals(piece)) {
        samples.add(new Sample("", stint.boner(), group, stint.minutesEach().doubleValue()));
      }
    }
  }

  private static Finding finding(
      MonthRecords records,
      PaceReadings readings,
      PieceKind piece,
      GroupComparison.Difference difference) {
    var now = readings.month().of(Optional.empty(), piece.species(), piece.item()).orElseThrow();
    var then = readings.before().of(Optional.empty(), piece.species(), piece.item()).orElseThrow();
    var item = records.night().shop().cuts().of(piece.species()).find(piece.item()).orElseThrow();
    return new Finding(
        FindingKind.PACE,
        "",
        List.of(piece.item()),
        Map.of(
            "species", new Evidence.Kind(piece.species()),
            "piece", new Evidence.Cuts(piece.species(), List.of(item)),
            "minutes", new Evidence.Number(now.each().median(), 1),
            "usual", new Evidence.Number(then.each().median(), 1),
            "pieces", Evidence.count(difference.bodies()),
            "pieces_before", Evidence.count(difference.others()),
            "difference", new Evidence.Number(Exact.ofStatistic(difference.mean()), 1),
            "lower", new Evidence.Number(Exact.ofStatistic(difference.low()), 1),
            "upper", new Evidence.Number(Exact.ofStatistic(difference.high()), 1),
            "false_alarms", GroupComparison.FALSE_ALARMS),
        List.of(),
        Sureness.LIKELY);
  }
}
