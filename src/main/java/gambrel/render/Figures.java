package gambrel.render;

import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import org.w3c.dom.Element;

/** What drawings and pictures are to somebody who cannot see them. */
final class Figures {
  private Figures() {}

  /** A drawing's title or a picture's alternative text; empty for mere decoration. */
  static String description(Element figure) {
    if (figure.getAttribute("aria-hidden").equals("true")) {
      return "";
    }
    if (Roles.name(figure).equals("img")) {
      return figure.getAttribute("alt").strip();
    }
    for (var child = figure.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child instanceof Element element && Roles.name(element).equals("title")) {
        return element.getTextContent().strip();
      }
    }
    return "";
  }

  /** Where a figure lies on its page, in points. */
  static PdfDictionary box(Rectangle area) {
    var box = new PdfDictionary();
    box.put(new PdfName("O"), new PdfName("Layout"));
    box.put(
        new PdfName("BBox"),
        new PdfArray(
            new float[] {area.getLeft(), area.getBottom(), area.getRight(), area.getTop()}));
    return box;
  }
}
