package gambrel.pages.render;

import com.lowagie.text.pdf.PdfReader;
import com.lowagie.text.pdf.parser.PdfTextExtractor;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** The words that stand on the pages of a PDF, running heads and page numbers too. */
public final class PrintedPages {
  private PrintedPages() {}

  /** The text of each page. */
  public static List<String> of(byte[] pdf) {
    try (var reader = new PdfReader(pdf)) {
      return of(reader);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<String> of(PdfReader reader) throws IOException {
    var pages = new ArrayList<String>();
    for (var page = 1; page <= reader.getNumberOfPages(); page++) {
      // The extractor leaves artifacts out as a reader aloud does; a person sees them.
      var content = new String(reader.getPageContent(page), StandardCharsets.ISO_8859_1);
      reader.setPageContent(
          page, content.replace("/Artifact ", "/Span ").getBytes(StandardCharsets.ISO_8859_1));
      pages.add(new PdfTextExtractor(reader).getTextFromPage(page).replaceAll(" +", " "));
    }
    return pages;
  }
}
