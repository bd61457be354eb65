package gambrel.files.tables;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/** The data files that stand behind the owner's months. */
public final class MonthTables {
  private MonthTables() {}

  /** Charts and figures, earliest month first. */
  public static List<Table> of(Collection<MonthRows> months) {
    return List.of(
        table("month-charts.csv", MonthRows.CHARTS, months, MonthRows::charts),
        table("month-figures.csv", MonthRows.FIGURES, months, MonthRows::figures));
  }

  private static Table table(
      String file,
      String columns,
      Collection<MonthRows> months,
      Function<MonthRows, List<List<String>>> rows) {
    return new Table(
        file,
        List.of(columns.split(",")),
        months.stream()
            .sorted(Comparator.comparing(MonthRows::month))
            .flatMap(month -> rows.apply(month).stream())
            .toList());
  }
}
