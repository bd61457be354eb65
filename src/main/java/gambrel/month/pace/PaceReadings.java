package gambrel.month.pace;

import gambrel.balance.Drawn;
import gambrel.month.MonthBodies;
import gambrel.month.MonthRecords;
import gambrel.reckoning.BodyAccount;
import java.time.YearMonth;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;

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
    return new PaceReadings(read(List.of(records.bodies())), read(records.baseline().months()));
  }

  private static Stints read(List<MonthBodies> months) {
    var own = months.stream().map(MonthBodies::month).collect(Collectors.toSet());
    var bodies =
        months.stream()
            .flatMap(month -> month.onBlock().stream())
            .collect(
                Collectors.toMap(a -> a.body().id(), a -> a, (a, same) -> a, LinkedHashMap::new))
            .values()
            .stream();
    return Stints.of(
        bodies.map(BodyAccount::balance).toList(), day -> own.contains(YearMonth.from(day)));
  }
}
