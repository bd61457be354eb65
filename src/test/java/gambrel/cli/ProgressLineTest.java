package gambrel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.run.Stage;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Duration;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** How the line is drawn, on a terminal whose clock stands still unless it is told to go on. */
class ProgressLineTest {
  private final FakeTerminal terminal = new FakeTerminal();
  private final StringWriter written = new StringWriter();
  private final ProgressLine line = new ProgressLine(new PrintWriter(written), terminal);

  /** A terminal of 80 columns. */
  private static final class FakeTerminal implements Terminal {
    private OptionalInt columns = OptionalInt.of(80);
    private Duration now = Duration.ofDays(3);
    private int asked;

    @Override
    public OptionalInt columns() {
      asked++;
      return columns;
    }

    @Override
    public long nanos() {
      return now.toNanos();
    }

    private void pass(double seconds) {
      now = now.plusMillis((long) (seconds * 1000));
    }
  }

  /** What stands on the terminal's last line. */
  private String seen() {
    var row = new StringBuilder();
    int column = 0;
    for (char c : written.toString().toCharArray()) {
      if (c == '\r') {
        column = 0;
      } else {
        row.setLength(Math.max(row.length(), column + 1));
        row.setCharAt(column++, c);
      }
    }
    return row.toString().stripTrailing();
  }

  @Test
  void showsNothingOfWorkThatIsOverWithinTwoSeconds() {
    line.begin(Stage.READING, 9).accept(3);
    line.draw();
    terminal.pass(1.9);
    line.draw();
    line.close();

    assertEquals("", written.toString());
    assertEquals(0, terminal.asked);
  }

  @Test
  void showsHowFarTheStageIsOnceTheWorkHasLastedTwoSeconds() {
    line.begin(Stage.READING, 9).accept(9);
    terminal.pass(1.5);
    var bodies = line.begin(Stage.BODIES, 40);
    bodies.accept(1);
    bodies.accept(2);
    terminal.pass(0.5);
    line.draw();

    assertEquals("reckoning bodies: 3 of 40", seen());
  }

  @Test
  void showsNothingBeforeAnyStageHasBegun() {
    terminal.pass(5);
    line.draw();

    assertEquals("", written.toString());
  }

  @Test
  void drawsAShorterLineOverALongerOneAndLeavesNothingOfIt() {
    terminal.pass(3);
    line.begin(Stage.STATEMENTS, 400);
    line.draw();
    assertEquals("making statements: 0 of 400", seen());
    line.begin(Stage.MONTHS, 3);
    line.draw();

    assertEquals("making months: 0 of 3", seen());
  }

  @Test
  void writesNothingAsLongAsThereIsNothingNewToSay() {
    terminal.pass(3);
    line.begin(Stage.MONTHS, 3);
    line.draw();
    String once = written.toString();
    line.draw();
    terminal.pass(1);
    line.draw();

    assertEquals(once, written.toString());
  }

  @Test
  void isGoneWithoutATraceWhenItIsClosedAndStaysGone() {
    terminal.pass(3);
    var months = line.begin(Stage.MONTHS, 3);
    line.draw();
    line.close();
    String cleared = written.toString();
    months.accept(1);
    line.draw();
    line.close();

    assertEquals("", seen());
    assertTrue(cleared.endsWith("\r"), "the next message begins on the left");
    assertEquals(cleared, written.toString());
  }

  @Test
  void writesNotAByteWhereThereIsNoTerminal() {
    terminal.columns = OptionalInt.empty();
    terminal.pass(3);
    line.begin(Stage.MONTHS, 3).accept(1);
    line.draw();
    terminal.pass(30);
    line.draw();
    line.close();

    assertEquals("", written.toString());
    assertEquals(1, terminal.asked, "the system is asked once");
  }

  @Test
  void keepsToOneLineOfANarrowTerminal() {
    terminal.columns = OptionalInt.of(20);
    terminal.pass(3);
    line.begin(Stage.STATEMENTS, 1000);
    line.draw();

    assertEquals("making statements", seen());
  }

  @Test
  void judgesTheTimeLeftByTheLatterHalfSinceTheFirstIsSlow() {
    var statements = line.begin(Stage.STATEMENTS, 1000);
    for (int second = 1; second <= 20; second++) {
      terminal.pass(1);
      statements.accept(second <= 10 ? 1 : 20);
      line.draw();
    }

    // 210 done; at 20 a second the other 790 take 39.5 s, at the rate of all of it 76 s.
    assertEquals("making statements: 210 of 1000, about 40 s left in this stage", seen());
  }

  @Test
  void countsWhatIsDoneOnSeveralThreads() {
    var bodies = line.begin(Stage.BODIES, 20_000);
    IntStream.range(0, 20_000).parallel().forEach(body -> bodies.accept(1));
    terminal.pass(3);
    line.draw();

    assertEquals("reckoning bodies: 20000 of 20000", seen());
  }

  @Test
  void takesNoNoticeOfAPartOfTheStageBefore() {
    terminal.pass(3);
    var bodies = line.begin(Stage.BODIES, 2);
    line.begin(Stage.MONTHS, 3);
    bodies.accept(2);
    line.draw();

    assertEquals("making months: 0 of 3", seen());
  }
}
