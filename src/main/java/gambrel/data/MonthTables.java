package gambrel.data;

import gambrel.month.BodyCalendar;
import gambrel.month.MonthRecords;
import gambrel.reckoning.Night;
import gambrel.register.Register;
import java.time.YearMonth;
import java.util.Collection;
import java.util.List;

/** The data files that stand behind the owner's months. */
public final class MonthTables {
  private MonthTables() {}

  /** Charts and figures of {@code months}. */
  public static List<Table> of(Night night, Register register, Collection<YearMonth> months) {
    var calendar = new BodyCalendar(night);
    var records =
        months.stream().map(m -> MonthRecords.of(calendar, night, register, m)).toList();
    return List.of(MonthChartsTable.of(records), MonthFiguresTable.of(records));
  }
}
