package gambrel.pages.views;

import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfReader;
import gambrel.pages.render.PrintedPages;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;

/**
 * What a reader finds in a PDF.
 *
 * @param pages the text of each page, without any white space: where lines break is no matter here
 * @param size of the first page, in points
 */
record PageReader(List<String> pages, Rectangle size) {

  static PageReader of(byte[] pdf) {
    try (var reader = new PdfReader(pdf)) {
      var pages = PrintedPages.of(pdf).stream().map(PageReader::squeeze).toList();
      return new PageReader(pages, reader.getPageSize(1));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  String all() {
    return String.join("", pages);
  }

  /** Where {@code words} are first printed; -1 if nowhere. */
  int find(String words) {
    return all().indexOf(squeeze(words));
  }

  boolean prints(String words) {
    return find(words) >= 0;
  }

  static String squeeze(String text) {
    return text.replaceAll("[\\s\\u00a0]+", "");
  }
}
