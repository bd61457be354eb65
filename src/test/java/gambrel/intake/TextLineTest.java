package gambrel.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Lines cut out of blocks of text")
class TextLineTest {
  private static final int LONGEST = TextLine.LONGEST;

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
  void keepTheirNumberAndTheirEnd() {
    assertEquals(
        List.of(
            new TextLine(1, "a", "\n", false),
            new TextLine(2, "", "\r\n", false),
            new TextLine(3, "b", "\r", false),
            new TextLine(4, "", "\r", false),
            new TextLine(5, "c", "", false)),
        TextLine.lines("a\n\r\nb\r\rc"));
  }

  @Test
  void areNoneInAnEmptyTextOrBehindAByteOrderMarkAlone() {
    assertEquals(List.of(), TextLine.lines(""));
    assertEquals(List.of(), TextLine.lines("\uFEFF"));
    assertEquals(List.of(new TextLine(1, "\uFEFF", "", false)), TextLine.lines("\uFEFF\uFEFF"));
  }

  @ParameterizedTest
  @ValueSource(ints = {LONGEST - 1, LONGEST, LONGEST + 1})
  void areCutWhereTheyAreTooLong(int length) {
    for (String end : List.of("\n", "\r\n", "\r", "")) {
      String text = "x".repeat(length) + end + (end.isEmpty() ? "" : "y" + end + "z");
      assertEquals(slowly(text), TextLine.lines(text), () -> length + " then " + end.length());
    }
  }

  @Test
  void areTheSameAsReadOneCharacterAfterTheOther() {
    var dice = new SplittableRandom(3);
    for (int i = 0; i < 2000; i++) {
      var text = new StringBuilder();
      for (int left = dice.nextInt(60); left > 0; left--) {
        text.append("ab,\n\n\r\r\uFEFFé\0".charAt(dice.nextInt(10)));
      }
      assertEquals(slowly(text.toString()), TextLine.lines(text.toString()));
    }
  }
}
