package gambrel.pages.render.template;

import java.io.IOException;
import java.io.Writer;

/** Collects the text of a page, up to a limit that sensible pages do not reach. */
final class PageText extends Writer {

  private static final int LIMIT = 16_000_000;

  private final StringBuilder text = new StringBuilder(1 << 14);

  @Override
  public void write(char[] buffer, int offset, int length) throws IOException {
    if (text.length() + length > LIMIT) {
      throw new IOException("the page grows without end");
    }
    text.append(buffer, offset, length);
  }

  @Override
  public void flush() {
    // kept in memory
  }

  @Override
  public void close() {
    // kept in memory
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
