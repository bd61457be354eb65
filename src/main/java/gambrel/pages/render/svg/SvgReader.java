package gambrel.pages.render.svg;

import gambrel.pages.render.template.TemplateProblem;
import gambrel.pages.render.template.TemplateProblem.Fault;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Reads the part of SVG that the charts use: groups, rectangles, circles, lines, polylines and
 * text, styled by attributes.
 *
 * <p>Any other element or attribute is a problem of the template, so that no chart has gaps.
 */
public final class SvgReader {

  private static final Set<String> ANYWHERE =
      Set.of(
          ("id class role lang xml:lang xmlns version fill stroke stroke-width stroke-dasharray"
                  + " font-size font-weight font-family text-anchor")
              .split(" "));

  /** The supported elements, each with its attributes of geometry. */
  private static final Map<String, Set<String>> GEOMETRY =
      Map.of(
          "g", Set.of(),
          "text", Set.of("x", "y"),
          "rect", Set.of("x", "y", "width", "height"),
          "circle", Set.of("cx", "cy", "r"),
          "line", Set.of("x1", "y1", "x2", "y2"),
          "polyline", Set.of("points"));

  private final SvgValues values;
  private final List<SvgDrawing.Mark> marks = new ArrayList<>();

  private SvgReader(SvgValues values) {
    this.values = values;
  }

  /**
   * Reads a drawing.
   *
   * @param svg the {@code svg} element
   * @throws TemplateProblem naming the element or attribute that cannot be drawn
   */
  public static SvgDrawing read(String template, Element svg) {
    return new SvgReader(new SvgValues(template)).drawing(svg);
  }

  private SvgDrawing drawing(Element svg) {
    checkAttributes(svg, Set.of("width", "height", "viewBox", "style"));
    children(svg, SvgStyle.INITIAL.with(svg, values));
    var box = values.numbers(svg, "viewBox");
    if (box.length != 4) {
      box =
          new double[] {0, 0, values.number(svg, "width", 300), values.number(svg, "height", 150)};
    }
    var view = new Rectangle2D.Double(box[0], box[1], box[2], box[3]);
    if (view.isEmpty()) {
      throw values.unknown(svg, "viewBox");
    }
    return new SvgDrawing(
        view, side(svg, "width", view.width), side(svg, "height", view.height), marks);
  }

  /** A side in pixels; {@code otherwise} if it is missing or a percentage. */
  private double side(Element svg, String name, double otherwise) {
    return svg.getAttribute(name).endsWith("%") ? otherwise : values.number(svg, name, otherwise);
  }

  private void children(Element parent, SvgStyle style) {
    for (var node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element child) {
        read(child, style);
      } else if (node.getNodeType() == Node.TEXT_NODE && !node.getTextContent().isBlank()) {
        throw problem(Fault.LOOSE_TEXT, "text", node.getTextContent().strip());
      }
    }
  }

  private void read(Element element, SvgStyle inherited) {
    var name = element.getNodeName();
    if (name.equals("title") || name.equals("desc")) {
      return;
    }
    if (!GEOMETRY.containsKey(name)) {
      throw problem(Fault.ELEMENT, "element", name);
    }
    checkAttributes(element, GEOMETRY.get(name));
    var style = inherited.with(element, values);
    switch (name) {
      case "g" -> children(element, style);
      case "text" -> marks.add(words(element, style));
      default -> marks.add(new SvgDrawing.Shape(outline(element), style));
    }
  }

  private SvgDrawing.Words words(Element element, SvgStyle style) {
    for (var node = element.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element child) {
        throw problem(Fault.INSIDE_TEXT, "element", child.getNodeName());
      }
    }
    var text = element.getTextContent().replaceAll("\\s+", " ").strip();
    return new SvgDrawing.Words(text, of(element, "x"), of(element, "y"), style);
  }

  private Path2D outline(Element e) {
    return switch (e.getNodeName()) {
      case "rect" ->
          new Path2D.Double(
              new Rectangle2D.Double(of(e, "x"), of(e, "y"), of(e, "width"), of(e, "height")));
      case "circle" -> circle(of(e, "cx"), of(e, "cy"), of(e, "r"));
      case "line" ->
          new Path2D.Double(new Line2D.Double(of(e, "x1"), of(e, "y1"), of(e, "x2"), of(e, "y2")));
      default -> polyline(e);
    };
  }

  private static Path2D circle(double x, double y, double r) {
    return new Path2D.Double(new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r));
  }

  private Path2D polyline(Element e) {
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

  private void checkAttributes(Element element, Set<String> own) {
    var attributes = element.getAttributes();
    for (var i = 0; i < attributes.getLength(); i++) {
      var name = attributes.item(i).getNodeName();
      if (!ANYWHERE.contains(name) && !own.contains(name) && !name.startsWith("aria-")) {
        throw values.unknown(element, name);
      }
    }
  }

  private TemplateProblem problem(Fault fault, String name, String value) {
    return TemplateProblem.of(values.template(), fault, Map.of(name, value));
  }
}
