package gambrel.pages.render.svg;

import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;

/**
 * A drawing that can be painted.
 *
 * @param view the part of the drawing's plane that is shown
 * @param width natural width in CSS pixels
 * @param height natural height in CSS pixels
 * @param marks in painting order, with coordinates in the plane of {@code view}
 */
public record SvgDrawing(
    Rectangle2D view, double width, double height, List<SvgDrawing.Mark> marks) {

  /** Copies the marks. */
  public SvgDrawing {
    marks = List.copyOf(marks);
  }

  /** A shape or a text. */
  sealed interface Mark permits Shape, Words {
    /** Its colours, line and font. */
    Style style();
  }

  /** A shape with any outline. */
  public record Shape(java.awt.Shape outline, Style style) implements Mark {}

  /** A line of text; {@code x} and {@code y} are its anchor on the base line. */
  record Words(String text, double x, double y, Style style) implements Mark {}

  /**
   * How a mark is painted. Lengths are in units of the drawing. A mark inherits each value that it
   * does not set.
   *
   * @param fill colour of the inside; empty if it is not filled
   * @param stroke colour of the outline; empty if it has none
   * @param strokeWidth width of the outline
   * @param dashes lengths of strokes and gaps; empty for a solid line
   * @param fontSize size of a text
   * @param bold whether a text is bold
   * @param anchor the point of a text at its coordinates: start, middle or end
   */
  public record Style(
      Optional<Color> fill,
      Optional<Color> stroke,
      double strokeWidth,
      double[] dashes,
      double fontSize,
      boolean bold,
      String anchor) {

    static final Style INITIAL =
        new Style(Optional.of(Color.BLACK), Optional.empty(), 1, new double[0], 12, false, "start");
  }
}
