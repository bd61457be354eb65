package gambrel.files.guess;

import static gambrel.trade.notice.NoticeWords.ENGLISH;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.files.export.ExportReader;
import gambrel.files.export.Exports;
import gambrel.files.folder.LayoutExamplesTest;
import gambrel.files.folder.ShopFiles;
import gambrel.trade.reckoning.Progress;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.Field;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a newcomer is told about an export that fits no layout. */
class LayoutGuessTest {
  @TempDir Path folder;
  private ShopFiles files;

  @BeforeEach
  void start() {
    files =
        new ShopFiles(folder)
            .with("bodies.csv", "body,species\nB17,beef\nA12,beef\n")
            .with("codes.csv", "code,item,step\nROAST,,other\nBONE,,other\nGROUND,,other\n");
  }

  static List<Path> makes() throws IOException, URISyntaxException {
    return LayoutExamplesTest.makes();
  }

  private LayoutGuess guess(String text) {
    files.with("exports/make/a.csv", text);
    return guess().orElseThrow();
  }

  private Optional<LayoutGuess> guess() {
    return LayoutGuesses.of(folder, files.clean(), "exports/make/a.csv");
  }

  private Exports read(String layout) {
    files.with("exports/make/layout.properties", layout);
    return ExportReader.read(folder, files.clean(), Progress.NONE);
  }

  /** What stays open in the examples: which scale, and what in-store numbers and words mean. */
  @ParameterizedTest
  @MethodSource("makes")
  void theLayoutReadsTheExportOnceTheShopHasAddedWhatNobodyCanGuess(Path make) throws IOException {
    files
        .with("exports/make/a.csv", Files.readAllBytes(make.resolve("export.csv")))
        .with("exports/z.csv", Files.readAllBytes(make.resolve("expected.csv")));
    var lines = guess().orElseThrow().layout();
    var layout =
        String.join("\n", lines) + "\nconstant.scale=S1\ninstore=21IIIIVWWWWWC\nvalue.body.0=\n";
    var exports = read(layout);
    assertEquals(List.of(), exports.notices(), layout);
    assertEquals(
        exports.files().get(1).rows().stream().map(LayoutGuessTest::essence).toList(),
        exports.files().get(0).rows().stream().map(LayoutGuessTest::essence).toList(),
        layout);
  }

  private static List<String> essence(ExportRow row) {
    return List.of(
        row.get(Field.TICKET),
        row.get(Field.TIME),
        row.get(Field.BODY),
        row.get(Field.NET),
        row.get(Field.GROSS),
        row.get(Field.TARE),
        row.get(Field.PIECES),
        row.broken().map(ENGLISH::of).orElse(""));
  }

  @Test
  void everyGuessComesWithItsReason() {
    var text =
        """
        No;Datum;Zeit;Tier;Gewicht (kg)
        1;14.07.2026;9:05;B17;2,5
        2;14.07.2026;9:06;A12;3,25
        """;
    assertEquals(
        """
        Cells stand between ";": most lines have 5.
        Its header: No, Datum, Zeit, Tier, Gewicht (kg).
        The decimal mark is a comma.
        ticket is column "No": its header, it counts up.
        date is column "Datum": its header, values such as 14.07.2026.
        clock is column "Zeit": its header, values such as 9:05.
        body is column "Tier": its header, 2 of 2 values are in the shop's files.
        net is column "Gewicht (kg)": its header, values such as 2,5.
        No column looks like scale: name the folder after the scale, or say which it is.
        No column looks like code: say which column it is, or one code for all rows.
        """,
        String.join("\n", guess(text).found()) + "\n");
  }

  @Test
  void whatIsPrintedNamesTheFileAndWhereItsLayoutBelongs() {
    var lines = guess("a,b\n1,2\n").lines();
    assertEquals("What exports/make/a.csv looks like:", lines.get(0));
    assertTrue(
        lines.contains(
            "A layout to start from; look at every line, then save it as"
                + " layouts/make.properties:"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "01/02/2026 | date=d/M/yyyy | It could also be M/d/yyyy; look.",
        "01/22/2026 | date=M/d/yyyy |",
        "2026-02-01 | date=yyyy-M-d |"
      })
  void aDateThatCouldBeTwoIsPointedOut(String date, String line, String doubt) {
    var guess = guess("Date,Net\n" + date + ",2.5\n");
    assertTrue(guess.layout().contains(line), guess.toString());
    assertEquals(
        Optional.ofNullable(doubt),
        guess.found().stream().filter(text -> text.startsWith("It could")).findFirst());
  }

  @Test
  void americanShopsWriteTheMonthFirst() {
    files.with("shop.properties", ShopFiles.SETTINGS + "region=us\n");
    var guess = guess("Date,Net\n01/02/2026,2.5\n");
    assertTrue(guess.layout().contains("date=M/d/yyyy"), guess.toString());
  }

  @Test
  void grossTareAndNetAreKnownByTheirSum() {
    var guess = guess("x,y,z\n2.75,0.25,2.5\n4.1,0.1,4\n");
    assertTrue(
        guess.layout().containsAll(List.of("column.gross=x", "column.tare=y", "column.net=z")),
        guess.toString());
  }

  @Test
  void aMarkThatCouldBeEitherIsPointedOut() {
    var found = guess("x;Netto\na;12,460\nb;1,250\n").found();
    assertTrue(found.contains("The decimal mark is a comma; it could be one of thousands: look."));
  }

  @ParameterizedTest
  @ValueSource(strings = {"one column\nonly\n", "x", "\"never closed\n"})
  void textWithoutColumnsIsSaidToBeSo(String text) {
    var guess = guess(text);
    assertEquals(
        List.of("No comma, semicolon, tab or | divides its lines into columns."), guess.found());
    assertEquals(List.of(), guess.layout());
  }

  @Test
  void aFileThatIsMissingOrBlankGivesNoGuess() {
    assertEquals(Optional.empty(), guess());
    files.with("exports/make/a.csv", " \n\n");
    assertEquals(Optional.empty(), guess());
  }

  @Test
  void lineEndsWithinCellsStayOutOfTheLayout() {
    var guess = guess("Net,\"Date\nof kill\"\n2.5,\"2026-02-01\"\n3.5,2026-02-02\n");
    assertTrue(guess.layout().contains("column.date=2"), guess.toString());
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void anyBytesGiveAGuessOrNoneAndALayoutWithoutMistakes(long seed) {
    var random = new SplittableRandom(seed);
    for (int round = 0; round < 20; round++) {
      var bytes = new byte[1 + random.nextInt(400)];
      for (int i = 0; i < bytes.length; i++) {
        bytes[i] = (byte) ",;\t|\n\"19:./-aé \\=#".charAt(random.nextInt(18));
      }
      files.with("exports/make/a.csv", bytes);
      var layout = guess().map(LayoutGuess::layout).orElse(List.of());
      var notices = read(String.join("\n", layout)).notices();
      assertTrue(
          notices.stream().noneMatch(notice -> notice.place().file().endsWith(".properties")),
          () -> notices + "\n" + String.join("\n", layout));
    }
  }
}
