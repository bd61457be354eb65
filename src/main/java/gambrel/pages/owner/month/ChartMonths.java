package gambrel.pages.owner.month;

import gambrel.insight.month.loss.LossChart;
import gambrel.pages.views.ChartView;
import gambrel.pages.words.Wording;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;

/** Marks along the bottom of a chart: where each month begins, or first and last day of one. */
final class ChartMonths {
  private static final int LETTER = 6;

  private final ChartView.Frame plot;
  private final List<LossChart.Point> points;
  private final Wording wording;

  ChartMonths(ChartView.Frame plot, List<LossChart.Point> points, Wording wording) {
    this.plot = plot;
    this.points = points;
    this.wording = wording;
  }

  List<ChartView.Tick> ticks() {
    int last = points.size() - 1;
    boolean one = monthOf(points.get(0)).equals(monthOf(points.get(last)));
    return one ? days(last) : months(last);
  }

  private List<ChartView.Tick> days(int last) {
    var ticks = new ArrayList<ChartView.Tick>();
    ticks.add(under(middle(0), day(0)));
    if (middle(last) - middle(0) > LETTER * (day(0).length() + day(last).length())) {
      ticks.add(under(middle(last), day(last)));
    }
    return ticks;
  }

  /** From the last month back, as many as there is room for. */
  private List<ChartView.Tick> months(int last) {
    var ticks = new ArrayList<ChartView.Tick>();
    int free = plot.right();
    for (int i = last; i >= 0; i--) {
      if (i > 0 && monthOf(points.get(i)).equals(monthOf(points.get(i - 1)))) {
        continue;
      }
      String label = wording.formats().month(monthOf(points.get(i)));
      int begins = plot.left() + i * (plot.right() - plot.left()) / points.size();
      int width = LETTER * label.length();
      int text = Math.min(begins + width / 2, plot.right() - width / 2);
      if (text + width / 2 <= free) {
        ticks.add(0, new ChartView.Tick(begins, text, label));
        free = text - width / 2 - LETTER;
      }
    }
    return ticks;
  }

  private ChartView.Tick under(int at, String label) {
    int half = LETTER * label.length() / 2;
    int text = Math.min(Math.max(at, plot.left() + half), plot.right() - half);
    return new ChartView.Tick(at, text, label);
  }

  private int middle(int index) {
    return plot.left() + (2 * index + 1) * (plot.right() - plot.left()) / (2 * points.size());
  }

  private String day(int index) {
    return wording.formats().brief(points.get(index).day());
  }

  private static YearMonth monthOf(LossChart.Point point) {
    return YearMonth.from(point.day());
  }
}
