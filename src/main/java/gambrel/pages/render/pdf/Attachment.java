package gambrel.pages.render.pdf;

import com.lowagie.text.pdf.PRStream;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfNameTree;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfReader;
import java.io.IOException;
import java.util.Optional;

/**
 * A file inside a PDF.
 *
 * @param fileName the name in the list of attachments, by which {@link #read} finds it
 * @param mimeType such as {@code text/csv}
 * @param description one line for the reader's list of attachments
 * @param content the file's bytes; the caller must not change them
 */
public record Attachment(String fileName, String mimeType, String description, byte[] content) {
  @Override
  public String toString() {
    return fileName + " (" + mimeType + ", " + content.length + " bytes)";
  }

  /**
   * The content of the attachment of that name in a PDF.
   *
   * @param pdf any bytes
   * @return empty if {@code pdf} is not a readable PDF or has no such attachment
   */
  public static Optional<byte[]> read(byte[] pdf, String fileName) {
    try (var reader = new PdfReader(pdf)) {
      return find(reader, fileName);
    } catch (IOException | RuntimeException e) {
      // The parser can fail anywhere in a damaged file.
      return Optional.empty();
    }
  }

  private static Optional<byte[]> find(PdfReader reader, String fileName) throws IOException {
    var names = reader.getCatalog().getAsDict(PdfName.NAMES);
    var files = names == null ? null : names.getAsDict(PdfName.EMBEDDEDFILES);
    if (files == null) {
      return Optional.empty();
    }
    for (PdfObject entry : PdfNameTree.readTree(files).values()) {
      if (PdfReader.getPdfObject(entry) instanceof PdfDictionary file && isNamed(file, fileName)) {
        return contentOf(file);
      }
    }
    return Optional.empty();
  }

  private static boolean isNamed(PdfDictionary file, String fileName) {
    var unicode = file.getAsString(PdfName.UF);
    var name = unicode == null ? file.getAsString(PdfName.F) : unicode;
    return name != null && name.toUnicodeString().equals(fileName);
  }

  private static Optional<byte[]> contentOf(PdfDictionary file) throws IOException {
    var embedded = file.getAsDict(PdfName.EF);
    var stream = embedded == null ? null : PdfReader.getPdfObject(embedded.get(PdfName.F));
    return stream instanceof PRStream data
        ? Optional.of(PdfReader.getStreamBytes(data))
        : Optional.empty();
  }
}
