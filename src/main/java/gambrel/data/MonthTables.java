package gambrel.data;

import gambrel.month.BodyCalendar;
import gambrel.month.MonthRecords;
import gambrel.reckoning.Night;
import gambrel.register.Register;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** The data files that stand behind the owner's months. */
public final class MonthTables {
  private static final int AT_ONCE = 2 * Runtime.getRuntime().availableProcessors();

  private MonthTables() {}

  /** Charts and figures of {@code months}. */
  public static List<Table> of(Night night, Register register, Collection<YearMonth> months) {
    var calendar = new BodyCalendar(night);
    var inOrder = months.stream().sorted().toList();
    var rows = new ArrayList<MonthRows>();
    // Months next to each other look back at the same bodies, whose figures are kept until then.
    for (int at = 0; at < inOrder.size(); at += AT_ONCE) {
      var some = inOrder.subList(at, Math.min(at + AT_ONCE, inOrder.size()));
      rows.addAll(
          some.parallelStream()
              .map(month -> MonthRows.of(MonthRecords.of(calendar, night, register, month)))
              .toList());
      some.forEach(calendar::done);
    }
    return of(rows);
  }

  /** Charts and figures, earliest month first. */
  public static List<Table> of(Collection<MonthRows> months) {
    var sorted = months.stream().sorted(Comparator.comparing(MonthRows::month)).toList();
    return List.of(MonthChartsTable.of(sorted), MonthFiguresTable.of(sorted));
  }
}
