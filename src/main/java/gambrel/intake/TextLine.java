package gambrel.intake;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.List;

/**
 * One line of a text file. Bytes that are no text in the file's character set stand as U+FFFD.
 *
 * @param number counted from 1
 * @param text without the line end
 * @param end the line end as it stands in the file, empty at the end of the file
 * @param overlong whether the line was longer than {@link #LONGEST}; {@code text} is its beginning
 */
record TextLine(int number, String text, String end, boolean overlong) {
  /** The most characters that a line, or a record of several lines, may have. */
  static final int LONGEST = 1 << 16;

  private static final String END_OF_FILE = "\u001A";
  private static final int BEGINNING = 1000;
  private static final int BYTE_ORDER_MARK = '\uFEFF';

  /** Whether nothing is written on it, or only the mark by which old systems end a file. */
  boolean isBlank() {
    return text.isBlank() || text.equals(END_OF_FILE);
  }

  /** All lines of a file; a byte order mark is no part of the first. */
  static List<TextLine> read(InputStream in, Charset charset) throws IOException {
    var reader = new BufferedReader(new InputStreamReader(in, charset));
    skip(reader, BYTE_ORDER_MARK);
    var lines = new ArrayList<TextLine>();
    for (int c = reader.read(); c >= 0; c = reader.read()) {
      lines.add(readLine(reader, c, lines.size() + 1));
    }
    return lines;
  }

  private static TextLine readLine(Reader reader, int first, int number) throws IOException {
    var text = new StringBuilder();
    boolean overlong = false;
    int c = first;
    for (; c >= 0 && c != '\n' && c != '\r'; c = reader.read()) {
      if (text.length() < LONGEST) {
        text.append((char) c);
      } else {
        overlong = true;
      }
    }
    String end = c < 0 ? "" : c == '\r' && skip(reader, '\n') ? "\r\n" : Character.toString(c);
    String kept = overlong ? text.substring(0, BEGINNING) : text.toString();
    return new TextLine(number, kept, end, overlong);
  }

  private static boolean skip(Reader reader, int expected) throws IOException {
    reader.mark(1);
    if (reader.read() == expected) {
      return true;
    }
    reader.reset();
    return false;
  }
}
