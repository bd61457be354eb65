package gambrel.render;

import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * What almost all selectors look at in an element: its name and attributes, those of the element
 * before it, and whether it is the last of its parent's.
 *
 * @param before empty for the first element
 */
record Traits(String own, String before, boolean last) {

  static Traits of(Element element) {
    var before = element.getPreviousSibling();
    while (before != null && before.getNodeType() != Node.ELEMENT_NODE) {
      before = before.getPreviousSibling();
    }
    return new Traits(look(element), before == null ? "" : look(before), isLast(element));
  }

  private static String look(Node element) {
    var attributes = element.getAttributes();
    if (attributes.getLength() == 0) {
      return element.getNodeName();
    }
    var look = new StringBuilder(element.getNodeName());
    for (int i = 0; i < attributes.getLength(); i++) {
      var attribute = attributes.item(i);
      look.append('\0').append(attribute.getNodeName()).append('=').append(attribute.getNodeValue());
    }
    return look.toString();
  }

  private static boolean isLast(Element element) {
    var after = element.getNextSibling();
    while (after != null && after.getNodeType() != Node.ELEMENT_NODE) {
      after = after.getNextSibling();
    }
    return after == null;
  }
}
