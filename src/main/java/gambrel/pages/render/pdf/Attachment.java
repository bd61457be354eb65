package gambrel.pages.render.pdf;

/**
 * A file inside a PDF.
 *
 * @param fileName the name in the list of attachments, by which {@link AttachmentReader} finds it
 * @param mimeType such as {@code text/csv}
 * @param description one line for the reader's list of attachments
 * @param content the file's bytes; the caller must not change them
 */
public record Attachment(String fileName, String mimeType, String description, byte[] content) {
  @Override
  public String toString() {
    return fileName + " (" + mimeType + ", " + content.length + " bytes)";
  }
}
