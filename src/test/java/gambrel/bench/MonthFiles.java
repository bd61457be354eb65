package gambrel.bench;

import gambrel.files.tables.MonthRows;
import gambrel.files.tables.Table;
import gambrel.insight.month.MonthReport;
import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.month.figures.MonthRecords;
import gambrel.night.Months;
import gambrel.trade.reckoning.Night;
import gambrel.trade.register.Register;
import java.util.List;

/** The data files of a night's months as a night makes them, without their pages. */
public final class MonthFiles {
  private MonthFiles() {}

  /** Of every month, nothing having been issued. */
  public static List<Table> of(Night night) {
    var bodies = MonthBody.all(night);
    var register = new Register(List.of());
    var months = Months.of(night).stream().sorted().toList();
    var rows =
        months.parallelStream()
            .map(
                month ->
                    MonthRows.of(
                        MonthReport.of(MonthRecords.of(bodies, night, register, List.of(), month)),
                        0))
            .toList();
    return MonthRows.tables(rows);
  }
}
