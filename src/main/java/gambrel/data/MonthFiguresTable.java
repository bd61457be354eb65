package gambrel.data;

import gambrel.month.MonthRecords;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;

/** {@code data/month-figures.csv}: the figures of every month against its twelve months before. */
final class MonthFiguresTable {
  private MonthFiguresTable() {}

  static Table of(Collection<MonthRows> months) {
    var rows = months.stream().flatMap(month -> month.figures().stream()).toList();
    return new Table(
        "month-figures.csv", List.of(("month," + MonthFigure.COLUMNS).split(",")), rows);
  }

  static List<List<String>> rows(MonthRecords month) {
    String name = month.month().toString();
    return Stream.of(
            ShrinkMonthFigures.of(month), YieldMonthFigures.of(month), ValueMonthFigures.of(month))
        .flatMap(List::stream)
        .map(figure -> figure.cells(name))
        .toList();
  }
}
