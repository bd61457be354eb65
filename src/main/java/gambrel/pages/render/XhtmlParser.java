package gambrel.pages.render;

import gambrel.pages.render.pdf.Fonts;
import gambrel.pages.render.pdf.PrintableText;
import gambrel.pages.render.template.TemplateProblem;
import gambrel.pages.render.template.TemplateProblem.Fault;
import java.io.IOException;
import java.io.StringReader;
import java.util.Map;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Node;
import org.w3c.dom.Text;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.helpers.DefaultHandler;

/** Parses a filled page without external entities, and makes its text printable. */
final class XhtmlParser {

  private static final PrintableText TEXT = new PrintableText(Fonts::hasGlyph);

  /** A parser for each thread: to make one takes a quarter of the time of parsing a page. */
  private static final ThreadLocal<DocumentBuilder> BUILDER =
      ThreadLocal.withInitial(XhtmlParser::builder);

  private XhtmlParser() {}

  /**
   * Parses a page.
   *
   * @param template the template's name, for a problem
   * @throws TemplateProblem if the page is not well-formed XML
   */
  static Document parse(String template, String xhtml) {
    var document = check(template, xhtml);
    makePrintable(document.getDocumentElement());
    return document;
  }

  /** As {@link #parse}, but leaves the text as it is. */
  static Document check(String template, String xhtml) {
    var page = PrintableText.forXml(xhtml);
    try {
      return BUILDER.get().parse(new InputSource(new StringReader(page)));
    } catch (SAXParseException e) {
      throw problem(template, page, e);
    } catch (SAXException | IOException e) {
      throw new IllegalStateException("the XML parser failed", e);
    }
  }

  private static DocumentBuilder builder() {
    var factory = DocumentBuilderFactory.newDefaultInstance();
    try {
      factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      factory.setXIncludeAware(false);
      factory.setExpandEntityReferences(false);
      // Every node is read, so deferred nodes would only cost time.
      factory.setFeature("http://apache.org/xml/features/dom/defer-node-expansion", false);
      var builder = factory.newDocumentBuilder();
      builder.setErrorHandler(new DefaultHandler());
      return builder;
    } catch (ParserConfigurationException e) {
      throw new IllegalStateException("there is no XML parser", e);
    }
  }

  /** Without the parser's own message, which follows the machine's language. */
  private static TemplateProblem problem(String template, String page, SAXParseException e) {
    var lines = page.split("\n", -1);
    var line = lines[Math.min(Math.max(e.getLineNumber(), 1), lines.length) - 1].strip();
    return TemplateProblem.of(
        template,
        page.contains("<!DOCTYPE") ? Fault.DOCTYPE : Fault.NOT_XHTML,
        Map.of(
            "line", String.valueOf(e.getLineNumber()),
            "column", String.valueOf(e.getColumnNumber()),
            "text", line.length() > 120 ? line.substring(0, 120) + "…" : line),
        e);
  }

  private static void makePrintable(Node parent) {
    for (var node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Text text) {
        text.setData(TEXT.print(text.getData()));
      } else if (!node.getNodeName().equals("style")) {
        makePrintable(node);
      }
    }
  }
}
