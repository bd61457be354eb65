package gambrel.render;

import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.Map;
import java.util.Set;
import org.w3c.dom.Element;

/** Outlines of the basic shapes, in their element's own plane. */
final class SvgShapes {

  /** The elements that are shapes, with the attributes that give their geometry. */
  static final Map<String, Set<String>> ATTRIBUTES =
      Map.of(
          "rect", Set.of("x", "y", "width", "height", "rx"),
          "circle", Set.of("cx", "cy", "r"),
          "line", Set.of("x1", "y1", "x2", "y2"),
          "polyline", Set.of("points"),
          "polygon", Set.of("points"),
          "path", Set.of("d"));

  private final SvgValues values;

  SvgShapes(SvgValues values) {
    this.values = values;
  }

  /** The outline of an element that is a key of {@link #ATTRIBUTES}. */
  Path2D outline(Element e) {
    return switch (e.getNodeName()) {
      case "rect" -> rectangle(e);
      case "circle" -> circle(e);
      case "line" ->
          new Path2D.Double(new Line2D.Double(of(e, "x1"), of(e, "y1"), of(e, "x2"), of(e, "y2")));
      case "polyline" -> points(e);
      case "polygon" -> {
        var path = points(e);
        path.closePath();
        yield path;
      }
      default -> SvgPathData.parse(e.getAttribute("d")).orElseThrow(() -> values.unknown(e, "d"));
    };
  }

  private Path2D rectangle(Element e) {
    var x = of(e, "x");
    var y = of(e, "y");
    var width = of(e, "width");
    var height = of(e, "height");
    var diameter = 2 * of(e, "rx");
    return diameter > 0
        ? new Path2D.Double(new RoundRectangle2D.Double(x, y, width, height, diameter, diameter))
        : new Path2D.Double(new Rectangle2D.Double(x, y, width, height));
  }

  private Path2D circle(Element e) {
    var r = of(e, "r");
    return new Path2D.Double(new Ellipse2D.Double(of(e, "cx") - r, of(e, "cy") - r, 2 * r, 2 * r));
  }

  private Path2D points(Element e) {
    var numbers = values.numbers(e, "points");
    if (numbers.length < 2 || numbers.length % 2 != 0) {
      throw values.unknown(e, "points");
    }
    var path = new Path2D.Double();
    path.moveTo(numbers[0], numbers[1]);
    for (var i = 2; i < numbers.length; i += 2) {
      path.lineTo(numbers[i], numbers[i + 1]);
    }
    return path;
  }

  private double of(Element e, String name) {
    return values.number(e, name, 0);
  }
}
