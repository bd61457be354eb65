package gambrel.data;

import gambrel.month.BodyCalendar;
import gambrel.month.MonthRecords;
import gambrel.reckoning.Night;
import gambrel.register.Register;
import java.time.YearMonth;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** The data files that stand behind the owner's months. */
public final class MonthTables {
  private MonthTables() {}

  /** Charts and figures of {@code months}. */
  public static List<Table> of(Night night, Register register, Collection<YearMonth> months) {
    var calendar = new BodyCalendar(night);
    return of(
        months.parallelStream()
            .map(
                month -> {
                  var rows = MonthRows.of(MonthRecords.of(calendar, night, register, month));
                  calendar.done(month);
                  return rows;
                })
            .toList());
  }

  /** Charts and figures, earliest month first. */
  public static List<Table> of(Collection<MonthRows> months) {
    var sorted = months.stream().sorted(Comparator.comparing(MonthRows::month)).toList();
    return List.of(MonthChartsTable.of(sorted), MonthFiguresTable.of(sorted));
  }
}
