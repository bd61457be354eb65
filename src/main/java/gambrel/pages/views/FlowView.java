package gambrel.pages.views;

import java.util.List;

/**
 * Where each kilo went, from the live animal to the box, drawn to scale.
 *
 * <p>The rows are a staircase: what is left after a step begins at 0; what goes off at it stands
 * where it was cut from, so that the parts of a weight lie end to end under it.
 *
 * @param rows from alive to the last part
 * @param notes what the percentages are of, and what is only estimated
 */
public record FlowView(List<Row> rows, List<String> notes) {

  /** Length of the longest bar; every bar's place and length are in these units. */
  public static final int FULL = 1000;

  /** Copies the lists. */
  public FlowView {
    rows = List.copyOf(rows);
    notes = List.copyOf(notes);
  }

  /** What a bar stands for, which decides how it is drawn. */
  public enum Kind {
    /** The weight of the body at a step. */
    STAGE,
    /** What goes home. */
    HOME,
    /** What was weighed and does not go home: bone, fat, waste. */
    LEFT,
    /** What no scale has seen: shrink, bench loss, or bins that were not weighed. */
    LOST
  }

  /**
   * A bar and its figures.
   *
   * @param kind what it stands for
   * @param label in plain words
   * @param x where the bar begins, from 0 to {@link #FULL}
   * @param width its length, at least 1
   * @param weight with its unit
   * @param share with what it is a share of; may be empty
   */
  public record Row(Kind kind, String label, int x, int width, String weight, String share) {
    /** Keeps the bar within the drawing. */
    public Row {
      if (x < 0 || width < 1 || x + width > FULL) {
        throw new IllegalArgumentException("bar outside the drawing: " + x + " + " + width);
      }
    }
  }
}
