package gambrel.pages.views;

import java.util.List;

/**
 * An individuals chart: a value for each body in the order of kill, with centre and limits.
 *
 * <p>Places are measured in units of the drawing from its top left corner.
 *
 * @param heading what is charted
 * @param description the chart in words, for readers who cannot see it
 * @param width of the drawing
 * @param height of the drawing
 * @param plot the frame within which values lie
 * @param monthLeft where the month begins in the plot; what lies left of it is earlier
 * @param lines centre and limits
 * @param trace the values joined up: {@code x,y x,y ...}
 * @param points the values of the month; if they would touch, only the filled ones
 * @param xTicks dates along the bottom
 * @param yTicks values along the left
 * @param notes how to read it, and the bodies that break a rule; may be empty
 */
public record ChartView(
    String heading,
    String description,
    int width,
    int height,
    Frame plot,
    int monthLeft,
    List<Line> lines,
    String trace,
    List<Point> points,
    List<Tick> xTicks,
    List<Tick> yTicks,
    List<String> notes) {
  /**
   * The plot within the drawing.
   *
   * @param left of it
   * @param top of it
   * @param right of it
   * @param bottom of it
   * @param tickLeft where the words of {@code yTicks} end
   * @param lineRight where the words of {@code lines} begin
   * @param tickBelow base line of the words of {@code xTicks}
   */
  public record Frame(
      int left, int top, int right, int bottom, int tickLeft, int lineRight, int tickBelow) {}

  /**
   * A level across the plot.
   *
   * @param y its height
   * @param textY base line of its words, moved if two would overlap
   * @param label what it is, with its value
   * @param centre whether it is the centre; else a limit
   */
  public record Line(int y, int textY, String label, boolean centre) {}

  /**
   * A value.
   *
   * @param x place
   * @param y place
   * @param outline a closed line around it: {@code x,y x,y ...}; empty for a circle
   * @param filled whether it breaks a rule of the chart and has a name
   * @param label the name of a filled one, or empty
   * @param labelX middle of the label, which lies within the plot
   * @param labelY base line of the label
   */
  public record Point(
      int x, int y, String outline, boolean filled, String label, int labelX, int labelY) {}

  /**
   * A mark on an axis.
   *
   * @param at its place
   * @param textAt place of its words: base line on the left axis, middle on the lower one
   * @param label its words
   */
  public record Tick(int at, int textAt, String label) {}
}
