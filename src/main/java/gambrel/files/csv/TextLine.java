package gambrel.files.csv;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.Charset;
import java.util.List;

/**
 * One line of a text file. Bytes that are no text in the file's character set become U+FFFD.
 *
 * @param number its number in the file, from 1
 * @param text without the line end
 * @param end the line end; empty at the end of the file
 * @param overlong whether the line is longer than {@link #LONGEST}; {@code text} is its beginning
 */
public record TextLine(int number, String text, String end, boolean overlong) {
  /** The most characters of a line, or of a record of several lines. */
  public static final int LONGEST = 1 << 16;

  /** The mark by which old systems end a file. */
  private static final String END_OF_FILE = "\u001A";

  /** Whether it holds only blanks or the mark of the end of a file. */
  public boolean isBlank() {
    return text.isBlank() || text.equals(END_OF_FILE);
  }

  /**
   * The lines of a file; of many blank ones in a row the first. A byte order mark is no part of the
   * first line.
   */
  public static List<TextLine> read(InputStream in, Charset charset) throws IOException {
    return new LineReader(new InputStreamReader(in, charset)).lines();
  }
}
