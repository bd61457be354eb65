package gambrel.render;

import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xhtmlrenderer.css.extend.AttributeResolver;
import org.xhtmlrenderer.css.extend.lib.DOMTreeResolver;
import org.xhtmlrenderer.extend.NamespaceHandler;

/**
 * Answers what selectors ask about an element, and takes note when they ask for more than its {@link
 * Traits} tell: only as long as they do not, elements of equal traits match alike. On paper nothing
 * is hovered over, visited or in focus.
 */
final class Witness extends DOMTreeResolver implements AttributeResolver {
  private final NamespaceHandler names;
  private final Node subject;
  private final Node previous;
  private boolean askedForMore;

  Witness(NamespaceHandler names, Element subject) {
    this.names = names;
    this.subject = subject;
    this.previous = super.getPreviousSiblingElement(subject);
  }

  /** Whether an answer depended on more than the element's traits. */
  boolean wasAskedForMore() {
    return askedForMore;
  }

  private Element seen(Node node) {
    return (Element) note(node, node == subject || node == previous);
  }

  private Node note(Node node, boolean told) {
    askedForMore |= !told;
    return node;
  }

  @Override
  public Node getParentElement(Node node) {
    return super.getParentElement(note(node, false));
  }

  @Override
  public String getElementName(Node node) {
    return super.getElementName(seen(node));
  }

  @Override
  public boolean matchesElement(Node node, String namespace, String name) {
    return super.matchesElement(seen(node), namespace, name);
  }

  @Override
  public Node getPreviousSiblingElement(Node node) {
    return super.getPreviousSiblingElement(note(node, node == subject));
  }

  @Override
  public boolean isFirstChildElement(Node node) {
    return super.isFirstChildElement(note(node, node == subject));
  }

  @Override
  public boolean isLastChildElement(Node node) {
    return super.isLastChildElement(note(node, node == subject));
  }

  @Override
  public int getPositionOfElement(Node node) {
    return super.getPositionOfElement(note(node, false));
  }

  @Override
  public String getAttributeValue(Node node, String name) {
    return names.getAttributeValue(seen(node), name);
  }

  @Override
  public String getAttributeValue(Node node, String namespace, String name) {
    return names.getAttributeValue(seen(node), namespace, name);
  }

  @Override
  public String getClass(Node node) {
    return names.getClass(seen(node));
  }

  @Override
  public String getID(Node node) {
    return names.getID(seen(node));
  }

  @Override
  public String getNonCssStyling(Node node) {
    return names.getNonCssStyling(seen(node));
  }

  @Override
  public String getElementStyling(Node node) {
    return names.getElementStyling(seen(node));
  }

  /** Without a language of its own an element has that of the page's head. */
  @Override
  public String getLang(Node node) {
    return names.getLang((Element) note(node, seen(node).hasAttribute("lang")));
  }

  @Override
  public boolean isLink(Node node) {
    return names.getLinkUri(seen(node)) != null;
  }

  @Override
  public boolean isVisited(Node node) {
    return false;
  }

  @Override
  public boolean isHover(Node node) {
    return false;
  }

  @Override
  public boolean isActive(Node node) {
    return false;
  }

  @Override
  public boolean isFocus(Node node) {
    return false;
  }
}
