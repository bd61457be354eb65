package gambrel.pages.views;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;

/**
 * What a person sees of a PDF: its lines of text, and small grey pictures. Read by another library
 * than the one that writes it.
 */
final class PagePictures {
  /** Dots an inch: enough to see a column move, and small. */
  private static final int DPI = 45;

  /** Side of the squares that are compared; single dots differ from one Java to the next. */
  private static final int SQUARE = 4;

  /** Levels of grey, of 255, by which the mean of a square may differ. */
  private static final int TOLERANCE = 32;

  private PagePictures() {}

  static String text(byte[] pdf) throws IOException {
    try (var document = Loader.loadPDF(pdf)) {
      var reader = new PDFTextStripper();
      reader.setSortByPosition(true);
      reader.setLineSeparator("\n");
      reader.setPageEnd("\n-----\n");
      return reader.getText(document);
    }
  }

  /** The first two sheets and the last, by number. */
  static Map<Integer, BufferedImage> pictures(byte[] pdf) throws IOException {
    try (var document = Loader.loadPDF(pdf)) {
      var sheets = new TreeSet<Integer>();
      for (var sheet : new int[] {1, 2, document.getNumberOfPages()}) {
        sheets.add(Math.min(sheet, document.getNumberOfPages()));
      }
      var pictures = new LinkedHashMap<Integer, BufferedImage>();
      var renderer = new PDFRenderer(document);
      for (var sheet : sheets) {
        pictures.put(sheet, renderer.renderImageWithDPI(sheet - 1, DPI, ImageType.GRAY));
      }
      return pictures;
    }
  }

  /** How many squares differ by more than is allowed; all where the sizes differ. */
  static int differences(BufferedImage expected, BufferedImage actual) {
    if (expected.getWidth() != actual.getWidth() || expected.getHeight() != actual.getHeight()) {
      return Integer.MAX_VALUE;
    }
    var count = 0;
    for (var y = 0; y + SQUARE <= expected.getHeight(); y += SQUARE) {
      for (var x = 0; x + SQUARE <= expected.getWidth(); x += SQUARE) {
        if (Math.abs(mean(expected, x, y) - mean(actual, x, y)) > TOLERANCE) {
          count++;
        }
      }
    }
    return count;
  }

  /** White where the pictures agree, the darker the more they differ. */
  static BufferedImage difference(BufferedImage expected, BufferedImage actual) {
    var width = Math.min(expected.getWidth(), actual.getWidth());
    var height = Math.min(expected.getHeight(), actual.getHeight());
    var difference = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
    for (var y = 0; y < height; y++) {
      for (var x = 0; x < width; x++) {
        var off = Math.abs(grey(expected, x, y) - grey(actual, x, y));
        difference.getRaster().setSample(x, y, 0, 255 - off);
      }
    }
    return difference;
  }

  private static int mean(BufferedImage image, int left, int top) {
    var sum = 0;
    for (var y = top; y < top + SQUARE; y++) {
      for (var x = left; x < left + SQUARE; x++) {
        sum += grey(image, x, y);
      }
    }
    return sum / (SQUARE * SQUARE);
  }

  private static int grey(BufferedImage image, int x, int y) {
    return image.getRaster().getSample(x, y, 0);
  }
}
