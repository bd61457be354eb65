package gambrel.data;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** The data files that stand behind the owner's months. */
public final class MonthTables {
  private MonthTables() {}

  /** Charts and figures, earliest month first. */
  public static List<Table> of(Collection<MonthRows> months) {
    var sorted = months.stream().sorted(Comparator.comparing(MonthRows::month)).toList();
    return List.of(MonthChartsTable.of(sorted), MonthFiguresTable.of(sorted));
  }
}
