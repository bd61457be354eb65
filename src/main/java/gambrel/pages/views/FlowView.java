package gambrel.pages.views;

import java.util.List;

/**
 * Where each kilo went, from the live animal to the box, drawn to scale.
 *
 * <p>The bar of the weight that is left after a step begins at 0. The bar of a part that is taken
 * off begins where the part was, so that the parts of a weight lie end to end below it.
 *
 * @param rows from alive to the last part
 * @param notes what became of what is not drawn
 */
public record FlowView(List<Row> rows, List<String> notes) {
  /** Length of the longest bar; every bar's place and length are in these units. */
  public static final int FULL = 1000;

  /** What a bar shows, which decides how it is drawn. */
  public enum Kind {
    /** The weight of the body at a step. */
    STAGE,
    /** What goes home. */
    HOME,
    /** What was weighed and does not go home: bone, fat, waste. */
    LEFT,
    /** What was not weighed: shrink, bench loss, or bins. */
    LOST
  }

  /**
   * A bar and its figures.
   *
   * @param kind what it shows
   * @param label in plain words
   * @param x where the bar begins, from 0 to {@link #FULL}
   * @param width its length, at least 1
   * @param weight with its unit
   * @param share of the first weight, so that the parts of a weight add up to its share
   */
  public record Row(Kind kind, String label, int x, int width, String weight, String share) {
    /** Keeps the bar within the drawing. */
    public Row {
      if (x < 0 || width < 1 || x + width > FULL) {
        throw new IllegalArgumentException("bar outside the drawing: " + x + " + " + width);
      }
    }

    /**
     * A bar from one place of the drawing to another. One that is negative or beyond the drawing is
     * a line at its place.
     */
    public static Row between(
        Kind kind, String label, int from, int to, String text, String share) {
      int left = Math.max(0, Math.min(from, FULL - 1));
      int right = Math.max(left + 1, Math.min(to, FULL));
      return new Row(kind, label, left, right - left, text, share);
    }
  }
}
