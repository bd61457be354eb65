package gambrel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.trade.reckoning.Progress.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The text of the progress line. */
class ProgressTextTest {
  private static final int USUAL = 80;

  private static String text(Stage stage, long done, long total) {
    return ProgressText.of(stage, done, total, USUAL);
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
    assertEquals(line, text(stage, done, total));
  }

  @ParameterizedTest
  @EnumSource
  void aStageThatIsNotCountedOrHasNothingToDoIsItsNameAlone(Stage stage) {
    String line = text(stage, 0, 0);

    assertTrue(line.matches("[a-z ]+"), line);
  }

  @ParameterizedTest
  @EnumSource
  void neverMoreThanAllIsDone(Stage stage) {
    String line = text(stage, 70_000_000, 30_000_000);

    assertFalse(line.contains("7"), line);
    assertTrue(line.matches(".*(100 %|30000000 of 30000000|30 of 30 MB)"), line);
  }

  @Test
  void leavesOutWhatDoesNotFitAndKeepsOffTheLastColumn() {
    String counted = "making statements: 200 of 1000";

    assertEquals(counted, ProgressText.of(Stage.STATEMENTS, 200, 1000, counted.length() + 1));
    assertEquals(
        "making statements", ProgressText.of(Stage.STATEMENTS, 200, 1000, counted.length()));
    assertEquals("making st", ProgressText.of(Stage.STATEMENTS, 200, 1000, 10));
    assertEquals("", ProgressText.of(Stage.STATEMENTS, 200, 1000, 1));
    assertEquals("", ProgressText.of(Stage.STATEMENTS, 200, 1000, 0));
  }

  @ParameterizedTest
  @EnumSource
  void fitsAUsualTerminalHoweverMuchThereIsAndIsPlain(Stage stage) {
    String line = text(stage, 40_000_000L, 99_999_999L);

    assertTrue(line.length() < USUAL, line);
    assertTrue(line.matches("[ -~]+"), line);
    assertTrue(line.matches(".*( of 99999999| of 100 MB| %).*"), line);
  }
}
