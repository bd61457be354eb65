package gambrel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.run.Stage;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What the line on the terminal says. */
class ProgressTextTest {
  private static final int USUAL = 80;

  /** So much is done, the latter half of it in so many seconds, the last of it just now. */
  private static Reached reached(Stage stage, long done, long total, long lately, long seconds) {
    return new Reached(stage, done, total, lately, Duration.ofSeconds(seconds), Duration.ZERO);
  }

  private static String text(Reached reached) {
    return ProgressText.of(reached, USUAL);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          READING    |   700000 |  3200000 | reading exports: 700 of 3200 kB
          READING    | 12900000 | 13100000 | reading exports: 12 of 14 MB
          READING    | 13100000 | 13100000 | reading exports: 14 of 14 MB
          ROWS       |   150000 |   400000 | judging rows: 37 %
          BODIES     |       20 |      400 | reckoning bodies: 20 of 400
          RELEASES   |        1 |        3 | reckoning releases: 1 of 3
          STATEMENTS |       11 |       12 | making statements: 11 of 12
          MONTHS     |        0 |       13 | making months: 0 of 13
          TABLES     |        9 |       10 | making data files: 9 of 10
          PUBLISHING |        5 |       80 | publishing files: 5 of 80
          """)
  void namesTheStageAndHowFarItIsInItsUnit(Stage stage, long done, long total, String line) {
    assertEquals(line, text(reached(stage, done, total, 0, 0)));
  }

  @ParameterizedTest
  @EnumSource
  void aStageThatIsNotCountedOrHasNothingToDoIsItsNameAlone(Stage stage) {
    String line = text(reached(stage, 0, 0, 0, 0));

    assertTrue(line.matches("[a-z ]+"), line);
  }

  @ParameterizedTest
  @EnumSource
  void neverMoreThanAllIsDone(Stage stage) {
    String line = text(reached(stage, 70_000_000, 30_000_000, 35_000_000, 60));

    assertFalse(line.contains("7"), line);
    assertTrue(line.matches(".*(100 %|30000000 of 30000000|30 of 30 MB)"), line);
  }

  @ParameterizedTest
  @CsvSource({
    // Done, lately, in seconds: too short a time, too few parts, too small a part.
    "300, 150, 2",
    "1, 1, 10",
    "19, 10, 10"
  })
  void saysNothingOfTheTimeLeftBeforeThereIsARate(long done, long lately, long seconds) {
    assertEquals(
        "making statements: " + done + " of 1000",
        text(reached(Stage.STATEMENTS, done, 1000, lately, seconds)));
  }

  @Test
  void saysTheTimeLeftInTheStageAtTheLatestRate() {
    assertEquals(
        "making statements: 200 of 1000, about 2 min left in this stage",
        text(reached(Stage.STATEMENTS, 200, 1000, 80, 10)));
  }

  @ParameterizedTest
  @CsvSource({
    "1, 10 s",
    "10, 10 s",
    "11, 20 s",
    "50, 50 s",
    "51, 1 min",
    "61, 2 min",
    "599, 10 min",
    "601, 15 min",
    "3599, 60 min",
    "3601, 1.5 h",
    "7100, 2 h",
    "9001, 3 h"
  })
  void roundsTheTimeLeftUpAndCoarsely(long seconds, String about) {
    // Half is done, ten times as much as is left in ten times as long.
    var reached = reached(Stage.BODIES, seconds * 5, seconds * 6, seconds * 4, seconds * 4);

    assertEquals(about, text(reached).replaceAll(".*, about (.*) left in this stage", "$1"));
  }

  @Test
  void countsDownWhileNothingIsDoneAndFallsSilentOnceTheTimeIsUp() {
    var during = Duration.ofSeconds(30);
    // Three of thirteen in ten seconds each: thirty seconds are left.
    for (int quiet = 1; quiet < 60; quiet++) {
      var reached =
          new Reached(Stage.MONTHS, 10, 13, 3, during, Duration.ofSeconds(quiet));

      String line = text(reached);

      assertEquals(quiet < 30, line.contains("left"), quiet + " s quiet: " + line);
    }
  }

  @ParameterizedTest
  @EnumSource(names = {"TABLES", "PUBLISHING"})
  void saysNothingOfTheTimeLeftWherePartsAreUnlike(Stage stage) {
    assertFalse(text(reached(stage, 500, 1000, 250, 60)).contains("left"));
  }

  @Test
  void leavesOutWhatDoesNotFitAndKeepsOffTheLastColumn() {
    var reached = reached(Stage.STATEMENTS, 200, 1000, 80, 10);
    String whole = "making statements: 200 of 1000, about 2 min left in this stage";
    String counted = "making statements: 200 of 1000";

    assertEquals(whole, ProgressText.of(reached, whole.length() + 1));
    assertEquals(counted, ProgressText.of(reached, whole.length()));
    assertEquals(counted, ProgressText.of(reached, counted.length() + 1));
    assertEquals("making statements", ProgressText.of(reached, counted.length()));
    assertEquals("making st", ProgressText.of(reached, 10));
    assertEquals("", ProgressText.of(reached, 1));
    assertEquals("", ProgressText.of(reached, 0));
  }

  @ParameterizedTest
  @EnumSource
  void fitsAUsualTerminalHoweverMuchThereIsAndIsPlain(Stage stage) {
    String line = text(reached(stage, 40_000_000L, 99_999_999L, 20_000_000, 3600));

    assertTrue(line.length() < USUAL, line);
    assertTrue(line.matches("[ -~]+"), line);
    assertTrue(line.matches(".*( of 99999999| of 100 MB| %).*"), line);
  }
}
