package gambrel.pages.render.svg;

import java.awt.Color;
import java.util.Optional;
import org.w3c.dom.Element;
import org.xhtmlrenderer.css.parser.FSRGBColor;
import org.xhtmlrenderer.css.parser.property.Conversions;

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
public record SvgStyle(
    Optional<Color> fill,
    Optional<Color> stroke,
    double strokeWidth,
    double[] dashes,
    double fontSize,
    boolean bold,
    String anchor) {

  static final SvgStyle INITIAL =
      new SvgStyle(
          Optional.of(Color.BLACK), Optional.empty(), 1, new double[0], 12, false, "start");

  /** This style with the values that {@code element} sets. */
  SvgStyle with(Element element, SvgValues values) {
    return new SvgStyle(
        colour(element, "fill", fill, values),
        colour(element, "stroke", stroke, values),
        values.number(element, "stroke-width", strokeWidth),
        dashes(element, values),
        values.number(element, "font-size", fontSize),
        heavy(element, values),
        text(element, "text-anchor", anchor));
  }

  private double[] dashes(Element element, SvgValues values) {
    return switch (element.getAttribute("stroke-dasharray")) {
      case "" -> dashes;
      case "none" -> new double[0];
      default -> values.numbers(element, "stroke-dasharray");
    };
  }

  private boolean heavy(Element element, SvgValues values) {
    return switch (text(element, "font-weight", bold ? "bold" : "normal")) {
      case "normal" -> false;
      case "bold" -> true;
      default -> values.number(element, "font-weight", 400) >= 600;
    };
  }

  private static String text(Element element, String name, String inherited) {
    return element.hasAttribute(name) ? element.getAttribute(name).strip() : inherited;
  }

  private static Optional<Color> colour(
      Element element, String name, Optional<Color> inherited, SvgValues values) {
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
      throw values.unknown(element, name);
    }
    return Optional.of(new Color(named.getRed(), named.getGreen(), named.getBlue()));
  }
}
