package gambrel.pages.owner.month;

import gambrel.pages.views.ChartView;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds places for the names of points, so that none covers another name, a point or a level, or
 * leaves the plot.
 */
final class ChartLabels {
  /** The width of a letter. */
  static final int LETTER = 6;

  private static final int LINE = 10;
  private static final int DOT = 4;
  private static final int[] OFFSETS = {-7, 15, -17, 25, -27, 35, -37, 45};

  private final ChartView.Frame plot;
  private final List<ChartView.Point> dots;
  private final List<Integer> levels;
  private final List<ChartView.Point> placed = new ArrayList<>();

  /**
   * Places for the names of some points.
   *
   * @param dots the points without names
   * @param levels the heights of lines across the plot
   */
  ChartLabels(ChartView.Frame plot, List<ChartView.Point> dots, List<Integer> levels) {
    this.plot = plot;
    this.dots = dots;
    this.levels = levels;
  }

  private static int halfWidth(String text) {
    return text.length() * LETTER / 2;
  }

  /** The middle nearest to {@code x} at which a text lies between the sides of the plot. */
  static int middle(String text, int x, ChartView.Frame plot) {
    int half = halfWidth(text);
    return Math.min(Math.max(x, plot.left() + half), plot.right() - half);
  }

  /** A point with a name near it; without the name if there is no place for it. */
  ChartView.Point named(String name, ChartView.Point dot) {
    if (2 * halfWidth(name) < plot.right() - plot.left()) {
      int middle = middle(name, dot.x(), plot);
      for (int offset : OFFSETS) {
        var named =
            new ChartView.Point(dot.x(), dot.y(), dot.signal(), name, middle, dot.y() + offset);
        if (isFree(named)) {
          placed.add(named);
          return named;
        }
      }
    }
    return dot;
  }

  private boolean isFree(ChartView.Point label) {
    int y = label.labelY();
    return y - LINE >= 0
        && y < plot.bottom()
        && placed.stream().noneMatch(other -> covers(label, other))
        && dots.stream().noneMatch(dot -> coversDot(label, dot))
        && levels.stream().noneMatch(level -> level > y - LINE && level < y + 2);
  }

  private static boolean covers(ChartView.Point label, ChartView.Point other) {
    int apart = halfWidth(label.label()) + halfWidth(other.label()) + LETTER;
    return Math.abs(label.labelX() - other.labelX()) < apart
        && Math.abs(label.labelY() - other.labelY()) < LINE;
  }

  private static boolean coversDot(ChartView.Point label, ChartView.Point dot) {
    return Math.abs(label.labelX() - dot.x()) < halfWidth(label.label()) + DOT
        && dot.y() > label.labelY() - LINE - DOT
        && dot.y() < label.labelY() + DOT;
  }
}
