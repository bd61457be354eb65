package gambrel.files.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LineReaderTest {
  private static final int LONGEST = TextLine.LONGEST;

  private static List<TextLine> lines(Reader reader) {
    try {
      return new LineReader(reader).lines();
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static List<TextLine> lines(String text) {
    return lines(new StringReader(text));
  }

  /** Gives a few characters at a time, as a slow disk may. */
  private static Reader dribbling(String text, SplittableRandom dice) {
    return new StringReader(text) {
      @Override
      public int read(char[] to, int at, int length) throws IOException {
        return super.read(to, at, Math.min(length, 1 + dice.nextInt(5)));
      }
    };
  }

  /** One character after the other. */
  private static List<TextLine> slowly(String text) {
    var lines = new ArrayList<TextLine>();
    for (int at = text.startsWith("\uFEFF") ? 1 : 0; at < text.length(); ) {
      int stop = at;
      while (stop < text.length() && text.charAt(stop) != '\n' && text.charAt(stop) != '\r') {
        stop++;
      }
      int after = Math.min(stop + (text.startsWith("\r\n", stop) ? 2 : 1), text.length());
      String end = text.substring(stop, after);
      boolean overlong = stop - at > LONGEST;
      String kept = text.substring(at, overlong ? at + 1000 : stop);
      lines.add(new TextLine(lines.size() + 1, kept, end, overlong));
      at = stop + end.length();
    }
    return lines;
  }

  @Test
  void ofBlankLinesInARowTheFirstHundredsAreKeptAndLaterLinesKeepTheirNumber() {
    var lines = lines("\n".repeat(1_000_000) + "end");
    assertEquals(401, lines.size());
    assertEquals(new TextLine(1_000_001, "end", "", false), lines.get(400));
  }

  @Test
  void keepTheirNumberAndTheirEnd() {
    assertEquals(
        List.of(
            new TextLine(1, "a", "\n", false),
            new TextLine(2, "", "\r\n", false),
            new TextLine(3, "b", "\r", false),
            new TextLine(4, "", "\r", false),
            new TextLine(5, "c", "", false)),
        lines("a\n\r\nb\r\rc"));
  }

  @Test
  void areNoneInAnEmptyTextOrBehindAByteOrderMarkAlone() {
    assertEquals(List.of(), lines(""));
    assertEquals(List.of(), lines("\uFEFF"));
    assertEquals(List.of(new TextLine(1, "\uFEFF", "", false)), lines("\uFEFF\uFEFF"));
  }

  @ParameterizedTest
  @ValueSource(ints = {8190, 8191, 8192, 8193, 16383, 16384, LONGEST - 1, LONGEST, LONGEST + 1})
  void areTheSameWhereverABlockEnds(int length) {
    for (String end : List.of("\n", "\r\n", "\r", "")) {
      String text = "x".repeat(length) + end + (end.isEmpty() ? "" : "y" + end + "z");
      assertEquals(slowly(text), lines(text), () -> length + " then " + end.length());
    }
  }

  @Test
  void areTheSameHoweverTheTextArrives() {
    var dice = new SplittableRandom(3);
    for (int i = 0; i < 2000; i++) {
      var text = new StringBuilder();
      for (int left = dice.nextInt(60); left > 0; left--) {
        text.append("ab,\n\n\r\r\uFEFFé\0".charAt(dice.nextInt(10)));
      }
      assertEquals(slowly(text.toString()), lines(text.toString()));
      assertEquals(slowly(text.toString()), lines(dribbling(text.toString(), dice)));
    }
  }
}
