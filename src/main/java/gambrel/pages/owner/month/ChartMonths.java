package gambrel.pages.owner.month;

import gambrel.pages.views.ChartView;
import gambrel.pages.words.Formats;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;

/**
 * The lower axis of a chart: points at equal distances, and marks where each month begins, or at
 * the first and last point of a single month.
 *
 * @param plot the frame of the points
 * @param days the day of each point, in order; at least one
 * @param formats how dates are printed
 */
record ChartMonths(ChartView.Frame plot, List<LocalDate> days, Formats formats) {

  /** The place of a point. */
  int x(int index) {
    return plot.left() + (2 * index + 1) * (plot.right() - plot.left()) / (2 * days.size());
  }

  List<ChartView.Tick> ticks() {
    int last = days.size() - 1;
    return month(0).equals(month(last)) ? ends(last) : months(last);
  }

  private YearMonth month(int index) {
    return YearMonth.from(days.get(index));
  }

  /** The first point's day, and the last one's if it has room beside it. */
  private List<ChartView.Tick> ends(int last) {
    String from = formats.brief(days.get(0));
    String to = formats.brief(days.get(last));
    boolean both = x(last) - x(0) > ChartLabels.LETTER * (from.length() + to.length());
    return both ? List.of(tick(x(0), from), tick(x(last), to)) : List.of(tick(x(0), from));
  }

  private ChartView.Tick tick(int x, String label) {
    return new ChartView.Tick(x, ChartLabels.middle(label, x, plot), label);
  }

  /** From the last month back, as many as have room. */
  private List<ChartView.Tick> months(int last) {
    var ticks = new ArrayList<ChartView.Tick>();
    int free = plot.right();
    for (int i = last; i >= 0; i--) {
      String label = formats.month(month(i));
      int width = ChartLabels.LETTER * label.length();
      int begins = plot.left() + i * (plot.right() - plot.left()) / days.size();
      int middle = Math.min(begins + width / 2, plot.right() - width / 2);
      boolean first = i == 0 || !month(i).equals(month(i - 1));
      if (first && middle + width / 2 <= free) {
        ticks.add(0, new ChartView.Tick(begins, middle, label));
        free = middle - width / 2 - ChartLabels.LETTER;
      }
    }
    return ticks;
  }
}
