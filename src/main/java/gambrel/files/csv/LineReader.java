package gambrel.files.csv;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;

/**
 * Cuts text into lines, a block at a time. Of a line that is too long only the beginning is kept,
 * so that a file without line ends fits in memory whatever its size.
 */
final class LineReader {
  /** Shorter than the longest line, so that a line within one block is never too long. */
  private static final int BLOCK = 1 << 13;

  /** What is kept of a line that is too long. */
  private static final int BEGINNING = 1000;

  private static final char BYTE_ORDER_MARK = '\uFEFF';

  private final Reader reader;
  private final char[] block = new char[BLOCK];
  private int at;
  private int filled;

  LineReader(Reader reader) {
    this.reader = reader;
  }

  /** All lines; a byte order mark is no part of the first. */
  List<TextLine> lines() throws IOException {
    var lines = new ArrayList<TextLine>();
    if (hasMore() && block[at] == BYTE_ORDER_MARK) {
      at++;
    }
    while (hasMore()) {
      lines.add(line(lines.size() + 1));
    }
    return lines;
  }

  /** Whether there is a character at {@link #at}. */
  private boolean hasMore() throws IOException {
    if (at < filled) {
      return true;
    }
    at = 0;
    filled = reader.read(block);
    return filled > 0;
  }

  private TextLine line(int number) throws IOException {
    int start = at;
    skipToEnd();
    if (at < filled) {
      return new TextLine(number, new String(block, start, at - start), end(), false);
    }
    var text = new StringBuilder().append(block, start, at - start);
    boolean overlong = false;
    while (hasMore() && !isEnd(block[at])) {
      skipToEnd();
      int room = TextLine.LONGEST - text.length();
      text.append(block, 0, Math.min(room, at));
      overlong |= at > room;
    }
    String kept = overlong ? text.substring(0, BEGINNING) : text.toString();
    return new TextLine(number, kept, end(), overlong);
  }

  private void skipToEnd() {
    int next = at;
    while (next < filled && !isEnd(block[next])) {
      next++;
    }
    at = next;
  }

  private static boolean isEnd(char c) {
    return c == '\n' || c == '\r';
  }

  /** Takes the line end, of which there is none where the text ends. */
  private String end() throws IOException {
    if (!hasMore()) {
      return "";
    }
    if (block[at++] == '\n') {
      return "\n";
    }
    if (hasMore() && block[at] == '\n') {
      at++;
      return "\r\n";
    }
    return "\r";
  }
}
