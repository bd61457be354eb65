package gambrel.month.pace;

import gambrel.month.Evidence;
import gambrel.month.Finding;
import gambrel.month.FindingKind;
import gambrel.month.LikeWithLike;
import gambrel.month.LikeWithLike.Sample;
import gambrel.month.MonthRecords;
import gambrel.month.Sureness;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Work on the block that took longer than in the twelve months before, the same boners compared. */
public final class PaceFindings {
  private static final String MONTH = "month";
  private static final String BEFORE = "before";

  private PaceFindings() {}

  /** The findings of a month. */
  public static List<Finding> of(MonthRecords records) {
    var readings = PaceReadings.of(records);
    var pieces =
        readings.month().counted().stream().map(PieceKind::of).distinct().sorted().toList();
    var findings = new ArrayList<Finding>();
    for (var piece : pieces) {
      var samples = new ArrayList<Sample>();
      add(samples, piece, MONTH, readings.month());
      add(samples, piece, BEFORE, readings.before());
      LikeWithLike.of(samples, MONTH, pieces.size())
          .filter(difference -> difference.low() > 0)
          .ifPresent(difference -> findings.add(finding(records, readings, piece, difference)));
    }
    return findings;
  }

  private static void add(List<Sample> samples, PieceKind piece, String group, Stints stints) {
    for (var stint : stints.counted()) {
      if (PieceKind.of(stint).equals(piece)) {
        samples.add(
            new Sample("", stint.boner(), group, stint.minutesEach().doubleValue()));
      }
    }
  }

  private static Finding finding(
      MonthRecords records,
      PaceReadings readings,
      PieceKind piece,
      LikeWithLike.Difference difference) {
    var now = readings.month().of(Optional.empty(), piece.species(), piece.item()).orElseThrow();
    var then = readings.before().of(Optional.empty(), piece.species(), piece.item()).orElseThrow();
    var item =
        records.night().shop().cuts().of(piece.species()).find(piece.item()).orElseThrow();
    return new Finding(
        FindingKind.PACE,
        "",
        List.of(piece.item()),
        List.of(
            new Evidence.Kind(piece.species()),
            new Evidence.Cuts(piece.species(), List.of(item)),
            new Evidence.Number(now.each().median(), 1),
            new Evidence.Number(then.each().median(), 1),
            Evidence.count(difference.bodies()),
            Evidence.count(difference.others())),
        Optional.empty(),
        Sureness.LIKELY);
  }
}
