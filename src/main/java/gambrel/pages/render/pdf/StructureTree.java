package gambrel.pages.render.pdf;

import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfAnnotation;
import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfNumber;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfStructureElement;
import com.lowagie.text.pdf.PdfWriter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * The paragraphs, tables and figures of a document in reading order. An element is added when its
 * content is painted, so that none is empty. At the end all are sorted into the order of the
 * source, since drawings are painted after the text.
 */
final class StructureTree {
  private static final PdfName SCOPE = new PdfName("Scope");
  private static final PdfName OF_ROW = new PdfName("Row");
  private static final PdfName OF_COLUMN = new PdfName("Column");
  private static final Pattern SPAN = Pattern.compile("[1-9][0-9]{0,2}");

  private final PdfStructureElement document;
  private final Map<Node, Integer> order = new IdentityHashMap<>();
  private final Map<Node, PdfStructureElement> made = new IdentityHashMap<>();
  private final Map<Node, PdfStructureElement> bodies = new IdentityHashMap<>();
  private final Map<PdfObject, Integer> places = new IdentityHashMap<>();

  /** An empty tree for the page {@code source}. */
  StructureTree(PdfWriter writer, Node source) {
    document = new PdfStructureElement(writer.getStructureTreeRoot(), PdfName.DOCUMENT);
    number(source);
  }

  private void number(Node node) {
    order.put(node, order.size());
    for (var child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
      number(child);
    }
  }

  /** The structure element of a text node. */
  PdfStructureElement ofText(Node text) {
    var block = block(text);
    var element = element(block);
    var link = link(text);
    if (link.isPresent()) {
      return made(link.get(), element, PdfName.LINK);
    }
    var role = Roles.of(block);
    if (!Roles.isLeaf(block)) {
      return made(text, element, role.equals(PdfName.P) ? PdfName.SPAN : PdfName.P);
    }
    return role.equals(PdfName.LI) ? made(bodies, block, element, PdfName.LBODY) : element;
  }

  /** The link around a text node. */
  static Optional<Element> link(Node text) {
    var at = text.getParentNode();
    while (at instanceof Element element && Roles.isInline(element)) {
      if (Roles.isLink(element)) {
        return Optional.of(element);
      }
      at = at.getParentNode();
    }
    return Optional.empty();
  }

  /** Adds a link's area on the page to its structure element, after its text. */
  void addArea(PdfStructureElement link, PdfAnnotation area, PdfWriter writer) {
    area.put(
        PdfName.STRUCTPARENT,
        new PdfNumber(writer.getStructureTreeRoot().addExistingObject(link.getReference())));
    var reference = new PdfDictionary(PdfName.OBJR);
    reference.put(PdfName.OBJ, area.getIndirectReference());
    reference.put(PdfName.PG, writer.getCurrentPage());
    var kids =
        link.get(PdfName.K) instanceof PdfArray some ? some : new PdfArray(link.get(PdfName.K));
    kids.add(reference);
    link.put(PdfName.K, kids);
  }

  /**
   * The structure element of a drawing or picture; empty if it has no description.
   *
   * @param area its place on the page, in points
   */
  Optional<PdfStructureElement> ofFigure(Element figure, Rectangle area) {
    var words = description(figure);
    if (words.isEmpty()) {
      return Optional.empty();
    }
    var element = made(figure, element(block(figure)), PdfName.FIGURE);
    element.put(PdfName.ALT, new PdfString(words, PdfObject.TEXT_UNICODE));
    element.put(PdfName.A, box(area));
    return Optional.of(element);
  }

  /** A drawing's title or a picture's alternative text; empty for decoration. */
  private static String description(Element figure) {
    if (figure.getAttribute("aria-hidden").equals("true")) {
      return "";
    }
    if (Roles.name(figure).equals("img")) {
      return figure.getAttribute("alt").strip();
    }
    return Roles.children(figure)
        .filter(child -> Roles.name(child).equals("title"))
        .findFirst()
        .map(title -> title.getTextContent().strip())
        .orElse("");
  }

  /** The attributes of a figure: its place on the page, in points. */
  private static PdfDictionary box(Rectangle area) {
    var box = new PdfDictionary();
    box.put(PdfName.O, new PdfName("Layout"));
    box.put(
        PdfName.BBOX,
        new PdfArray(
            new float[] {area.getLeft(), area.getBottom(), area.getRight(), area.getTop()}));
    return box;
  }

  private static Element block(Node node) {
    var at = node.getParentNode();
    while (at instanceof Element element && Roles.isInline(element)) {
      at = at.getParentNode();
    }
    return (Element) at;
  }

  private PdfStructureElement element(Element block) {
    if (Roles.name(block).equals("body")) {
      return document;
    }
    if (!made.containsKey(block)) {
      var parent = element(block(block));
      var role = Roles.of(block);
      var element = made(block, parent, role);
      describe(element, role, block);
      // Without its empty cells a row's other cells would shift under wrong heads.
      if (role.equals(PdfName.TABLEROW)) {
        Roles.children(block).forEach(this::element);
      }
    }
    return made.get(block);
  }

  private PdfStructureElement made(Node node, PdfStructureElement parent, PdfName role) {
    return made(made, node, parent, role);
  }

  /** The element of a node among {@code known}; made if there is none. */
  private PdfStructureElement made(
      Map<Node, PdfStructureElement> known, Node node, PdfStructureElement parent, PdfName role) {
    return known.computeIfAbsent(
        node,
        n -> {
          var element = new PdfStructureElement(parent, role);
          places.put(element, order.get(n));
          return element;
        });
  }

  private static void describe(PdfStructureElement element, PdfName role, Element cell) {
    if (!role.equals(PdfName.TH) && !role.equals(PdfName.TD)) {
      return;
    }
    var attributes = new PdfDictionary();
    attributes.put(PdfName.O, PdfName.TABLE);
    if (role.equals(PdfName.TH)) {
      var ofRow = !Roles.name((Element) cell.getParentNode().getParentNode()).equals("thead");
      attributes.put(SCOPE, ofRow ? OF_ROW : OF_COLUMN);
    }
    String columns = cell.getAttribute("colspan");
    if (SPAN.matcher(columns).matches()) {
      attributes.put(new PdfName("ColSpan"), new PdfNumber(Integer.parseInt(columns)));
    }
    element.put(PdfName.A, attributes);
  }

  /** Sorts all elements into the order of the source. */
  void sort() {
    sort(document);
  }

  private void sort(PdfDictionary parent) {
    if (!(parent.get(PdfName.K) instanceof PdfArray kids)) {
      return;
    }
    var sorted = new ArrayList<PdfObject>(kids.getElements());
    if (!(sorted.get(0) instanceof PdfStructureElement)) {
      return;
    }
    sorted.sort(Comparator.comparing(places::get));
    parent.put(PdfName.K, new PdfArray(sorted));
    sorted.forEach(kid -> sort((PdfDictionary) kid));
  }
}
