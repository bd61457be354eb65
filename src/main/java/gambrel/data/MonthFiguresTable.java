package gambrel.data;

import gambrel.month.MonthRecords;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** {@code data/month-figures.csv}: the figures of every month against its twelve months before. */
final class MonthFiguresTable {
  private MonthFiguresTable() {}

  static Table of(Collection<MonthRecords> months) {
    var rows = new ArrayList<List<String>>();
    for (var month : months) {
      String name = month.month().toString();
      ShrinkMonthFigures.of(month).forEach(figure -> rows.add(figure.cells(name)));
      YieldMonthFigures.of(month).forEach(figure -> rows.add(figure.cells(name)));
      ValueMonthFigures.of(month).forEach(figure -> rows.add(figure.cells(name)));
    }
    return new Table(
        "month-figures.csv", List.of(("month," + MonthFigure.COLUMNS).split(",")), rows);
  }
}
