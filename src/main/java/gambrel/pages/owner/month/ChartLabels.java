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
  private final List<Dot> dots;
  private final List<Integer> levels;
  private final List<Label> placed = new ArrayList<>();

  ChartLabels(ChartView.Frame plot, List<Dot> dots, List<Integer> levels) {
    this.plot = plot;
    this.dots = dots;
    this.levels = levels;
  }

  /** The place of a point. */
  record Dot(int x, int y) {}

  /**
   * A name at its place.
   *
   * @param text empty if there is no place for it
   * @param x middle
   * @param y base line
   */
  record Label(String text, int x, int y) {
    private boolean covers(Label other) {
      return Math.abs(x - other.x) < halfWidth(text) + halfWidth(other.text) + LETTER
          && Math.abs(y - other.y) < LINE;
    }

    private boolean covers(Dot dot) {
      return Math.abs(x - dot.x) < halfWidth(text) + DOT
          && dot.y > y - LINE - DOT
          && dot.y < y + DOT;
    }
  }

  private static int halfWidth(String text) {
    return text.length() * LETTER / 2;
  }

  /** The middle nearest to {@code x} at which a text lies between the sides of the plot. */
  static int middle(String text, int x, ChartView.Frame plot) {
    int half = halfWidth(text);
    return Math.min(Math.max(x, plot.left() + half), plot.right() - half);
  }

  /** A place for {@code text} near a point. */
  Label place(String text, Dot dot) {
    if (!text.isEmpty() && 2 * halfWidth(text) < plot.right() - plot.left()) {
      for (int offset : OFFSETS) {
        var label = new Label(text, middle(text, dot.x, plot), dot.y + offset);
        if (isFree(label)) {
          placed.add(label);
          return label;
        }
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
