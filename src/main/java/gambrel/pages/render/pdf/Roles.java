package gambrel.pages.render.pdf;

import com.lowagie.text.pdf.PdfName;
import java.util.Locale;
import java.util.Set;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * The standard structure types of PDF (ISO 32000-1, 14.8.4) for elements of a page. Screen readers
 * use them.
 */
final class Roles {
  static final PdfName DOCUMENT = new PdfName("Document");
  static final PdfName FIGURE = new PdfName("Figure");
  static final PdfName LIST_BODY = new PdfName("LBody");
  static final PdfName LIST_ITEM = new PdfName("LI");
  static final PdfName PARAGRAPH = new PdfName("P");
  static final PdfName ROW = new PdfName("TR");
  static final PdfName SPAN = new PdfName("Span");
  static final PdfName HEADER_CELL = new PdfName("TH");
  static final PdfName CELL = new PdfName("TD");
  private static final PdfName GROUP = new PdfName("Div");

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
      case "table" -> isForLayout(block) ? GROUP : new PdfName("Table");
      case "thead" -> new PdfName("THead");
      case "tbody" -> new PdfName("TBody");
      case "tfoot" -> new PdfName("TFoot");
      case "tr" -> ROW;
      case "th" -> HEADER_CELL;
      case "td" -> CELL;
      case "caption" -> new PdfName("Caption");
      case "ul", "ol" -> new PdfName("L");
      case "li" -> LIST_ITEM;
      case "p" -> PARAGRAPH;
      case "h1", "h2", "h3", "h4", "h5", "h6" -> new PdfName(name.toUpperCase(Locale.ROOT));
      default -> plain(block);
    };
  }

  private static PdfName plain(Element block) {
    return isLeaf(block) ? PARAGRAPH : GROUP;
  }

  /** The name of an element in lower case. */
  static String name(Element element) {
    return element.getNodeName().toLowerCase(Locale.ROOT);
  }

  /** Whether an element is part of a line of text. */
  static boolean isInline(Element element) {
    return INLINE.contains(name(element));
  }

  /** Whether a block contains only text and inline elements. */
  static boolean isLeaf(Element block) {
    for (var child = block.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child instanceof Element element && !(isInline(element) && isLeaf(element))) {
        return false;
      }
    }
    return true;
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
