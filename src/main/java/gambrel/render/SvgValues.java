package gambrel.render;

import java.awt.geom.AffineTransform;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.w3c.dom.Element;

/** Reads attribute values of a drawing; what cannot be read is a problem of the template. */
final class SvgValues {

  private static final Pattern TRANSFORM =
      Pattern.compile("\\s*(translate|scale|rotate)\\s*\\(([^)]*)\\)\\s*,?");

  private final String template;

  SvgValues(String template) {
    this.template = template;
  }

  /** A number, with or without {@code px}; {@code otherwise} where it is not given. */
  double number(Element element, String name, double otherwise) {
    var given = element.getAttribute(name).strip();
    if (given.isEmpty()) {
      return otherwise;
    }
    return parse(
        element, name, given.endsWith("px") ? given.substring(0, given.length() - 2) : given);
  }

  /** Numbers separated by white space or commas. */
  double[] numbers(Element element, String name) {
    return split(element, name, element.getAttribute(name));
  }

  /**
   * The product of the transforms in the {@code transform} attribute; {@code translate}, {@code
   * scale}, {@code rotate}.
   */
  AffineTransform transform(Element element) {
    var result = new AffineTransform();
    var given = element.getAttribute("transform");
    var matcher = TRANSFORM.matcher(given);
    var end = 0;
    while (matcher.find() && matcher.start() == end) {
      apply(element, result, matcher.group(1), split(element, "transform", matcher.group(2)));
      end = matcher.end();
    }
    if (!given.substring(end).isBlank()) {
      throw unknown(element, "transform");
    }
    return result;
  }

  TemplateProblem unknown(Element element, String attribute) {
    var what = "in the drawing, <%s> has %s=\"%s\", which cannot be drawn";
    return TemplateProblem.of(
        template,
        what.formatted(element.getNodeName(), attribute, element.getAttribute(attribute)));
  }

  private void apply(Element element, AffineTransform result, String kind, double[] n) {
    switch (kind + n.length) {
      case "translate1" -> result.translate(n[0], 0);
      case "translate2" -> result.translate(n[0], n[1]);
      case "scale1" -> result.scale(n[0], n[0]);
      case "rotate1" -> result.rotate(StrictMath.toRadians(n[0]));
      case "rotate3" -> result.rotate(StrictMath.toRadians(n[0]), n[1], n[2]);
      default -> throw unknown(element, "transform");
    }
  }

  private double[] split(Element element, String name, String list) {
    return Stream.of(list.strip().split("[\\s,]+"))
        .filter(part -> !part.isEmpty())
        .mapToDouble(part -> parse(element, name, part))
        .toArray();
  }

  private double parse(Element element, String name, String text) {
    try {
      var value = Double.parseDouble(text.strip());
      if (Double.isFinite(value)) {
        return value;
      }
    } catch (NumberFormatException e) {
      // told below, together with the values that are no numbers to draw with
    }
    throw unknown(element, name);
  }
}
