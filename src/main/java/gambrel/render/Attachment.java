package gambrel.render;

import java.util.Arrays;
import java.util.Objects;

/**
 * A file carried inside a PDF.
 *
 * @param fileName the name that readers list and that {@link AttachmentReader} finds it by
 * @param mimeType such as {@code text/csv}
 * @param description one line for the reader's list of attachments
 * @param content the file's bytes
 */
public record Attachment(String fileName, String mimeType, String description, byte[] content) {

  /** Copies the content, so that later changes by the caller do not reach the page. */
  public Attachment {
    if (fileName.isBlank()) {
      throw new IllegalArgumentException("an attachment needs a file name");
    }
    Objects.requireNonNull(mimeType, "mimeType");
    Objects.requireNonNull(description, "description");
    content = content.clone();
  }

  /** Returns a copy of the file's bytes. */
  @Override
  public byte[] content() {
    return content.clone();
  }

  /** Two attachments are equal when names, type, description and bytes are. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Attachment that
        && fileName.equals(that.fileName)
        && mimeType.equals(that.mimeType)
        && description.equals(that.description)
        && Arrays.equals(content, that.content);
  }

  @Override
  public int hashCode() {
    return Objects.hash(fileName, mimeType, description, Arrays.hashCode(content));
  }

  @Override
  public String toString() {
    return fileName + " (" + mimeType + ", " + content.length + " bytes)";
  }
}
