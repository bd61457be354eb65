package gambrel.month.pace;

import gambrel.month.MonthBodies;
import gambrel.month.MonthRecords;
import gambrel.month.MonthBody;
import java.time.YearMonth;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Times of work read from a month and from the twelve before it, by the day of the weighing.
 *
 * @param month the month's
 * @param before those before
 */
public record PaceReadings(Stints month, Stints before) {
  /** Reads both. */
  public static PaceReadings of(MonthRecords records) {
    return new PaceReadings(
        read(List.of(records.bodies())), read(records.baseline().months()));
  }

  private static Stints read(List<MonthBodies> months) {
    var own = months.stream().map(MonthBodies::month).collect(Collectors.toSet());
    var bodies = Collections.<MonthBody>newSetFromMap(new IdentityHashMap<>());
    var inOrder =
        months.stream().flatMap(month -> month.onBlock().stream()).filter(bodies::add).toList();
    return Stints.of(inOrder, day -> own.contains(YearMonth.from(day)));
  }
}
