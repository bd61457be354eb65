package gambrel.bench;

import gambrel.data.MonthRows;
import gambrel.data.MonthTables;
import gambrel.data.Table;
import gambrel.month.BodyCalendar;
import gambrel.month.MonthRecords;
import gambrel.reckoning.Night;
import gambrel.register.Register;
import gambrel.run.Months;
import java.util.List;

/** The data files of a night's months as a night makes them, without their pages. */
public final class MonthFiles {
  private MonthFiles() {}

  /** Of every month, nothing having been issued. */
  public static List<Table> of(Night night) {
    var calendar = new BodyCalendar(night);
    var register = new Register(List.of());
    var months = Months.of(night).stream().sorted().toList();
    var rows =
        months.parallelStream()
            .map(month -> MonthRows.of(MonthRecords.of(calendar, night, register, month)))
            .toList();
    return MonthTables.of(rows);
  }
}
