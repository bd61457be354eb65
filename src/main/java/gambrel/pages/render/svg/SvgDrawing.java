package gambrel.pages.render.svg;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * A drawing, read and found drawable.
 *
 * @param view the part of the drawing's plane that is shown
 * @param width natural width in CSS pixels
 * @param height natural height in CSS pixels
 * @param marks in painting order, placed in the plane of {@code view}
 */
public record SvgDrawing(
    Rectangle2D view, double width, double height, List<SvgDrawing.Mark> marks) {

  public SvgDrawing {
    marks = List.copyOf(marks);
  }

  /** One thing to paint. */
  sealed interface Mark permits Shape, Words {
    /** Colours and line of the mark. */
    SvgStyle style();
  }

  /** Any outline. */
  public record Shape(Path2D outline, SvgStyle style) implements Mark {}

  /** A line of text whose anchor is at the point {@code x}, {@code y} of its base line. */
  record Words(String text, double x, double y, SvgStyle style) implements Mark {}
}
