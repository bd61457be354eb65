package gambrel.month.pace;

import gambrel.balance.Drawn;
import gambrel.month.MonthBodies;
import gambrel.month.MonthRecords;
import gambrel.reckoning.BodyAccount;
import java.time.YearMonth;

/**
 * Times of work read from a month and from the twelve before it, by the day of the weighing.
 *
 * @param month the month's
 * @param before those before
 */
public record PaceReadings(Stints month, Stints before) {
  private static final Drawn<MonthRecords, PaceReadings> DRAWN = new Drawn<>(PaceReadings::read);

  /** Reads both. */
  public static PaceReadings of(MonthRecords records) {
    return DRAWN.of(records);
  }

  private static PaceReadings read(MonthRecords records) {
    var bodies =
        records.night().bodies().values().stream().map(BodyAccount::balance).toList();
    var earlier = records.baseline().months().stream().map(MonthBodies::month).toList();
    return new PaceReadings(
        Stints.of(bodies, day -> YearMonth.from(day).equals(records.month())),
        Stints.of(bodies, day -> earlier.contains(YearMonth.from(day))));
  }
}
