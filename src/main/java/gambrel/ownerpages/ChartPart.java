package gambrel.ownerpages;

import gambrel.month.MonthBodies;
import gambrel.shrink.ShrinkSeries;
import gambrel.statement.ChartView;
import gambrel.wording.Wording;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Individuals charts of chill shrink: the month's main species, and each other that has enough
 * bodies in the month.
 */
final class ChartPart {
  private static final int ENOUGH = 5;

  /** So many points can be told apart. */
  private static final int MOST_POINTS = 120;

  private final MonthBodies month;
  private final Wording wording;

  ChartPart(MonthBodies month, Wording wording) {
    this.month = month;
    this.wording = wording;
  }

  List<ChartView> charts() {
    var series =
        ShrinkSeries.of(month.night()).stream()
            .filter(s -> ofMonth(s) > 0)
            .sorted(Comparator.comparingLong(this::ofMonth).reversed())
            .toList();
    var charts = new ArrayList<ChartView>();
    for (var of : series) {
      if (charts.isEmpty() || ofMonth(of) >= ENOUGH) {
        charts.add(new ShrinkChart(of, shown(of), month.month(), wording).view());
      }
    }
    return charts;
  }

  private long ofMonth(ShrinkSeries series) {
    return charted(series).stream().filter(p -> monthOf(p).equals(month.month())).count();
  }

  /** The month's points, and as many before them as can be told apart. */
  private List<ShrinkSeries.Point> shown(ShrinkSeries series) {
    var until =
        charted(series).stream().filter(p -> !monthOf(p).isAfter(month.month())).toList();
    int least = Math.toIntExact(ofMonth(series));
    int number = Math.min(until.size(), Math.max(least, MOST_POINTS));
    return until.subList(until.size() - number, until.size());
  }

  static List<ShrinkSeries.Point> charted(ShrinkSeries series) {
    return series.points().stream()
        .filter(p -> p.balance().chillShrinkPercent().isPresent())
        .toList();
  }

  static LocalDate killed(ShrinkSeries.Point point) {
    return point.balance().body().killed().orElseThrow();
  }

  static YearMonth monthOf(ShrinkSeries.Point point) {
    return YearMonth.from(killed(point));
  }
}
