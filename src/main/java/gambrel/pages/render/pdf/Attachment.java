package gambrel.pages.render.pdf;

import java.util.Objects;

/**
 * A file inside a PDF.
 *
 * @param fileName the name in the list of attachments, by which {@link AttachmentReader} finds it
 * @param mimeType such as {@code text/csv}
 * @param description one line for the reader's list of attachments
 * @param content the file's bytes; the caller must not change them
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
