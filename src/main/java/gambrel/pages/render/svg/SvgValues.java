package gambrel.pages.render.svg;

import gambrel.pages.render.template.TemplateProblem;
import java.util.stream.Stream;
import org.w3c.dom.Element;

/** Reads attribute values of a drawing; what cannot be read is a problem of the template. */
record SvgValues(String template) {

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
    return Stream.of(element.getAttribute(name).strip().split("[\\s,]+"))
        .filter(part -> !part.isEmpty())
        .mapToDouble(part -> parse(element, name, part))
        .toArray();
  }

  TemplateProblem unknown(Element element, String attribute) {
    var what = "in the drawing, <%s> has %s=\"%s\", which cannot be drawn";
    return TemplateProblem.of(
        template,
        what.formatted(element.getNodeName(), attribute, element.getAttribute(attribute)));
  }

  private double parse(Element element, String name, String text) {
    try {
      var value = Double.parseDouble(text.strip());
      if (Double.isFinite(value)) {
        return value;
      }
    } catch (NumberFormatException e) {
      // the same problem as a number without end
    }
    throw unknown(element, name);
  }
}
