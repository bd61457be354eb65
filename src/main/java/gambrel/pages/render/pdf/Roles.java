package gambrel.pages.render.pdf;

import com.lowagie.text.pdf.PdfName;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * The standard structure types of PDF (ISO 32000-1, 14.8.4) for elements of a page. Screen readers
 * use them.
 */
final class Roles {
  private static final Set<String> INLINE =
      Set.of("a", "abbr", "b", "br", "code", "em", "i", "small", "span", "strong", "sub", "sup");
  private static final Set<String> TABLE_PARTS =
      Set.of("thead", "tbody", "tfoot", "tr", "th", "td", "caption");

  private Roles() {}

  /** The structure type of a block. */
  static PdfName of(Element block) {
    String name = name(block);
    if (TABLE_PARTS.contains(name) && isForLayout(block)) {
      return plain(block);
    }
    return switch (name) {
      case "table" -> isForLayout(block) ? PdfName.DIV : PdfName.TABLE;
      case "thead" -> PdfName.THEAD;
      case "tbody" -> PdfName.TBODY;
      case "tfoot" -> PdfName.TFOOT;
      case "tr" -> PdfName.TABLEROW;
      case "th" -> PdfName.TH;
      case "td" -> PdfName.TD;
      case "caption" -> PdfName.CAPTION;
      case "ul", "ol" -> PdfName.L;
      case "li" -> PdfName.LI;
      case "p" -> PdfName.P;
      case "h1", "h2", "h3", "h4", "h5", "h6" -> new PdfName(name.toUpperCase(Locale.ROOT));
      default -> plain(block);
    };
  }

  private static PdfName plain(Element block) {
    return isLeaf(block) ? PdfName.P : PdfName.DIV;
  }

  /** The name of an element in lower case. */
  static String name(Element element) {
    return element.getNodeName().toLowerCase(Locale.ROOT);
  }

  /** Whether an element is part of a line of text. */
  static boolean isInline(Element element) {
    return INLINE.contains(name(element));
  }

  /** Whether an element is a link. */
  static boolean isLink(Element element) {
    return name(element).equals("a") && !element.getAttribute("href").isEmpty();
  }

  /** Whether a block contains only text and inline elements other than links. */
  static boolean isLeaf(Element block) {
    return children(block).allMatch(child -> isInline(child) && !isLink(child) && isLeaf(child));
  }

  /** The elements in an element, in their order. */
  static Stream<Element> children(Element parent) {
    return Stream.iterate(parent.getFirstChild(), Objects::nonNull, Node::getNextSibling)
        .filter(Element.class::isInstance)
        .map(Element.class::cast);
  }

  /** Whether the table around an element has no data, only layout; true outside a table. */
  private static boolean isForLayout(Element part) {
    for (Node at = part; at instanceof Element element; at = at.getParentNode()) {
      if (name(element).equals("table")) {
        String role = element.getAttribute("role");
        return role.equals("presentation") || role.equals("none");
      }
    }
    return true;
  }
}
