package gambrel.pages.render.svg;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

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
    SvgStyle style();
  }

  /** A shape with any outline. */
  public record Shape(Path2D outline, SvgStyle style) implements Mark {}

  /** A line of text; {@code x} and {@code y} are its anchor on the base line. */
  record Words(String text, double x, double y, SvgStyle style) implements Mark {}
}
