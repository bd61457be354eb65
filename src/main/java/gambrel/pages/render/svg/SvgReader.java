package gambrel.pages.render.svg;

import gambrel.pages.render.template.TemplateProblem;
import gambrel.pages.render.template.TemplateProblem.Fault;
import java.awt.Color;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xhtmlrenderer.css.parser.FSRGBColor;
import org.xhtmlrenderer.css.parser.property.Conversions;

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

  private final String template;
  private final List<SvgDrawing.Mark> marks = new ArrayList<>();

  private SvgReader(String template) {
    this.template = template;
  }

  /**
   * Reads a drawing.
   *
   * @param svg the {@code svg} element
   * @throws TemplateProblem naming the element or attribute that cannot be drawn
   */
  public static SvgDrawing read(String template, Element svg) {
    return new SvgReader(template).drawing(svg);
  }

  private SvgDrawing drawing(Element svg) {
    checkAttributes(svg, Set.of("width", "height", "viewBox", "style"));
    children(svg, style(SvgDrawing.Style.INITIAL, svg));
    var box = numbers(svg, "viewBox");
    if (box.length != 4) {
      box = new double[] {0, 0, number(svg, "width", 300), number(svg, "height", 150)};
    }
    var view = new Rectangle2D.Double(box[0], box[1], box[2], box[3]);
    if (view.isEmpty()) {
      throw unknown(svg, "viewBox");
    }
    return new SvgDrawing(
        view, side(svg, "width", view.width), side(svg, "height", view.height), marks);
  }

  /** A side in pixels; {@code otherwise} if it is missing or a percentage. */
  private double side(Element svg, String name, double otherwise) {
    return svg.getAttribute(name).endsWith("%") ? otherwise : number(svg, name, otherwise);
  }

  private void children(Element parent, SvgDrawing.Style style) {
    for (var node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element child) {
        read(child, style);
      } else if (node.getNodeType() == Node.TEXT_NODE && !node.getTextContent().isBlank()) {
        throw problem(Fault.LOOSE_TEXT, "text", node.getTextContent().strip());
      }
    }
  }

  private void read(Element element, SvgDrawing.Style inherited) {
    var name = element.getNodeName();
    if (name.equals("title") || name.equals("desc")) {
      return;
    }
    if (!GEOMETRY.containsKey(name)) {
      throw problem(Fault.ELEMENT, "element", name);
    }
    checkAttributes(element, GEOMETRY.get(name));
    var style = style(inherited, element);
    switch (name) {
      case "g" -> children(element, style);
      case "text" -> marks.add(words(element, style));
      default -> marks.add(new SvgDrawing.Shape(outline(element), style));
    }
  }

  private SvgDrawing.Words words(Element element, SvgDrawing.Style style) {
    var inside = element.getElementsByTagName("*").item(0);
    if (inside != null) {
      throw problem(Fault.INSIDE_TEXT, "element", inside.getNodeName());
    }
    var text = element.getTextContent().replaceAll("\\s+", " ").strip();
    return new SvgDrawing.Words(text, of(element, "x"), of(element, "y"), style);
  }

  private java.awt.Shape outline(Element e) {
    return switch (e.getNodeName()) {
      case "rect" ->
          new Rectangle2D.Double(of(e, "x"), of(e, "y"), of(e, "width"), of(e, "height"));
      case "circle" -> circle(of(e, "cx"), of(e, "cy"), of(e, "r"));
      case "line" -> new Line2D.Double(of(e, "x1"), of(e, "y1"), of(e, "x2"), of(e, "y2"));
      default -> polyline(e);
    };
  }

  private static Ellipse2D circle(double x, double y, double r) {
    return new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r);
  }

  private Path2D polyline(Element e) {
    var numbers = numbers(e, "points");
    if (numbers.length < 2 || numbers.length % 2 != 0) {
      throw unknown(e, "points");
    }
    var path = new Path2D.Double();
    path.moveTo(numbers[0], numbers[1]);
    for (var i = 2; i < numbers.length; i += 2) {
      path.lineTo(numbers[i], numbers[i + 1]);
    }
    return path;
  }

  private double of(Element e, String name) {
    return number(e, name, 0);
  }

  private void checkAttributes(Element element, Set<String> own) {
    var attributes = element.getAttributes();
    for (var i = 0; i < attributes.getLength(); i++) {
      var name = attributes.item(i).getNodeName();
      if (!ANYWHERE.contains(name) && !own.contains(name) && !name.startsWith("aria-")) {
        throw unknown(element, name);
      }
    }
  }

  private TemplateProblem problem(Fault fault, String name, String value) {
    return TemplateProblem.of(template, fault, Map.of(name, value));
  }

  /** The style around an element with the values that the element sets. */
  private SvgDrawing.Style style(SvgDrawing.Style around, Element element) {
    return new SvgDrawing.Style(
        colour(element, "fill", around.fill()),
        colour(element, "stroke", around.stroke()),
        number(element, "stroke-width", around.strokeWidth()),
        dashes(element, around.dashes()),
        number(element, "font-size", around.fontSize()),
        isBold(element, around.bold()),
        text(element, "text-anchor", around.anchor()));
  }

  private double[] dashes(Element element, double[] inherited) {
    return switch (element.getAttribute("stroke-dasharray")) {
      case "" -> inherited;
      case "none" -> new double[0];
      default -> numbers(element, "stroke-dasharray");
    };
  }

  private boolean isBold(Element element, boolean inherited) {
    return switch (text(element, "font-weight", inherited ? "bold" : "normal")) {
      case "normal" -> false;
      case "bold" -> true;
      default -> number(element, "font-weight", 400) >= 600;
    };
  }

  private static String text(Element element, String name, String inherited) {
    return element.hasAttribute(name) ? element.getAttribute(name).strip() : inherited;
  }

  private Optional<Color> colour(Element element, String name, Optional<Color> inherited) {
    var given = element.getAttribute(name).strip();
    if (given.isEmpty()) {
      return inherited;
    }
    if (given.equals("none")) {
      return Optional.empty();
    }
    if (given.matches("#[0-9a-fA-F]{3}")) {
      given = given.replaceAll("[0-9a-fA-F]", "$0$0");
    }
    if (given.matches("#[0-9a-fA-F]{6}")) {
      return Optional.of(new Color(Integer.parseInt(given.substring(1), 16)));
    }
    FSRGBColor named = Conversions.getColor(given);
    if (named == null) {
      throw unknown(element, name);
    }
    return Optional.of(new Color(named.getRed(), named.getGreen(), named.getBlue()));
  }

  /** A number, with or without {@code px}; {@code otherwise} if the attribute is missing. */
  private double number(Element element, String name, double otherwise) {
    var given = element.getAttribute(name).strip();
    if (given.isEmpty()) {
      return otherwise;
    }
    return parse(
        element, name, given.endsWith("px") ? given.substring(0, given.length() - 2) : given);
  }

  /** Numbers with white space or commas between them. */
  private double[] numbers(Element element, String name) {
    return Stream.of(element.getAttribute(name).strip().split("[\\s,]+"))
        .filter(part -> !part.isEmpty())
        .mapToDouble(part -> parse(element, name, part))
        .toArray();
  }

  private TemplateProblem unknown(Element element, String attribute) {
    return TemplateProblem.of(
        template,
        Fault.ATTRIBUTE,
        Map.of(
            "element", element.getNodeName(),
            "attribute", attribute,
            "value", element.getAttribute(attribute)));
  }

  private double parse(Element element, String name, String text) {
    try {
      var value = Double.parseDouble(text.strip());
      if (Double.isFinite(value)) {
        return value;
      }
    } catch (NumberFormatException e) {
      // reported below, as an infinite number is
    }
    throw unknown(element, name);
  }
}
