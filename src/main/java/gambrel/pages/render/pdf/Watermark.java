package gambrel.pages.render.pdf;

import com.lowagie.text.Document;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfGState;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfPageEventHelper;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfWriter;
import java.awt.Color;

/**
 * Paints large, light words diagonally across every page, above its content. They are tagged as an
 * artifact, which screen readers skip.
 */
public final class Watermark extends PdfPageEventHelper {

  private static final float OPACITY = 0.13f;
  private static final float LONGEST_OF_DIAGONAL = 0.72f;
  private static final float TALLEST_OF_WIDTH = 0.3f;
  private static final float CAP_HEIGHT = 0.698f;

  private final String words;

  /** A watermark with the given words. */
  public Watermark(String words) {
    this.words = new PrintableText(Fonts::hasGlyph).print(words);
  }

  @Override
  public void onEndPage(PdfWriter writer, Document document) {
    var size = document.getPageSize();
    var width = size.getWidth();
    var height = size.getHeight();
    var diagonal = (float) StrictMath.hypot(width, height);
    var cos = width / diagonal;
    var sin = height / diagonal;
    var wide = Fonts.SEMI_BOLD.getWidthPoint(words, 1);
    var letters = Math.min(LONGEST_OF_DIAGONAL * diagonal / wide, TALLEST_OF_WIDTH * width);
    var length = letters * wide;
    var down = CAP_HEIGHT * letters / 2;
    var page = writer.getDirectContent();
    page.beginMarkedContentSequence(new PdfName("Artifact"), kind(), true);
    page.beginMarkedContentSequence(new PdfName("Span"), reading(), true);
    page.saveState();
    page.setGState(light());
    page.setColorFill(Color.DARK_GRAY);
    page.beginText();
    page.setFontAndSize(Fonts.SEMI_BOLD, letters);
    page.setTextMatrix(
        cos,
        sin,
        -sin,
        cos,
        width / 2 - cos * length / 2 + sin * down,
        height / 2 - sin * length / 2 - cos * down);
    page.showText(words);
    page.endText();
    page.restoreState();
    page.endMarkedContentSequence();
    page.endMarkedContentSequence();
  }

  private static PdfDictionary kind() {
    var kind = new PdfDictionary(new PdfName("Pagination"));
    kind.put(PdfName.SUBTYPE, new PdfName("Watermark"));
    return kind;
  }

  /** The words as one text, for programs that would extract slanted letters one by one. */
  private PdfDictionary reading() {
    var reading = new PdfDictionary();
    reading.put(PdfName.ACTUALTEXT, new PdfString(words, PdfObject.TEXT_UNICODE));
    return reading;
  }

  private static PdfGState light() {
    var state = new PdfGState();
    state.setFillOpacity(OPACITY);
    return state;
  }
}
