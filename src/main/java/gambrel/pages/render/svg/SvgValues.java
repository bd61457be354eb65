package gambrel.pages.render.svg;

import gambrel.pages.render.template.TemplateProblem;
import gambrel.pages.render.template.TemplateProblem.Fault;
import java.util.Map;
import java.util.stream.Stream;
import org.w3c.dom.Element;

/** Reads attribute values of a drawing. An unreadable value is a problem of the template. */
record SvgValues(String template) {

  /** A number, with or without {@code px}; {@code otherwise} if the attribute is missing. */
  double number(Element element, String name, double otherwise) {
    var given = element.getAttribute(name).strip();
    if (given.isEmpty()) {
      return otherwise;
    }
    return parse(
        element, name, given.endsWith("px") ? given.substring(0, given.length() - 2) : given);
  }

  /** Numbers with white space or commas between them. */
  double[] numbers(Element element, String name) {
    return Stream.of(element.getAttribute(name).strip().split("[\\s,]+"))
        .filter(part -> !part.isEmpty())
        .mapToDouble(part -> parse(element, name, part))
        .toArray();
  }

  TemplateProblem unknown(Element element, String attribute) {
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
