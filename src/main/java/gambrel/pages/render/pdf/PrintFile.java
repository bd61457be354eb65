package gambrel.pages.render.pdf;

import com.lowagie.text.Document;
import com.lowagie.text.pdf.PdfCopy;
import com.lowagie.text.pdf.PdfDate;
import com.lowagie.text.pdf.PdfLiteral;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfReader;
import com.lowagie.text.pdf.PdfString;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import java.util.HexFormat;
import java.util.List;
import org.apache.commons.codec.digest.DigestUtils;

/**
 * Several documents in one file to print. It has their pages as they are, without attachments and
 * structure. The same documents give the same bytes.
 */
public final class PrintFile {
  private PrintFile() {}

  /**
   * One file of some documents, at least one.
   *
   * @param bothSides whether each document begins on an odd page, after a blank one if need be
   * @param created the date of the file
   */
  public static byte[] of(
      List<byte[]> documents, boolean bothSides, String title, Instant created) {
    var bytes = new ByteArrayOutputStream(1 << 16);
    var file = new Document();
    try {
      var digest = DigestUtils.getSha256Digest();
      var copy = new PdfCopy(file, bytes);
      copy.setPdfVersion('7');
      file.open();
      for (var document : documents) {
        digest.update(document);
        var reader = new PdfReader(document);
        if (bothSides && copy.getCurrentPageNumber() % 2 == 0) {
          copy.addPage(reader.getPageSize(1), 0);
        }
        for (int page = 1; page <= reader.getNumberOfPages(); page++) {
          copy.addPage(copy.getImportedPage(reader, page));
        }
        copy.freeReader(reader);
      }
      var date = new PdfDate(GregorianCalendar.from(created.atZone(ZoneOffset.UTC)));
      copy.getInfo().put(PdfName.TITLE, new PdfString(title, PdfObject.TEXT_UNICODE));
      copy.getInfo().put(PdfName.CREATIONDATE, date);
      copy.getInfo().put(PdfName.MODDATE, date);
      String id = HexFormat.of().formatHex(digest.digest(), 0, 16);
      copy.getInfo().put(PdfName.FILEID, new PdfLiteral("[<" + id + "><" + id + ">]"));
      file.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }
}
