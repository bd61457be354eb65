package gambrel.insight.month.pace;

import gambrel.insight.month.bodies.MonthBodies;
import gambrel.insight.month.bodies.MonthBody;
import gambrel.insight.month.bodies.MonthRecords;
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
public record PaceReadings(BoningIntervals month, BoningIntervals before) {
  /** Reads both. */
  public static PaceReadings of(MonthRecords records) {
    return new PaceReadings(read(List.of(records.bodies())), read(records.baseline().months()));
  }

  private static BoningIntervals read(List<MonthBodies> months) {
    var own = months.stream().map(MonthBodies::month).collect(Collectors.toSet());
    var bodies = Collections.<MonthBody>newSetFromMap(new IdentityHashMap<>());
    var inOrder =
        months.stream().flatMap(month -> month.onBlock().stream()).filter(bodies::add).toList();
    return BoningIntervals.of(inOrder, day -> own.contains(YearMonth.from(day)));
  }
}
