package gambrel.pages.render;

import java.util.ArrayList;
import java.util.List;
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
 * Finds the style of each element of a page as the layout engine's own class of this purpose does,
 * with style sheets that are parsed once for all pages.
 */
final class PageStyles extends StyleReference {
  private final StyleSheets sheets;
  private final UserAgentCallback agent;
  private Matcher matcher;

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
    matcher =
        new Matcher(
            new DOMTreeResolver(),
            new StandardAttributeResolver(names, agent, screen),
            new StylesheetFactoryImpl(agent),
            sheets.parsed(used, context.getMedia(), agent),
            context.getMedia());
  }

  @Override
  public CascadedStyle getCascadedStyle(Element element, boolean again) {
    return element == null
        ? CascadedStyle.emptyCascadedStyle
        : matcher.getCascadedStyle(element, again);
  }

  @Override
  public CascadedStyle getPseudoElementStyle(Node node, String pseudoElement) {
    var element = node instanceof Element found ? found : (Element) node.getParentNode();
    return matcher.getPECascadedStyle(element, pseudoElement);
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
