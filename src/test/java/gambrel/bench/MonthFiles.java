package gambrel.bench;

import gambrel.data.MonthRows;
import gambrel.data.MonthTables;
import gambrel.data.Table;
import gambrel.month.BodyCalendar;
import gambrel.month.MonthRecords;
import gambrel.reckoning.Night;
import gambrel.register.Register;
import gambrel.run.Months;
import java.util.ArrayList;
import java.util.List;

/** The data files of a night's months as a night makes them, without their pages. */
public final class MonthFiles {
  private static final int AT_ONCE = 2 * Runtime.getRuntime().availableProcessors();

  private MonthFiles() {}

  /** Of every month, nothing having been issued. */
  public static List<Table> of(Night night) {
    var calendar = new BodyCalendar(night);
    var register = new Register(List.of());
    var months = Months.of(night).stream().sorted().toList();
    var rows = new ArrayList<MonthRows>();
    // Months next to each other look back at the same bodies, whose figures are kept until then.
    for (int at = 0; at < months.size(); at += AT_ONCE) {
      var some = months.subList(at, Math.min(at + AT_ONCE, months.size()));
      rows.addAll(
          some.parallelStream()
              .map(month -> MonthRows.of(MonthRecords.of(calendar, night, register, month)))
              .toList());
      some.forEach(calendar::done);
    }
    return MonthTables.of(rows);
  }
}
