package gambrel.pages.owner.month;

import gambrel.pages.views.ChartView;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds places for the names of points, so that none covers another name, a point or a level, or
 * leaves the plot.
 */
final class ChartLabels {
  private static final int LETTER = 6;
  private static final int LINE = 10;
  private static final int DOT = 4;
  private static final int[] OFFSETS = {-7, 15, -17, 25, -27, 35, -37, 45};

  private final ChartView.Frame plot;
  private final List<Dot> dots;
  private final List<Integer> levels;
  private final List<Label> placed = new ArrayList<>();

  ChartLabels(ChartView.Frame plot, List<Dot> dots, List<Integer> levels) {
    this.plot = plot;
    this.dots = dots;
    this.levels = levels;
  }

  /** Where a point stands. */
  record Dot(int x, int y) {}

  /**
   * A name at its place.
   *
   * @param text empty where there is no place for it
   * @param x middle
   * @param y base line
   */
  record Label(String text, int x, int y) {
    private int halfWidth() {
      return text.length() * LETTER / 2;
    }

    private boolean covers(Label other) {
      return Math.abs(x - other.x) < halfWidth() + other.halfWidth() + LETTER
          && Math.abs(y - other.y) < LINE;
    }

    private boolean covers(Dot dot) {
      return Math.abs(x - dot.x) < halfWidth() + DOT && dot.y > y - LINE - DOT && dot.y < y + DOT;
    }
  }

  /** A place near a point. */
  Label place(String text, Dot dot) {
    int half = text.length() * LETTER / 2;
    boolean fits = !text.isEmpty() && 2 * half < plot.right() - plot.left();
    int x = fits ? Math.min(Math.max(dot.x, plot.left() + half), plot.right() - half) : dot.x;
    for (int offset : OFFSETS) {
      var label = new Label(text, x, dot.y + offset);
      if (fits && isFree(label)) {
        placed.add(label);
        return label;
      }
    }
    return new Label("", dot.x, dot.y);
  }

  private boolean isFree(Label label) {
    return label.y - LINE >= 0
        && label.y < plot.bottom()
        && placed.stream().noneMatch(label::covers)
        && dots.stream().noneMatch(label::covers)
        && levels.stream().noneMatch(level -> level > label.y - LINE && level < label.y + 2);
  }
}
