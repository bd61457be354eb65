package gambrel.render;

import java.util.List;
import org.w3c.dom.Element;
import org.xhtmlrenderer.context.StylesheetFactoryImpl;
import org.xhtmlrenderer.css.extend.StylesheetFactory;
import org.xhtmlrenderer.css.sheet.PropertyDeclaration;
import org.xhtmlrenderer.css.sheet.StylesheetInfo.Origin;
import org.xhtmlrenderer.extend.NamespaceHandler;
import org.xhtmlrenderer.extend.UserAgentCallback;

/** The styles that elements of a page carry in their attributes. */
final class OwnStyles {
  private final NamespaceHandler names;
  private final UserAgentCallback agent;
  private StylesheetFactory parser;

  OwnStyles(NamespaceHandler names, UserAgentCallback agent) {
    this.names = names;
    this.agent = agent;
  }

  /** Somebody to ask about an element. */
  Witness witness(Element element) {
    return new Witness(names, element);
  }

  /** From attributes such as {@code width}, which give way to every style sheet. */
  List<PropertyDeclaration> presentational(Element element) {
    return parse(names.getNonCssStyling(element));
  }

  /** From {@code style}, which goes before every style sheet; and the cells that a cell spans. */
  List<PropertyDeclaration> inline(Element element) {
    return parse(names.getElementStyling(element));
  }

  private List<PropertyDeclaration> parse(String style) {
    if (style == null || style.isEmpty()) {
      return List.of();
    }
    if (parser == null) {
      parser = new StylesheetFactoryImpl(agent);
    }
    return parser.parseStyleDeclaration(Origin.AUTHOR, style).getPropertyDeclarations();
  }
}
