package gambrel.render;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xhtmlrenderer.context.StyleReference;
import org.xhtmlrenderer.css.newmatch.CascadedStyle;
import org.xhtmlrenderer.css.newmatch.PageInfo;
import org.xhtmlrenderer.css.sheet.FontFaceRule;
import org.xhtmlrenderer.css.sheet.StylesheetInfo;
import org.xhtmlrenderer.extend.NamespaceHandler;
import org.xhtmlrenderer.extend.UserAgentCallback;
import org.xhtmlrenderer.extend.UserInterface;
import org.xhtmlrenderer.layout.SharedContext;

/**
 * Finds the style of each element of a page, as the layout engine's own class of this purpose does,
 * but remembers sheets and what they say across pages: parsing them and asking every selector about
 * every element was more than a quarter of the work of a page.
 */
final class PageStyles extends StyleReference {
  private final StyleSheets sheets;
  private final UserAgentCallback agent;
  private final Map<Node, MatchedRules> matched = new HashMap<>();
  private OwnStyles own;
  private Cascade cascade;

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
    matched.clear();
    own = new OwnStyles(names, agent);
    cascade = sheets.cascade(used, context.getMedia(), agent);
  }

  private MatchedRules rules(Element element) {
    var known = matched.get(element);
    if (known != null) {
      return known;
    }
    var above =
        element.getParentNode() instanceof Element parent ? rules(parent) : cascade.rules();
    var rules = above.of(element, own);
    matched.put(element, rules);
    return rules;
  }

  /** Nothing on paper changes, so nothing is matched again. */
  @Override
  public CascadedStyle getCascadedStyle(Element element, boolean again) {
    return element == null ? CascadedStyle.emptyCascadedStyle : rules(element).style();
  }

  @Override
  public CascadedStyle getPseudoElementStyle(Node node, String pseudoElement) {
    var element = node instanceof Element found ? found : (Element) node.getParentNode();
    return rules(element).style(pseudoElement);
  }

  @Override
  public PageInfo getPageStyle(String name, String pseudoPage) {
    return cascade.pages().getPageCascadedStyle(name, pseudoPage);
  }

  @Override
  public List<FontFaceRule> getFontFaceRules() {
    return cascade.pages().getFontFaceRules();
  }
}
