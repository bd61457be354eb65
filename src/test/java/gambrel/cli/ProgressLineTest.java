package gambrel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.trade.reckoning.Progress.Stage;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The drawing of the progress line. */
class ProgressLineTest {
  private final StringWriter written = new StringWriter();
  private final ProgressLine line = new ProgressLine(new PrintWriter(written));

  /** The text on the terminal's last line. */
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
    var asked = new AtomicInteger();
    var quick = ProgressLine.begin(new PrintWriter(written), () -> asked.incrementAndGet() > 0);
    quick.begin(Stage.READING, 9).accept(3);
    quick.close();

    assertEquals("", written.toString());
    assertEquals(0, asked.get());
  }

  @Test
  void showsHowFarTheStageIs() {
    line.begin(Stage.READING, 9).accept(9);
    var bodies = line.begin(Stage.BODIES, 40);
    bodies.accept(1);
    bodies.accept(2);
    line.draw();

    assertEquals("bodies 7 %", seen());
  }

  @Test
  void showsNothingBeforeAnyStageHasBegun() {
    line.draw();

    assertEquals("", written.toString());
  }

  @Test
  void drawsAShorterLineOverALongerOneAndLeavesNothingOfIt() {
    line.begin(Stage.STATEMENTS, 400);
    line.draw();
    assertEquals("statements 0 %", seen());
    line.begin(Stage.MONTHS, 3);
    line.draw();

    assertEquals("months 0 %", seen());
  }

  @Test
  void writesNothingAsLongAsThereIsNothingNewToSay() {
    line.begin(Stage.MONTHS, 3);
    line.draw();
    String once = written.toString();
    line.draw();
    line.draw();

    assertEquals(once, written.toString());
  }

  @Test
  void isGoneWithoutATraceWhenItIsClosedAndStaysGone() {
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
  void asksOnceAndWritesNotAByteWhereThereIsNoTerminal() throws InterruptedException {
    var asked = new CountDownLatch(1);
    try (var blind =
        ProgressLine.begin(
            new PrintWriter(written),
            () -> {
              asked.countDown();
              return false;
            })) {
      blind.begin(Stage.MONTHS, 3).accept(1);
      assertTrue(asked.await(1, TimeUnit.MINUTES));
    }

    assertEquals("", written.toString());
  }

  @Test
  void aStageWithNothingToCountIsItsNameAlone() {
    line.begin(Stage.STATEMENTS, 0);
    line.draw();

    assertEquals("statements", seen());
  }

  @Test
  void countsWhatIsDoneOnSeveralThreads() {
    var bodies = line.begin(Stage.BODIES, 20_000);
    IntStream.range(0, 20_000).parallel().forEach(body -> bodies.accept(1));
    line.draw();

    assertEquals("bodies 100 %", seen());
  }

  @Test
  void takesNoNoticeOfAPartOfTheStageBefore() {
    var bodies = line.begin(Stage.BODIES, 2);
    line.begin(Stage.MONTHS, 3);
    bodies.accept(2);
    line.draw();

    assertEquals("months 0 %", seen());
  }
}
