package gambrel.month;

import java.util.List;
import java.util.Optional;

/**
 * A chiller that takes more than it did, by species; or one that seems to take less, which is rather a
 * scale: cold weights read heavy or hot ones light.
 */
final class ChillerFindings {
  private final Costs costs;

  ChillerFindings(MonthRecords records) {
    this.costs = new Costs(records, Loss.CHILL);
  }

  Optional<Finding> of(ChillDays days) {
    return days.shift().map(shift -> finding(days, shift));
  }

  private Finding finding(ChillDays days, Shift shift) {
    return Costs.finding(
        shift.isMore() ? FindingKind.CHILLER : FindingKind.SCALE,
        shift.isMore() ? "" : "chill",
        shift.bodies(),
        List.of(
            new Evidence.Day(shift.from()),
            Evidence.count(shift.subjects().size()),
            new Evidence.Kind(days.species()),
            new Evidence.Percent(shift.mean(), 2),
            new Evidence.Percent(shift.before(), 2),
            Evidence.count(days.baseline().size()),
            costs.borne(shift.subjects(), shift.excess())),
        costs.of(shift.subjects(), shift.excess()),
        Sureness.LIKELY);
  }
}
