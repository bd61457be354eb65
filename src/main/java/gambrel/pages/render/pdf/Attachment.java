package gambrel.pages.render.pdf;

import java.util.Objects;

/**
 * A file carried inside a PDF.
 *
 * @param fileName the name that readers list and that {@link AttachmentReader} finds it by
 * @param mimeType such as {@code text/csv}
 * @param description one line for the reader's list of attachments
 * @param content the file's bytes, which the caller leaves as they are
 */
public record Attachment(String fileName, String mimeType, String description, byte[] content) {

  /** Refuses a blank file name. */
  public Attachment {
    if (fileName.isBlank()) {
      throw new IllegalArgumentException("an attachment needs a file name");
    }
    Objects.requireNonNull(mimeType, "mimeType");
    Objects.requireNonNull(description, "description");
  }

  @Override
  public String toString() {
    return fileName + " (" + mimeType + ", " + content.length + " bytes)";
  }
}
