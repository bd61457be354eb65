package gambrel.render;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Reads the part of SVG that charts need: groups, rectangles, circles, lines, polygons, paths and
 * text, styled by attributes.
 *
 * <p>What it cannot draw is a problem of the template rather than a gap in a chart.
 */
final class SvgReader {

  private static final Set<String> ANYWHERE =
      Set.of(
          "id",
          "class",
          "role",
          "lang",
          "xml:lang",
          "xmlns",
          "version",
          "fill",
          "stroke",
          "stroke-width",
          "stroke-dasharray",
          "stroke-linecap",
          "stroke-opacity",
          "fill-opacity",
          "font-size",
          "font-weight",
          "font-style",
          "font-family",
          "text-anchor",
          "transform");

  private final String template;
  private final SvgValues values;
  private final SvgShapes shapes;
  private final List<SvgDrawing.Mark> marks = new ArrayList<>();

  private SvgReader(String template) {
    this.template = template;
    this.values = new SvgValues(template);
    this.shapes = new SvgShapes(values);
  }

  /**
   * Reads a drawing.
   *
   * @param svg the {@code svg} element
   * @throws TemplateProblem naming the element or attribute that cannot be drawn
   */
  static SvgDrawing read(String template, Element svg) {
    return new SvgReader(template).drawing(svg);
  }

  private SvgDrawing drawing(Element svg) {
    checkAttributes(svg, Set.of("width", "height", "viewBox", "style"));
    children(svg, SvgStyle.INITIAL.with(svg, values), values.transform(svg));
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

  /** A share of the page is left to the style sheet. */
  private double side(Element svg, String name, double otherwise) {
    return svg.getAttribute(name).endsWith("%") ? otherwise : values.number(svg, name, otherwise);
  }

  private void children(Element parent, SvgStyle style, AffineTransform plane) {
    for (var node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element child) {
        read(child, style, plane);
      } else if (node.getNodeType() == Node.TEXT_NODE && !node.getTextContent().isBlank()) {
        throw problem("text outside a <text> element: " + node.getTextContent().strip());
      }
    }
  }

  private void read(Element element, SvgStyle inherited, AffineTransform outer) {
    var name = element.getNodeName();
    if (name.equals("title") || name.equals("desc")) {
      return;
    }
    if (!name.equals("g") && !name.equals("text") && !SvgShapes.ATTRIBUTES.containsKey(name)) {
      throw problem("<" + name + "> cannot be drawn");
    }
    checkAttributes(element, SvgShapes.ATTRIBUTES.getOrDefault(name, Set.of("x", "y")));
    var style = inherited.with(element, values);
    var plane = new AffineTransform(outer);
    plane.concatenate(values.transform(element));
    switch (name) {
      case "g" -> children(element, style, plane);
      case "text" -> marks.add(words(element, style, plane));
      default -> {
        var outline = shapes.outline(element);
        outline.transform(plane);
        marks.add(new SvgDrawing.Shape(outline, style, scale(plane)));
      }
    }
  }

  private SvgDrawing.Words words(Element element, SvgStyle style, AffineTransform plane) {
    for (var node = element.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element child) {
        throw problem("<" + child.getNodeName() + "> inside <text> cannot be drawn");
      }
    }
    var at = new AffineTransform(plane);
    at.translate(values.number(element, "x", 0), values.number(element, "y", 0));
    var text = element.getTextContent().replaceAll("\\s+", " ").strip();
    return new SvgDrawing.Words(text, at, style, scale(plane));
  }

  private static double scale(AffineTransform plane) {
    return StrictMath.sqrt(Math.abs(plane.getDeterminant()));
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

  private TemplateProblem problem(String what) {
    return TemplateProblem.of(template, "in the drawing, " + what);
  }
}
