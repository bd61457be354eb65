package gambrel.pages.render;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xhtmlrenderer.context.StandardAttributeResolver;
import org.xhtmlrenderer.context.StyleReference;
import org.xhtmlrenderer.context.StylesheetFactoryImpl;
import org.xhtmlrenderer.css.extend.lib.DOMTreeResolver;
import org.xhtmlrenderer.css.newmatch.CascadedStyle;
import org.xhtmlrenderer.css.newmatch.Matcher;
import org.xhtmlrenderer.css.newmatch.PageInfo;
import org.xhtmlrenderer.css.sheet.FontFaceRule;
import org.xhtmlrenderer.css.sheet.StylesheetInfo;
import org.xhtmlrenderer.extend.NamespaceHandler;
import org.xhtmlrenderer.extend.UserAgentCallback;
import org.xhtmlrenderer.extend.UserInterface;
import org.xhtmlrenderer.layout.SharedContext;

/**
 * Finds the style of each element of a page, as the layout engine's own class of this purpose does.
 * Style sheets are parsed once for all pages, and of elements that look alike, on one page or on
 * several, only the first is matched with them.
 */
final class PageStyles extends StyleReference {
  private final StyleSheets sheets;
  private final UserAgentCallback agent;
  private final Siblings siblings = new Siblings();
  private final Map<Element, StyleSheets.Match> found = new IdentityHashMap<>();
  private StyleSheets.Parsed parsed;
  private Matcher matcher;
  private String language;

  /**
   * The tree of the page; notes whether a rule asks for more than a {@link StyleSheets.Likeness}
   * says.
   */
  private static final class Siblings extends DOMTreeResolver {
    private Node matched;
    private boolean askedFurther;

    @Override
    public Node getPreviousSiblingElement(Node node) {
      askedFurther |= node != matched;
      return super.getPreviousSiblingElement(node);
    }

    @Override
    public boolean isFirstChildElement(Node node) {
      askedFurther |= node != matched;
      return super.isFirstChildElement(node);
    }

    @Override
    public boolean isLastChildElement(Node node) {
      askedFurther |= node != matched;
      return super.isLastChildElement(node);
    }

    @Override
    public int getPositionOfElement(Node node) {
      askedFurther = true;
      return super.getPositionOfElement(node);
    }
  }

  PageStyles(StyleSheets sheets, UserAgentCallback agent) {
    super(agent);
    this.sheets = sheets;
    this.agent = agent;
  }

  @Override
  public void setDocumentContext(
      SharedContext context, NamespaceHandler names, Document page, UserInterface screen) {
    var used = new ArrayList<StylesheetInfo>();
    names.getDefaultStylesheet().ifPresent(used::add);
    used.addAll(names.getStylesheets(page));
    language = String.valueOf(names.getLang(page.getDocumentElement()));
    parsed = sheets.parsed(used, context.getMedia(), agent);
    matcher =
        new Matcher(
            siblings,
            new StandardAttributeResolver(names, agent, screen),
            new StylesheetFactoryImpl(agent),
            parsed.sheets(),
            context.getMedia());
  }

  @Override
  public CascadedStyle getCascadedStyle(Element element, boolean again) {
    return element == null ? CascadedStyle.emptyCascadedStyle : find(element).style;
  }

  @Override
  public CascadedStyle getPseudoElementStyle(Node node, String pseudoElement) {
    var element = node instanceof Element found ? found : (Element) node.getParentNode();
    return find(element)
        .pseudoElements
        .computeIfAbsent(
            pseudoElement, name -> Optional.ofNullable(matcher.getPECascadedStyle(element, name)))
        .orElse(null);
  }

  private StyleSheets.Match find(Element element) {
    var known = found.get(element);
    if (known == null) {
      var parent = element.getParentNode() instanceof Element above ? find(above) : null;
      known =
          parent != null && parent.single
              ? match(element)
              : parsed.match(likeness(element, parent), () -> match(element));
      found.put(element, known);
    }
    return known;
  }

  private StyleSheets.Match match(Element element) {
    if (element.getParentNode() instanceof Element parent) {
      matcher.getCascadedStyle(parent, false);
    }
    siblings.matched = element;
    siblings.askedFurther = false;
    var style = matcher.getCascadedStyle(element, false);
    return new StyleSheets.Match(style, siblings.askedFurther);
  }

  private StyleSheets.Likeness likeness(Element element, StyleSheets.Match parent) {
    var before = siblings.getPreviousSiblingElement(element);
    return new StyleSheets.Likeness(
        parent,
        parent == null ? look(element) + language : look(element),
        before == null ? "" : look(before),
        siblings.isLastChildElement(element));
  }

  /** The name and the attributes of an element. */
  private static String look(Node element) {
    var attributes = element.getAttributes();
    var look = new StringBuilder(element.getNodeName());
    for (int i = 0; i < attributes.getLength(); i++) {
      look.append('\0').append(attributes.item(i).getNodeName());
      look.append('\0').append(attributes.item(i).getNodeValue());
    }
    return look.toString();
  }

  @Override
  public PageInfo getPageStyle(String name, String pseudoPage) {
    return matcher.getPageCascadedStyle(name, pseudoPage);
  }

  @Override
  public List<FontFaceRule> getFontFaceRules() {
    return matcher.getFontFaceRules();
  }
}
