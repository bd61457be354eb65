package gambrel.insight.month.pace;

import gambrel.insight.month.bodies.Compared;
import gambrel.insight.month.bodies.MonthRecords;
import gambrel.insight.month.findings.Evidence;
import gambrel.insight.month.findings.Finding;
import gambrel.insight.month.findings.FindingKind;
import gambrel.insight.month.findings.GroupComparison;
import gambrel.insight.month.findings.GroupComparison.Difference;
import gambrel.insight.month.findings.MonthChange;
import gambrel.insight.month.findings.Sureness;
import gambrel.insight.month.pace.BoningInterval.Piece;
import gambrel.trade.measure.Exact;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Pieces that took longer than in the twelve months before, each boner compared with himself. */
public final class PaceFindings {
  private PaceFindings() {}

  /** The findings of a month. */
  public static List<Finding> of(MonthRecords records, BoningIntervals.Both times) {
    var pieces =
        times.month().counted().stream().map(BoningInterval::piece).distinct().sorted().toList();
    var findings = new ArrayList<Finding>();
    for (var piece : pieces) {
      var compared =
          new Compared<>(piece.species(), times.month().of(piece), times.before().of(piece));
      MonthChange.difference(
              compared, one -> Optional.of(one.minutesEach()), BoningInterval::boner, pieces.size())
          .filter(difference -> difference.low() > 0)
          .ifPresent(difference -> findings.add(finding(records, times, piece, difference)));
    }
    return findings;
  }

  private static Finding finding(
      MonthRecords records, BoningIntervals.Both times, Piece piece, Difference difference) {
    var item = records.night().shop().cuts().of(piece.species()).find(piece.item()).orElseThrow();
    return new Finding(
        FindingKind.PACE,
        "",
        List.of(piece.item()),
        Map.of(
            "species", new Evidence.Kind(piece.species()),
            "piece", new Evidence.Cuts(piece.species(), List.of(item)),
            "minutes", median(times.month(), piece),
            "usual", median(times.before(), piece),
            "pieces", Evidence.count(difference.bodies()),
            "pieces_before", Evidence.count(difference.others()),
            "difference", minutes(difference.mean()),
            "lower", minutes(difference.low()),
            "upper", minutes(difference.high()),
            "false_alarms", GroupComparison.FALSE_ALARMS),
        List.of(),
        Sureness.LIKELY);
  }

  private static Evidence median(BoningIntervals times, Piece piece) {
    var pace = times.of(piece, Optional.empty()).orElseThrow();
    return new Evidence.Number(pace.each().median(), 1);
  }

  private static Evidence minutes(double value) {
    return new Evidence.Number(Exact.ofStatistic(value), 1);
  }
}
