package gambrel.laws;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * A page of {@link XhtmlDocuments} as a reader finds it: its tables by class, its sentences, and
 * what is attached to it.
 */
final class PrintedPage {
  /**
   * A row of a table.
   *
   * @param style its class; empty without one
   * @param cells the text of each cell, from left to right
   */
  record Row(String style, List<String> cells) {
    /** A cell; empty beyond the last one. */
    String cell(int index) {
      return index < cells.size() ? cells.get(index) : "";
    }
  }

  private static final DocumentBuilderFactory FACTORY = DocumentBuilderFactory.newInstance();

  private final Element root;
  private final String attached;

  private PrintedPage(Element root, String attached) {
    this.root = root;
    this.attached = attached;
  }

  static PrintedPage read(Path file) {
    try {
      var parts = Files.readString(file).split(String.valueOf(XhtmlDocuments.ATTACHED), 2);
      var builder = FACTORY.newDocumentBuilder();
      var page = builder.parse(new InputSource(new StringReader(parts[0])));
      return new PrintedPage(page.getDocumentElement(), parts.length > 1 ? parts[1] : "");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (ParserConfigurationException | SAXException e) {
      throw new AssertionError(file.toString(), e);
    }
  }

  /** The figures attached to a statement, by name. */
  Map<String, String> figures() {
    var figures = new TreeMap<String, String>();
    attached
        .lines()
        .skip(1)
        .forEach(
            line -> {
              int comma = line.lastIndexOf(',');
              figures.put(line.substring(0, comma).replace("\"", ""), line.substring(comma + 1));
            });
    return figures;
  }

  /** The rows in the bodies of all tables with a class; a remark among them is none. */
  List<Row> rows(String table) {
    var rows = new ArrayList<Row>();
    for (var of : elements("table", e -> has(e, table))) {
      for (var row : elements(of, "tr", e -> !has(e, "said") && !inHead(e))) {
        rows.add(row(row));
      }
    }
    return rows;
  }

  /** The heads of the first table with a class, from left to right. */
  List<String> heads(String table) {
    return elements("table", e -> has(e, table)).stream()
        .limit(1)
        .flatMap(of -> elements(of, "tr", PrintedPage::inHead).stream())
        .flatMap(row -> row(row).cells().stream())
        .toList();
  }

  private static Row row(Element row) {
    return new Row(
        row.getAttribute("class"),
        elements(row, "*", e -> e.getTagName().equals("td") || e.getTagName().equals("th")).stream()
            .map(PrintedPage::text)
            .toList());
  }

  private static boolean inHead(Element row) {
    return ((Element) row.getParentNode()).getTagName().equals("thead");
  }

  /** Every paragraph, list item and cell. */
  List<String> sentences() {
    return elements("*", e -> List.of("p", "li", "td").contains(e.getTagName())).stream()
        .map(PrintedPage::text)
        .toList();
  }

  private static boolean has(Element element, String style) {
    return (" " + element.getAttribute("class") + " ").contains(" " + style + " ");
  }

  private List<Element> elements(String tag, Predicate<Element> which) {
    return elements(root, tag, which);
  }

  private static List<Element> elements(Element in, String tag, Predicate<Element> which) {
    var found = new ArrayList<Element>();
    collect(in, tag, which, found);
    return found;
  }

  private static void collect(
      Element in, String tag, Predicate<Element> which, List<Element> found) {
    for (var node = in.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element element) {
        if ((tag.equals("*") || element.getTagName().equals(tag)) && which.test(element)) {
          found.add(element);
        }
        collect(element, tag, which, found);
      }
    }
  }

  private static String text(Node node) {
    return node.getTextContent().replaceAll("[ \\n\\t]+", " ").strip();
  }
}
