package gambrel.files.csv;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;

/**
 * Cuts text into lines. Only the beginning of a line that is too long is kept, and of blank lines
 * that follow each other only the first hundreds, so that a file without line ends or text fits in
 * memory whatever its size.
 */
final class LineReader {
  /** Characters that are kept of a line that is too long. */
  private static final int BEGINNING = 1000;

  /** Blank lines in a row that are kept; no record runs over as many. */
  private static final int MOST_BLANK = 2 * CsvRows.MOST_LINES;

  private static final char BYTE_ORDER_MARK = '\uFEFF';

  private final Reader reader;
  private final char[] block = new char[1 << 13];
  private final StringBuilder text = new StringBuilder();
  private int at;
  private int filled;

  LineReader(Reader reader) {
    this.reader = reader;
  }

  /** The lines; a byte order mark is no part of the first. */
  List<TextLine> lines() throws IOException {
    var lines = new ArrayList<TextLine>();
    if (hasMore() && block[at] == BYTE_ORDER_MARK) {
      at++;
    }
    int blank = 0;
    for (int number = 1; hasMore(); number++) {
      var line = line(number);
      blank = line.isBlank() ? blank + 1 : 0;
      if (blank <= MOST_BLANK) {
        lines.add(line);
      }
    }
    return lines;
  }

  /** Whether there is a character at {@link #at}; reads the next block if needed. */
  private boolean hasMore() throws IOException {
    if (at == filled) {
      at = 0;
      filled = Math.max(0, reader.read(block));
    }
    return filled > 0;
  }

  private TextLine line(int number) throws IOException {
    text.setLength(0);
    boolean overlong = false;
    for (; hasMore() && !isEnd(block[at]); at++) {
      if (text.length() < TextLine.LONGEST) {
        text.append(block[at]);
      } else {
        overlong = true;
      }
    }
    String kept = overlong ? text.substring(0, BEGINNING) : text.toString();
    return new TextLine(number, kept, end(), overlong);
  }

  private static boolean isEnd(char c) {
    return c == '\n' || c == '\r';
  }

  /** Reads the line end; empty where the text ends. */
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
