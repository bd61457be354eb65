package gambrel.intake;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * One line of a text file. Bytes that are no text in the file's character set are read as U+FFFD.
 *
 * @param number counted from 1
 * @param text without the line end
 * @param end the line end as it stands in the file, empty at the end of the file
 * @param overlong whether the line was longer than {@link #LONGEST}; {@code text} is its beginning
 */
record TextLine(int number, String text, String end, boolean overlong) {
  /** The most characters that a line, or a record of several lines, may have. */
  static final int LONGEST = 1 << 16;

  /** The most bytes that a file may have: five million rows. */
  private static final int MOST_BYTES = 1 << 29;

  /** What is kept of a line that is too long. */
  private static final int BEGINNING = 1000;

  private static final String BYTE_ORDER_MARK = "\uFEFF";
  private static final String END_OF_FILE = "\u001A";

  /** Whether nothing is written on it, or only the mark by which old systems end a file. */
  boolean isBlank() {
    return text.isBlank() || text.equals(END_OF_FILE);
  }

  /**
   * All lines of a file; a byte order mark is no part of the first.
   *
   * @throws IOException also if the file is larger than any export can be
   */
  static List<TextLine> read(InputStream in, Charset charset) throws IOException {
    return lines(new String(bytes(in), charset));
  }

  /** As above, but a byte order mark outweighs {@code charset}. */
  static List<TextLine> readMarked(InputStream in, Charset charset) throws IOException {
    var bytes = bytes(in);
    return lines(new String(bytes, marked(bytes, charset)));
  }

  private static byte[] bytes(InputStream in) throws IOException {
    var bytes = in.readNBytes(MOST_BYTES);
    if (bytes.length == MOST_BYTES) {
      throw new IOException("the file is too large");
    }
    return bytes;
  }

  private static Charset marked(byte[] bytes, Charset otherwise) {
    if (begins(bytes, 0xEF, 0xBB, 0xBF)) {
      return StandardCharsets.UTF_8;
    }
    return begins(bytes, 0xFF, 0xFE) || begins(bytes, 0xFE, 0xFF)
        ? StandardCharsets.UTF_16
        : otherwise;
  }

  private static boolean begins(byte[] bytes, int... mark) {
    for (int i = 0; i < mark.length; i++) {
      if (i >= bytes.length || (bytes[i] & 0xFF) != mark[i]) {
        return false;
      }
    }
    return true;
  }

  /** All lines of a text; a byte order mark is no part of the first. */
  static List<TextLine> lines(String text) {
    var lines = new ArrayList<TextLine>();
    for (int start = text.startsWith(BYTE_ORDER_MARK) ? 1 : 0; start < text.length(); ) {
      int stop = start;
      while (stop < text.length() && text.charAt(stop) != '\n' && text.charAt(stop) != '\r') {
        stop++;
      }
      int next = text.startsWith("\r\n", stop) ? stop + 2 : Math.min(stop + 1, text.length());
      boolean overlong = stop - start > LONGEST;
      String kept = text.substring(start, overlong ? start + BEGINNING : stop);
      lines.add(new TextLine(lines.size() + 1, kept, text.substring(stop, next), overlong));
      start = next;
    }
    return lines;
  }
}
