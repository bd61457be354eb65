package gambrel.files.guess;

import static gambrel.trade.notice.NoticeWords.ENGLISH;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is said about an export, and the layout that is proposed for it. */
class ExportAssistantTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 8, 5);

  @TempDir Path folder;
  private ShopFiles files;

  @BeforeEach
  void start() {
    files =
        new ShopFiles(folder)
            .with("bodies.csv", "body,species,killed\nB17,beef,2026-07-27\nA12,beef,\n")
            .with("codes.csv", "code,item,step\nROAST,,other\nBONE,,other\nGROUND,,other\n")
            .with("scales.csv", "scale,unit,division,capacity\nS1,kg,0.005,15\nS2,kg,0.005,\n");
  }

  static List<Path> makes() throws IOException, URISyntaxException {
    return LayoutExamplesTest.makes();
  }

  private List<String> said() {
    return told().lines();
  }

  private ExportAssistant.Told told() {
    return ExportAssistant.of(folder, files.clean(), TODAY);
  }

  private List<String> said(String text) {
    files.with("exports/S1/a.csv", text);
    return said();
  }

  /** The lines that are printed to be saved. */
  private static List<String> layout(List<String> said) {
    int at = 0;
    while (at < said.size() && !said.get(at).matches(".*save as layouts/\\S+:")) {
      at++;
    }
    return said.stream()
        .skip(at + 1L)
        .takeWhile(line -> line.startsWith("  "))
        .map(line -> line.substring(2))
        .toList();
  }

  /** The lines of a layout that count. */
  private static List<String> settings(List<String> said) {
    return layout(said).stream().filter(line -> !line.startsWith("#")).toList();
  }

  private void assertSays(List<String> said, String line) {
    assertTrue(said.contains(line), () -> String.join("\n", said));
  }

  private Exports read(String name, String layout) {
    files.with("exports/" + name + "/layout.properties", layout);
    return ExportReader.read(folder, files.clean(), Progress.NONE);
  }

  /** What stays open in the examples: which scale, and what in-store numbers and words mean. */
  @ParameterizedTest
  @MethodSource("makes")
  void theLayoutReadsTheExportOnceTheShopHasAddedWhatNobodyCanGuess(Path make) throws IOException {
    files
        .with("exports/make/a.csv", Files.readAllBytes(make.resolve("export.csv")))
        .with("exports/z.csv", Files.readAllBytes(make.resolve("expected.csv")));
    var lines = new ArrayList<>(layout(said()));
    for (String open :
        List.of("constant.scale=S1", "instore=21IIIIVWWWWWC", "value.status.2=", "column.net=")) {
      String key = open.substring(0, open.indexOf('=') + 1);
      if (lines.stream().noneMatch(line -> line.startsWith(key))) {
        lines.add(open.equals("column.net=") || open.equals("value.status.2=") ? "" : open);
      }
    }
    var layout = String.join("\n", lines);
    var exports = read("make", layout);
    assertEquals(List.of(), exports.notices(), layout);
    assertEquals(essences(exports, 1), essences(exports, 0), layout);
  }

  private static String essences(Exports exports, int file) {
    return exports.files().get(file).rows().stream()
        .map(ExportAssistantTest::essence)
        .collect(Collectors.joining("\n"));
  }

  private static String essence(ExportRow row) {
    return List.of(
            row.get(Field.TICKET),
            row.get(Field.TIME),
            row.get(Field.BODY),
            row.get(Field.NET),
            row.get(Field.GROSS),
            row.get(Field.TARE),
            row.get(Field.PIECES),
            row.broken().map(ENGLISH::of).orElse(""))
        .toString();
  }

  @Test
  void eachColumnIsToldWithItsReasonAndTheFirstRowsAsTheyWouldBeRead() {
    assertEquals(
        """
        exports/S1: 1 file, not read right yet.
          Columns: ticket "No", date "Datum", clock "Zeit", body "Tier", code "Art", net "Gewicht".
          Not used: "Preis" (12,50; 7,25).
          The first rows, and how each is read:
            1;14.07.2026;9:05;B17;ROAST;2,5;12,50
              = scale S1, ticket 1, time 2026-07-14T09:05, body B17, code ROAST, net 2.5 kg
            2;14.07.2026;9:06;A12;BONE;3,25;7,25
              = scale S1, ticket 2, time 2026-07-14T09:06, body A12, code BONE, net 3.25 kg
          2 rows from 2026-07-14T09:05 to 2026-07-14T09:06, of which 2 count, 5.75 kg in all.
          A layout that reads it so; save as layouts/S1.properties:
          # How the exports in exports/S1 are read.
          delimiter=;
          # The decimal mark is a comma.
          decimal=,
          column.ticket=No
          column.date=Datum
          date=d.M.yyyy
          column.clock=Zeit
          clock=H:mm
          column.body=Tier
          column.code=Art
          column.net=Gewicht

        """,
        String.join(
                "\n",
                said(
                    """
                    No;Datum;Zeit;Tier;Art;Gewicht;Preis
                    1;14.07.2026;9:05;B17;ROAST;2,5;12,50
                    2;14.07.2026;9:06;A12;BONE;3,25;7,25
                    """))
            + "\n");
  }

  @Test
  void aSavedLayoutIsConfirmedByTheSameView() {
    var export = "Nr;Zeit;Tier;Art;Netto\n1;2026-07-28 09:05;B17;ROAST;2,5\n";
    var layout = String.join("\n", layout(said(export)));
    files.with("layouts/S1.properties", layout);

    var said = said();

    assertSays(said, "exports/S1: 1 file, read by layouts/S1.properties.");
    assertSays(
        said,
        "  Columns: ticket \"Nr\", time \"Zeit\", body \"Tier\", code \"Art\", net \"Netto\".");
    assertSays(
        said,
        "      = scale S1, ticket 1, time 2026-07-28T09:05, body B17, code ROAST, net 2.5 kg");
    assertEquals(List.of(), layout(said));
  }

  @Test
  void anExportThatNeedsNoLayoutIsShownAsItIsRead() {
    var said = said("scale,ticket,time,body,code,net\nS1,1,2026-07-28T09:05,B17,ROAST,2.5\n");
    assertSays(said, "exports/S1: 1 file, read without a layout.");
    assertEquals(List.of(), layout(said));
  }

  @ParameterizedTest
  @CsvSource({"1, true", "2, false"})
  void aWrongFigureOfManyLeavesAColumnOneOfWeights(int wrong, boolean weights) {
    var text = new StringBuilder("scale,ticket,time,body,code,net\n");
    for (int i = 0; i < 60; i++) {
      String net = i < wrong ? "1.965O" : "%d.%03d".formatted(1 + i % 3, 5 * i);
      text.append("S1,%d,2026-07-27T10:00:%02d,B17,ROAST,%s\n".formatted(i, i, net));
    }

    var said = said(text.toString());

    assertEquals(
        weights, said.stream().noneMatch(l -> l.contains("No column is a weight")), said::toString);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // B17 was killed on 27 July.
        "08/03/2026|B17|M/d/yyyy",
        "03/08/2026|B17|d/M/yyyy",
        "07/31/2026|A12|M/d/yyyy",
        "28.07.26|B17|d.M.yy",
      })
  void killDatesAndTodaySettleWhichIsTheDay(String date, String body, String pattern) {
    var said = said("Date,Body,Code,Net\n" + date + "," + body + ",ROAST,2.5\n");
    assertTrue(settings(said).contains("date=" + pattern), () -> String.join("\n", said));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // 7 May 2026; 7 December 2025; 7 August 2026, after today, and 26 August 2007.
        "05/07/26|2026-07-01|bodies would be weighed before they were killed.",
        "07/12/2025|2025-07-10|bodies would be weighed more than 120 days after they were killed.",
        "07/08/26|2026-07-01|some rows would be dated after today; read otherwise bodies would be"
            + " weighed before they were killed.",
      })
  void theReasonForAnOrderIsWhatTheOtherOneWouldMean(String date, String killed, String reason) {
    files.with("bodies.csv", "body,species,killed\nB17,beef," + killed + "\n");
    var said = said("Date,Body,Code,Net\n" + date + ",B17,ROAST,2.5\n");
    assertTrue(
        said.stream().anyMatch(line -> line.endsWith(": read otherwise " + reason)),
        said::toString);
  }

  @ParameterizedTest
  @CsvSource({
    "Date,dd/mm/yy,01/02/26,d/M/yy",
    "Date,mm/dd/yyyy,01/02/2026,M/d/yyyy",
    "Datum,TT.MM.JJJJ,01.02.2026,d.M.yyyy",
    "Date,jj/mm/aaaa,01/02/2026,d/M/yyyy",
    "Datum,JJ-MM-TT,24-02-25,yy-M-d",
  })
  void aDateInLettersAboveTheRowsSettlesItsOrder(
      String name, String letters, String date, String pattern) {
    files.with("bodies.csv", "body,species\nB17,beef\n");
    String export = name + ";Body;Code;Net\n" + date + ";B17;ROAST;2.5\n";
    for (String head :
        List.of(letters + "\n" + export, export.replace(name, name + " (" + letters + ")"))) {
      var said = said(head);
      assertTrue(settings(said).contains("date=" + pattern), () -> String.join("\n", said));
      assertTrue(
          said.stream()
              .anyMatch(line -> line.endsWith("the head of the export says " + letters + ".")),
          said::toString);
    }
  }

  /** B18 was killed on 7 December; the computer says that it is August. */
  @Test
  void whereTheClockSaysTheContraryOfTheKillDatesItIsAsked() {
    files.with("bodies.csv", "body,species,killed\nB18,beef,2026-12-07\n");

    var said = said("Date,Body,Code,Net\n07/12/2026,B18,ROAST,2.5\n");

    assertTrue(settings(said).stream().noneMatch(line -> line.startsWith("date=")), said::toString);
    assertSays(said, "    date=d/M/yyyy");
    assertSays(said, "    date=M/d/yyyy");
  }

  /** ST is steady; GS and NT say whether the weight is gross or net, and T is before a tare. */
  @Test
  void whetherAWeightIsSteadyIsReadAndWhetherItIsGrossIsNot() {
    var said =
        said(
            """
            28.07.26,07:41:20,17803,B17,ROAST,ST,GS,+  10.00,kg,T   0.00
            28.07.26,07:46:08,17804,B17,BONE,ST,NT,+   2.60,kg,T   0.08
            28.07.26,07:50:28,17805,B17,ROAST,ST,NT,+   2.56,kg,T   0.08
            """);

    assertTrue(
        settings(said).containsAll(List.of("column.status=6", "column.net=8", "column.unit=9")),
        () -> String.join("\n", said));
    assertTrue(said.stream().noneMatch(line -> line.contains("To be answered")), said::toString);
  }

  @Test
  void whereASavedLayoutNamesTheColumnOfTheTicketNothingIsAsked() {
    files.with(
        "layouts/S1.properties",
        "column.ticket=No\ncolumn.time=When\ncolumn.body=Body\ncolumn.code=Code\ncolumn.net=Net\n"
            + "column.status=St\nvalue.status.D=void\ncolumn.voids=Ref\n");
    var said =
        said(
            """
            No,When,Body,Code,Net,St,Ref
            1,2026-07-28 09:00,B17,ROAST,2.5,,
            2,2026-07-28 09:01,B17,ROAST,2.5,D,1
            3,2026-07-28 09:02,B17,BONE,1.5,,
            """);

    assertTrue(said.stream().noneMatch(line -> line.contains("To be answered")), said::toString);
  }

  @Test
  void aColumnOfGrossAndOfNetWeightsIsNotTakenForEither() {
    var said =
        said(
            """
            No,When,Body,Code,Weight
            1,2026-07-28 09:00,B17,ROAST,12.75 kg G
            2,2026-07-28 09:01,B17,BONE,8.00 kg N
            3,2026-07-28 09:02,B17,ROAST,7.75 kg N
            """);

    assertTrue(settings(said).stream().noneMatch(l -> l.matches("column.net=.+")), said::toString);
    assertTrue(said.get(0).contains("not read right yet"), said::toString);
  }

  /** The number of a cut goes with its name, and so is not the number of a scale. */
  @Test
  void aLetterBehindTheUnitIsNoPartOfTheWeightAndANumberBesideItsNameIsNoScale() {
    files.with("scales.csv", "scale,unit,division\n");
    var said =
        said(
            """
            CONSEC,DATE,ID,ITEM,CODE,GROSS,TARE,NET
            5094,2026-07-28,B17,01,ROAST,12.75 lb G,2.50 lb PT,10.25 lb N
            5095,2026-07-28,B17,02,BONE,8.00 lb G,0.00 lb T,8.00 lb N
            5096,2026-07-28,B17,01,ROAST,7.75 lb G,2.50 lb PT,5.25 lb N
            """);

    assertTrue(
        settings(said).containsAll(List.of("column.ticket=CONSEC", "column.net=NET")),
        () -> String.join("\n", said));
    assertTrue(said.stream().anyMatch(l -> l.contains("23.50 lb in all")), said::toString);
    assertTrue(said.stream().noneMatch(l -> l.contains("To be answered")), said::toString);
  }

  /** No tare was taken off, so that only the labels tell gross from net. */
  @Test
  void labelsInTheRowsAreTheNamesOfColumns() {
    var said =
        said(
            """
            #0041 SC:S1 28-07-2026 12:17:25 ID: B17 CD: ROAST G: 12.5 T: 0.0 N: 12.5 kg
            #0042 SC:S1 28-07-2026 12:27:37 ID: B17 CD: BONE G: 11.0 T: 0.0 N: 11.0 kg
            #0043 SC:S2 28-07-2026 12:33:52 ID: B17 CD: ROAST G: 7.5 T: 0.0 N: 7.5 kg
            """);

    assertTrue(
        settings(said)
            .containsAll(
                List.of(
                    "column.scale=2",
                    "column.ticket=1",
                    "column.gross=10",
                    "column.tare=12",
                    "column.net=14")),
        () -> String.join("\n", said));
  }

  /** A row that is cancelled on a later day must not count because no row was at first. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "Date,Body,Code,Net,Status\n2026-07-28,B17,ROAST,2.5,Accepted\n2026-07-28,B17,BONE,1.5,Accepted\n",
        "2026-07-28 B17 ROAST 2.5 OK\n2026-07-28 B17 BONE 1.5 OK\n2026-07-28 B17 ROAST 3.5 OK\n",
      })
  void aStatusThatIsTheSameInAllRowsIsRead(String export) {
    var settings = settings(said(export));

    assertTrue(
        settings.contains("column.status=Status") && settings.contains("value.status.Accepted=ok")
            || settings.contains("column.status=5"),
        settings::toString);
  }

  @Test
  void namesOfFilesSettleWhichIsTheDay() {
    files
        .with("bodies.csv", "body,species\nB17,beef\n")
        .with("exports/S1/2026-02-01.csv", "Date,Body,Code,Net\n01/02/2026,B17,ROAST,2.5\n");
    assertTrue(settings(said()).contains("date=d/M/yyyy"));
  }

  @Test
  void whereNothingSettlesItBothReadingsAreShownAndNeitherIsUsed() {
    files.with("bodies.csv", "body,species\nB17,beef\n");
    var said = said("When,Body,Code,Net\n01/02/2026 09:05:11 AM,B17,ROAST,2.5\n");
    assertSays(said, "  1. To be answered: Which is the day and which the month in \"When\"?");
    assertSays(said, "    time=d/M/yyyy h:mm:ss a");
    assertSays(
        said, "      = scale S1, time 2026-02-01T09:05:11, body B17, code ROAST, net 2.5 kg");
    assertSays(said, "    time=M/d/yyyy h:mm:ss a");
    assertSays(
        said, "      = scale S1, time 2026-01-02T09:05:11, body B17, code ROAST, net 2.5 kg");
    assertTrue(settings(said).stream().noneMatch(line -> line.startsWith("time=")));
    // Read as it was printed, the row waits; then the question is asked again.
    var row = read("S1", String.join("\n", layout(said))).files().get(0).rows().get(0);
    assertEquals("01/02/2026 09:05:11 AM", row.get(Field.TIME));
    assertSays(said(), "  1. To be answered: Which is the day and which the month in \"When\"?");
  }

  @Test
  void americanShopsWithAmAndPmWriteTheMonthFirst() {
    files
        .with("bodies.csv", "body,species\nB17,beef\n")
        .with("shop.properties", ShopFiles.SETTINGS + "region=us\n");
    var said = said("When,Net\n01/02/2026 9:05 AM,2.5\n");
    assertTrue(settings(said).contains("time=M/d/yyyy h:mm a"), said.toString());
  }

  @Test
  void grossTareAndNetAreKnownByTheirSum() {
    var said = said("x,y,z\n2.75,0.25,2.5\n4.1,0.1,4\n");
    assertTrue(
        settings(said).containsAll(List.of("column.gross=x", "column.tare=y", "column.net=z")),
        said.toString());
  }

  @Test
  void aWeightBesideATareIsUsedOnlyWhenItIsSaidWhetherItIsNet() {
    var said = said("Date,Body,Code,Weight,Tare\n2026-07-28,B17,ROAST,2.5,0.1\n");
    assertSays(said, "    column.net=Weight");
    assertSays(said, "    column.gross=Weight");
    assertFalse(settings(said).contains("column.net=Weight"));
  }

  @ParameterizedTest
  @CsvSource({
    // 12460 is more than S1 can weigh in kilograms; nothing is known of S2.
    "S1, 12460, unit=g",
    "S2, 12460, column.net=",
    "S2, 12, column.net=Net",
  })
  void wholeNumbersMayBeGrams(String scale, String net, String line) {
    files.with(
        "exports/" + scale + "/a.csv",
        "When,Body,Code,Net\n2026-07-28 09:00,B17,ROAST," + net + "\n");
    assertTrue(settings(said()).contains(line), () -> String.join("\n", said()));
  }

  @Test
  void threeDigitsAfterAMarkAreDecimalsOfKilogramsAndThousandsOfGrams() {
    assertTrue(settings(said("x;Netto\na;12,460\nb;1,250\n")).contains("decimal=,"));
    var grams = settings(said("x;Netto g\na;12.460\nb;1.250\n"));
    assertTrue(grams.containsAll(List.of("decimal=,", "thousands=.")), grams.toString());
  }

  @Test
  void marksBeforeThreeDigitsInSomeRowsOnlyAreOfThousands() {
    var said =
        said("When,Body,Code,Net\n2026-07-28,B17,ROAST,\"1,315\"\n2026-07-28,B17,ROAST,835\n");
    assertTrue(
        settings(said).containsAll(List.of("thousands=,", "unit=g")),
        () -> String.join("\n", said));
  }

  @Test
  void aWordInTheFirstColumnMakesNoRowATotal() {
    var said =
        said(
            """
            State;When;Body;Code;Net
            ;2026-07-28;B17;ROAST;2.5
            Storno;2026-07-28;B17;ROAST;2.6
            ;2026-07-28;B17;ROAST;2.7
            Summe;;;;7.8
            """);
    assertTrue(
        settings(said).containsAll(List.of("value.status.Storno=void", "ignore=^\\s*(Summe)")),
        () -> String.join("\n", said));
  }

  @Test
  void aStatusThatIsCommonPracticeIsTranslatedAndAnyOtherIsAsked() {
    var said =
        said(
            """
            No,When,Body,Code,Net,Stab
            1,2026-07-28 09:00,B17,ROAST,2.5,ST
            2,2026-07-28 09:01,B17,ROAST,2.6,ST
            3,2026-07-28 09:02,B17,ROAST,2.7,ST
            4,2026-07-28 09:03,B17,ROAST,2.8,US
            5,2026-07-28 09:04,B17,ROAST,2.9,Storno
            """);
    assertTrue(
        settings(said).containsAll(List.of("value.status.ST=ok", "value.status.Storno=void")));
    assertTrue(said.containsAll(List.of("    value.status.US=ok", "    value.status.US=void")));
    assertSays(said, "    4,2026-07-28 09:03,B17,ROAST,2.8,US");
  }

  @Test
  void aPlainExportWithADoubtfulMarkIsAskedAboutToo() {
    var said =
        said(
            "ticket,time,scale,body,code,net,flag\n1,2026-07-28T09:05,S1,B17,ROAST,2.5,\n"
                + "2,2026-07-28T09:05,S1,B17,BONE,2.5,US\n");
    assertSays(
        said,
        "  1. To be answered: What does \"US\" in \"flag\" mean (1 of 2 rows): ok, such a weighing"
            + " counts, or void, it does not? Until then such a row is set aside.");
  }

  /** Nine rows, of which one has another word than the others. */
  private static String marked(String header, String usual, String other) {
    var text = new StringBuilder("ticket,time,scale,body,code,net," + header + "\n");
    for (int row = 1; row < 10; row++) {
      text.append(
          "%d,2026-07-28T09:0%d,S1,B17,%s,2.%d,%s\n"
              .formatted(row, row, row % 2 == 0 ? "BONE" : "ROAST", row, row == 5 ? other : usual));
    }
    return text.toString();
  }

  @Test
  void aColumnOfMarksThatNobodyKnowsIsAskedAboutWhateverItIsCalled() {
    var said = said(marked("motion", "STILL", "SWUNG"));
    assertSays(
        said,
        "exports/S1: 1 file, read without a layout. Questions to be answered: 1. Put the lines of"
            + " the right answers at the end of layouts/S1.properties.");
    assertTrue(
        said.stream().anyMatch(l -> l.contains("(few words, and most rows have the same)")),
        said.toString());
    assertTrue(
        layout(said).containsAll(List.of("column.status=motion", "value.status.STILL=ok")),
        () -> String.join("\n", said));
    assertSays(said, "    value.status.SWUNG=ok");
    assertSays(said, "    value.status.SWUNG=void");
  }

  @Test
  void aColumnOfMarksThatASavedLayoutPassesOverIsAskedAbout() {
    files.with("layouts/S1.properties", "column.net=net\n");
    assertSays(said(marked("motion", "STILL", "SWUNG")), "    column.status=motion");

    files.with("layouts/S1.properties", "column.net=net\ncolumn.status=\n");
    assertTrue(
        said().stream().noneMatch(line -> line.contains("To be answered")), said()::toString);
  }

  @ParameterizedTest
  @CsvSource({"operator, Ann, Bob", "motion, 1, 2", "motion, at rest, on the move"})
  void namesNumbersAndSentencesAreNoMarks(String header, String usual, String other) {
    var said = said(marked(header, usual, other));
    assertEquals(List.of(), layout(said), () -> String.join("\n", said));
  }

  @Test
  void wholeNumbersBesideAColumnOfUnitsAreWeights() {
    var said = said("1;2026-07-28 09:00;B17;ROAST;1285;g\n2;2026-07-28 09:01;B17;BONE;2460;g\n");
    assertTrue(
        settings(said).containsAll(List.of("column.net=5", "column.unit=6")), said::toString);
  }

  @Test
  void aTotalBelowTheRowsIsComparedWithThem() {
    // 1.285 + 2.460 + 3.105 = 6.850, without the row that is void and its ticket.
    String rows =
        "No,When,Body,Code,Net,Note\n1,2026-07-28 9:00,B17,ROAST,1.285,\n"
            + "2,2026-07-28 9:01,B17,BONE,1.995,\n2,2026-07-28 9:01,B17,BONE,1.995,void\n"
            + "3,2026-07-28 9:02,B17,BONE,2.460,\n4,2026-07-28 9:03,B17,BONE,3.105,\n";
    var right = said(rows + "Total,,,,6.850,\n");
    assertSays(
        right,
        "  exports/S1/a.csv ends with \"Total,,,,6.850,\": it agrees with the sum of its rows that count.");
    var wrong = said(rows + "Total,,,,9.350,\n");
    assertSays(
        wrong,
        "  exports/S1/a.csv ends with \"Total,,,,9.350,\": its rows that count come to 6.850,"
            + " 2.500 less, and all 5 to 10.840. Before you run, find the difference in the scale's"
            + " print: compare row by row, also the lines that are passed over.");
    assertSays(
        said(rows + "Total,,,,4.390,\n"),
        "  exports/S1/a.csv ends with \"Total,,,,4.390,\": its rows that count come to 6.850,"
            + " 2.460 more, and all 5 to 10.840. Before you run, find the difference in the scale's"
            + " print: does 3, which weighs as much, count?");
  }

  /** Five rows, of which the second is void and the third cancels it; then an end. */
  private static String withAVoid(String end) {
    return "No,When,Body,Code,Net,Note\n1,2026-07-28 9:00,B17,ROAST,1.285,\n"
        + "2,2026-07-28 9:01,B17,BONE,1.995,\n2,2026-07-28 9:01,B17,BONE,1.995,void\n"
        + "3,2026-07-28 9:02,B17,BONE,2.460,\n4,2026-07-28 9:03,B17,BONE,3.105,\n"
        + end
        + '\n';
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Total,,,,6.850,|sum of its rows that count.",
        "Total,,,,10.840,|sum of all 5 rows, of which 3.990 does not count: cancelled 2.",
        "Total,,,,8.845,|sum of all 5 rows but those that cancel, of which 1.995 does not count:"
            + " cancelled 2.",
        "Total,,,,5.565,|sum of those of its last 2 rows that count.",
        "Table,,,,5.565,|sum of those of its last 2 rows that count.",
        "3 records|number of its rows that count.",
        "5 records|number of all 5 rows, of which 2 do not count: cancelled 2.",
        "9 records|",
        "Total,,,,9.350,|",
      })
  void aTotalOrCountMayBeOfAllRowsOrOfThoseThatCount(String end, String what) {
    String export = withAVoid(end);
    if (end.contains("5.565")) {
      export = export.replace("3,2026", "Subtotal,,,,1.285,\n3,2026");
    }
    if (end.startsWith("Table")) {
      // The lines above the rows stand again at the top of a page.
      export = export.replace("4,2026", "Page 2\n4,2026");
    }
    files.with("layouts/S1.properties", String.join("\n", layout(said(export))));
    var said = said();
    if (what != null) {
      assertSays(said, "  exports/S1/a.csv ends with \"" + end + "\": it agrees with the " + what);
    }
    assertEquals(!end.contains("9.350"), told().isSettled(), said::toString);
  }

  @Test
  void cancelledWeighingsAreShownWithTheRowThatCancels() {
    int shown = said(withAVoid("")).indexOf("  Cancelled, so that they do not count:");
    assertEquals(
        "    exports/S1/a.csv:3 ticket 2, body B17, code BONE, net 1.995 kg: by exports/S1/a.csv:4",
        said().get(shown + 1));
    var none = said(withAVoid("").replace(",void", ",").replace("\n2,", "\n5,"));
    assertTrue(none.stream().noneMatch(line -> line.contains("Cancelled")), none::toString);
  }

  /** A total of all labels tells nothing of the label that was printed again. */
  @Test
  void whatAWordTakesAwayIsShownAndATotalOfAllRowsConfirmsNoAnswer() {
    var said =
        said(
            "No,When,Body,Code,Net,Status\n1,2026-07-28 9:00,B17,ROAST,1.285,\n"
                + "2,2026-07-28 9:01,B17,BONE,1.995,\n2,2026-07-28 9:02,B17,BONE,1.995,AGAIN\n"
                + "3,2026-07-28 9:03,B17,BONE,2.460,\nTotal,,,,7.735,\n");
    int answer = said.indexOf("    value.status.AGAIN=void");
    assertEquals(
        "      = also takes away exports/S1/a.csv:3 ticket 2, body B17, code BONE, net 1.995 kg",
        said.get(answer + 2));
    assertTrue(said.stream().noneMatch(line -> line.contains("only so")), said::toString);
  }

  @Test
  void aBlankInATotalIsAMarkOfThousandsOrStandsAfterACount() {
    // 785.6 + 642.6 = 1428.2
    String rows = "1;2026-07-28 09:00;B17;ROAST;785,6\n2;2026-07-28 09:01;B17;BONE;642,6\n";
    for (String total : List.of("1 428,2", "1\u00A0428,2", "1\u202F428,2", "1428,2")) {
      var said = said(rows + "Masa: " + total + " kg\n");
      assertTrue(
          said.stream().anyMatch(line -> line.endsWith("the sum of its rows that count.")),
          said::toString);
    }
    // Two rows that come to 428.2, and one figure behind the other.
    String light = rows.replace("785,6", "185,6").replace("642,6", "242,6");
    assertSays(
        said(light + "Total 2 428,2\n"),
        "  exports/S1/a.csv ends with \"Total 2 428,2\": it agrees with the sum of its rows that count.");
  }

  @Test
  void aTotalThatIsLessByTheCancellingRowsPointsToWhatTheyCancel() {
    // The total has none of the two roasts; void=own takes back only the second.
    String export =
        "No,When,Body,Code,Net,Note\n1,2026-07-28 9:00,B17,ROAST,1.285,\n"
            + "2,2026-07-28 9:01,B17,ROAST,1.285,ST\n3,2026-07-28 9:02,B17,BONE,2.460,\n"
            + "Total,,,,2.460,\n";
    var asked = said(export);
    int before = asked.indexOf("    void=before");
    assertTrue(
        asked.get(before + 3).contains("only so its rows come to the total"), asked::toString);

    files.with(
        "layouts/S1.properties",
        String.join("\n", layout(asked)) + "\nvalue.status.ST=void\nvoid=own\n");
    assertSays(
        said(),
        "  exports/S1/a.csv ends with \"Total,,,,2.460,\": its rows that count come to 3.745,"
            + " 1.285 more, and all 3 to 5.030. Its rows with the status void weigh as much: look at void= in its"
            + " layout.");
  }

  /** Weights in grams, a code of one letter, no header, no name anywhere. */
  @Test
  void aRailThatNamesNothingIsReadByItsStepsWithoutAQuestion() {
    files
        .with("scales.csv", "scale,unit,division\nrail,kg,0.2\n")
        .with(
            "exports/rail/a.dat",
            """
            2026-07-27 10:00\tB17\tW\t310000
            2026-07-27 10:07\tA12\tW\t280000
            2026-07-28 07:00\tB17\tK\t304800
            2026-07-28 07:05\tA12\tK\t275200
            2026-07-29 07:00\tB17\tL\t303400
            2026-07-29 07:05\tA12\tL\t273400
            """);
    var said = said();
    assertTrue(
        settings(said).containsAll(List.of("unit=g", "column.code=3", "column.net=4")),
        () -> String.join("\n", said));
    assertTrue(said.containsAll(List.of("    W,carcase,hot,", "    W,carcase,cold,")));
  }

  @Test
  void whereNoColumnIsAWeightEachThatMayBeIsAnAnswerWithItsUnit() {
    var said = said("When,Body,Code,Left,Right\n2026-07-28 09:00,B17,ROAST,1250,1300\n");
    assertSays(said, "  1. To be answered: Which column is the weight?");
    assertTrue(
        said.containsAll(List.of("    unit=g", "    column.net=Left", "    column.net=Right")),
        () -> String.join("\n", said));
  }

  /** Fields that one blank parts, and weights that many do; a star behind a weighing or two. */
  private static final String STARRED =
      """
      0001 280726 0905 B17 ROAST      1.305   0.020   1.285 kg
      0002 280726 0907 B17 ROAST      1.330   0.020   1.310 kg
      0003 280726 0912 A12 BONE       2.065   0.020   2.045 kg
      0004 280726 1016 A12 BONE       1.980   0.020   1.960 kg *
      0005 280726 1017 A12 ROAST      1.925   0.020   1.905 kg
      0006 280726 1018 B17 ROAST      1.015   0.020   0.995 kg
      """;

  @ParameterizedTest
  @ValueSource(strings = {"", "SUM    6   0.120   7.540 kg\n"})
  void aRareMarkBehindPrintedColumnsIsAColumnThatIsAskedAbout(String foot) {
    var said = said(STARRED + foot);
    var settings = settings(said);
    assertTrue(
        settings.containsAll(
            List.of("delimiter=any-blanks", "header=no", "column.net=8", "column.status=10")),
        () -> String.join("\n", said));
    assertSays(said, "    value.status.\\*=ok");
    assertSays(said, "    value.status.\\*=void");
    assertFalse(said.contains("    constant.date=name"));

    var rows =
        read("S1", String.join("\n", settings) + "\nvalue.status.\\*=void\n").files().get(0).rows();
    assertEquals(
        List.of("", "", "", "void", "", ""),
        rows.stream().map(row -> row.get(Field.STATUS)).toList());
    assertEquals("2026-07-28T10:16", rows.get(3).get(Field.TIME));
    assertTrue(rows.stream().allMatch(row -> row.broken().isEmpty()), rows::toString);
    assertTrue(
        said().stream().noneMatch(line -> line.contains("To be answered")), said()::toString);
  }

  @Test
  void aMarkMayStandInALaterFileOnly() {
    files.with("exports/S1/b.csv", STARRED.replaceAll("(?m)^0", "1").replace("07", "08"));
    var said = said(STARRED.replace(" *", ""));
    assertSays(said, "    value.status.\\*=void");
    assertTrue(settings(said).contains("column.status=10"), () -> String.join("\n", said));
  }

  @Test
  void aColumnOfMarksThatIsReadMayBeBlankInEveryFile() {
    var said = said(STARRED);
    var layout = String.join("\n", settings(said)) + "\nvalue.status.\\*=void\n";
    files.with("layouts/S1.properties", layout);
    var columns = said(STARRED.replace(" *", "")).stream().filter(l -> l.startsWith("  Columns:"));
    assertEquals(List.of(true), columns.map(line -> line.endsWith(", status column 10.")).toList());
  }

  /** The second word of a name is no mark. */
  @Test
  void aWordThatMayBeOfANameIsNoMark() {
    var said = said(STARRED.replace(" *", " bone"));
    assertFalse(settings(said).contains("column.status=10"), () -> String.join("\n", said));
  }

  @Test
  void whatAHalfWrittenLayoutIsMissingIsPrintedToBeAdded() {
    var half = "delimiter=any-blanks\nheader=no\ncolumn.date=2\ncolumn.ticket=1\n";
    files.with("layouts/S1.properties", half);
    var said = said(STARRED);
    String head = "  Lines that are missing in layouts/S1.properties; put them at its end:";
    assertSays(said, head);
    var missing =
        said.subList(said.indexOf(head) + 1, said.size()).stream()
            .takeWhile(line -> line.startsWith("  "))
            .map(String::strip)
            .toList();
    assertTrue(
        missing.containsAll(
            List.of(
                "date=ddMMyy", "column.clock=3", "clock=HHmm", "column.body=4", "column.net=8")),
        () -> String.join("\n", said));
    assertTrue(
        missing.stream()
            .noneMatch(l -> l.matches("delimiter=.*|header=.*|column.date=.*|.*ticket=1")),
        missing::toString);

    var layout = half + String.join("\n", missing) + "\nvalue.status.\\*=void\n";
    files.with("layouts/S1.properties", layout);
    assertFalse(said().contains(head));
    assertEquals(List.of(), read("S1", layout).notices());
  }

  @Test
  void ofAFileThatEndsInTheMiddleALayoutIsMissingNothing() {
    var whole =
        "delimiter=any-blanks\nheader=no\ncolumn.date=2\ndate=ddMMyy\ncolumn.clock=3\n"
            + "clock=HHmm\ncolumn.code=5\ncolumn.net=8\n";
    files.with("layouts/S1.properties", whole);
    var said = said(STARRED.replaceFirst("0.995 kg\n$", "0.9"));
    assertTrue(said.stream().noneMatch(line -> line.contains("missing")), said::toString);
  }

  @Test
  void ofAScaleByAnotherNameItIsAskedOnceWhichIsMeant() {
    var said =
        said(
            "Terminal,No,When,Body,Code,Net\nT1,1,2026-07-28 9:00,B17,ROAST,2.5\n"
                + "T2,2,2026-07-28 9:01,B17,BONE,2.6\n");
    assertSays(said, "  1. To be answered: Which scale of scales.csv is \"T1\"?");
    assertTrue(said.stream().noneMatch(line -> line.contains("lacks codes")), said::toString);
  }

  @ParameterizedTest
  @CsvSource({
    "Rump, 'rump,pack'",
    "Bones, 'bone,bin'",
    "Fat tub, 'fat,bin'",
    "Hot weight, 'carcase,hot'",
    "Topside (cap off), 'topside-cap-off,pack'",
    "Seasoning, ',added'",
    "Fat to bin, 'fat,bin'",
    "Sausage trim (tub), 'trim,tub'",
    "Carcass weight, 'carcase,hot'",
    "Carcass weight, 'carcase,cold'",
    "Cold smoked ham, 'ham,pack'",
    "Cold smoked ham, 'ham-boneless,pack'",
  })
  void theStepOfAMissingCodeIsProposedOnlyWhereItsNameTells(String name, String meaning) {
    if (name.endsWith("ham")) {
      files.with("bodies.csv", "body,species\nB17,pork\n");
    }
    var said =
        said(
            "No,When,Body,Code,Name,Net\n1,2026-07-28 9:00,B17,301,"
                + name
                + ",2.5\n"
                + "2,2026-07-28 09:01,B17,999,Odds,2.5\n");
    assertTrue(said.stream().anyMatch(l -> l.startsWith("    301," + meaning)), said::toString);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "When,Body,Code,Net;2026-07-28 09:00,B17,ROAST,2.5|identity=time,body,code,net",
        "No,When,Body,Code,Net;1,2026-07-28 9:00,B17,ROAST,2.5;2,2026-07-28 9:01,B17,ROAST,2.6;"
            + "1,2026-07-28 9:02,B17,ROAST,2.7;2,2026-07-28 9:03,B17,ROAST,2.8"
            + "|identity=ticket,time,body,code,net",
        "No,When,Body,Code,Net;1,1785196800000,B17,ROAST,2.5|time=epoch",
        "No,When,Body,Code,Net,Unit;1,2026-07-28 9:00,B17,ROAST,2.5,KGS|value.unit.KGS=kg",
        "No,When,Body,Code,Net;1,2026-07-28 9:00,B17,ROAST,2.5;2,2026-07-28 9:01,B17,ROAST,-2.5"
            + "|negative=void",
        "No,When,Body,Code,Net;1,2026-07-28 9:00,B17,ROAST,1'012.5|thousands=apostrophe",
        "No,Date,Body,Code,lb,oz;1,2026-07-28,B17,ROAST,12,5.5|column.ounces=oz",
        "No,Time,When,Body,Code,Net;,,,,,kg;1,9:00,2026-07-28,B17,ROAST,2.5|ignore=^\\s*(,,,,,kg)",
        "No,Date,Body,Code,Net;1,2026-07-28,B17,ROAST,2.5;-----;26 records"
            + "|ignore=^\\s*([^\\p{L}\\d]+$",
        "1,20260728,090500,B17,ROAST,2.5;2,20260728,090600,B17,ROAST,2.6|header=no",
        "1,20260728,090500,B17,ROAST,2.5;2,20260728,090600,B17,ROAST,2.6|clock=HHmmss",
        "No  Date        Code   Body  Net;1   2026-07-28  ROAST  B17   2.5;2   2026-07-28  ROAST"
            + "  B17   2.6;3   2026-07-28  ROAST  B17   2.7|delimiter=blanks",
      })
  void whatScalesWriteHasItsLine(String text, String line) {
    var said = said(text.replace(';', '\n') + "\n");
    assertTrue(
        settings(said).stream().anyMatch(setting -> setting.startsWith(line)),
        () -> String.join("\n", said));
  }

  @Test
  void cellsMayStandWithinApostrophes() {
    var said = said("'No','Date','Body','Net'\n'1','2026-07-28','B17','2.5'\n");
    assertTrue(settings(said).containsAll(List.of("quote='", "column.net=Net")), said.toString());
  }

  @Test
  void whereTwoColumnsFitAFieldItIsAskedAndNoneIsRead() {
    var said =
        said(
            "No,When,Body,Code,W1,W2\n1,2026-07-28 9:00,B17,ROAST,2.55,2.5\n"
                + "2,2026-07-28 9:05,B17,BONE,1.35,1.3\n");
    assertSays(
        said, "  1. To be answered: Several columns could be the net of a weighing. Which is it?");
    assertTrue(settings(said).contains("column.net="), said::toString);
  }

  @Test
  void withoutAHeaderAFieldThatIsKeptOutIsNoColumn() {
    var said = said("1,2026-07-28 9:00,B17,ROAST,2.55,2.5\n2,2026-07-28 9:05,B17,BONE,1.35,1.3\n");
    assertTrue(settings(said).contains("column.net="), said::toString);
    assertTrue(
        said.stream().noneMatch(line -> line.matches("  Columns: .*\\bnet .*")), said::toString);
  }

  @Test
  void aColumnThatIsTheSumOfTheRowsSoFarIsNoWeight() {
    // 2.5, 2.5 + 1.3 = 3.8, 3.8 + 4.1 = 7.9
    var said =
        said(
            "No,When,Body,Code,Sum A,Item A\n1,2026-07-28 9:00,B17,ROAST,2.5,2.5\n"
                + "2,2026-07-28 9:05,B17,BONE,3.8,1.3\n3,2026-07-28 9:06,B17,BONE,7.9,4.1\n");
    assertTrue(settings(said).contains("column.net=Item A"), said::toString);
  }

  @Test
  void timesThatAreAllAtTheBeginningOfTheirDayAreNamed() {
    String rows = "No,Date,At,Body,Code,Net\n1,28/07/2026,%s,B17,ROAST,2.5\n";
    String named =
        "  No row has a clock time: all count as 00:00. If a column has it, name it: column.clock=";
    assertSays(said(rows.formatted("early")), named);
    assertFalse(said(rows.formatted("9:00")).contains(named));
  }

  @Test
  void aClockWithAPointAndNoHeaderIsNoWeight() {
    var said =
        said(
            "1;28.07.2026;6.44;B17;ROAST;2.50\n2;28.07.2026;6.51;B17;BONE;1.35\n"
                + "3;28.07.2026;7.02;B17;ROAST;2.15\n4;28.07.2026;7.09;B17;ROAST;4.05\n");
    assertTrue(
        settings(said).containsAll(List.of("column.clock=3", "clock=H.mm", "column.net=6")),
        () -> String.join("\n", said));
  }

  @Test
  void aSubtotalIsPassedOverByItsOwnWordsAndNoRowOfItsDateIs() {
    var said =
        said(
            "Date,Body,Code,Net\n28 Jul 2026,B17,ROAST,2.5\n28 Jul 2026,B17,BONE,1.5\n"
                + "28 Jul 2026 beast so far 4.0\n28 Jul 2026,B17,ROAST,3.5\n"
                + "28 Jul 2026,B17,BONE,3.1\n28 Jul 2026 beast so far 10.6\n");
    assertTrue(
        settings(said).contains("ignore=^\\s*(.*beast.*so.*far)"), () -> String.join("\n", said));
  }

  @ParameterizedTest
  @CsvSource({
    // Clocks with seconds, without a leading zero, and a counter that looks like a clock.
    "0731 0744 1305, HHmm, 07:31",
    "0731 0731 0744, HHmm, 07:31",
    "073110 074420 130530, HHmmss, 07:31:10",
    "731 744 1305, Hmm, 07:31",
    "0701 0702 0703, HHmm, 07:01",
    "1305 0744 0731, HHmm, 13:05",
  })
  void bareDigitsThatMayBeTheClockOrCountTicketsAreAskedAboutAndReadAsNeither(
      String digits, String pattern, String clock) {
    var of = digits.split(" ");
    var said =
        said(
            "28.07.2026 %s B17 ROAST 1.285\n28.07.2026 %s B17 BONE 2.460\n28.07.2026 %s A12 ROAST 3.105\n"
                .formatted((Object[]) of));

    assertSays(
        said,
        "  1. To be answered: Is "
            + of[0]
            + " in column 2 a clock time, or does it count tickets?");
    assertTrue(
        said.containsAll(List.of("    column.clock=2", "    clock=" + pattern)), said::toString);
    assertSays(
        said,
        "      = scale S1, time 2026-07-28T" + clock + ", body B17, code ROAST, net 1.285 kg");
    assertSays(said, "    column.ticket=2");
    assertSays(
        said,
        "      = scale S1, ticket "
            + of[0]
            + ", time 2026-07-28T00:00, body B17, code ROAST, net 1.285 kg");
    assertEquals(List.of(), read("S1", String.join("\n", layout(said))).files().get(0).rows());
  }

  @Test
  void bareDigitsThatGoFromHourToHourBesideACounterAreTheClock() {
    var said =
        said(
            "28.07.2026 0731 4711 B17 ROAST 1.285\n28.07.2026 0744 4712 B17 BONE 2.460\n"
                + "28.07.2026 1305 4713 A12 ROAST 3.105\n");
    assertTrue(
        settings(said).containsAll(List.of("column.ticket=3", "column.clock=2", "clock=HHmm")),
        () -> String.join("\n", said));
    assertTrue(said.stream().noneMatch(line -> line.contains("To be answered")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"no;dd/mm;hh:mm;name;item;kg", "No;Jour;Heure;Bête;Art;Poids"})
  void aSecondHeadIsNoRow(String second) {
    var said =
        said(
            "No;Date;Time;Body;Code;Net\n"
                + second
                + "\n1;28/07/2026;9:05;B17;ROAST;2.5\n2;28/07/2026;9:06;B17;BONE;3.5\n");
    assertTrue(
        said.stream().anyMatch(line -> line.startsWith("  2 rows ")),
        () -> String.join("\n", said));
  }

  @ParameterizedTest
  @ValueSource(strings = {" ", "  ", "\t"})
  void aFootThatBeginsWithACountIsPassedOver(String gap) {
    String rows =
        "1;28.07.2026;9:05;B17;ROAST;1.285\n2;28.07.2026;9:06;B17;BONE;2.460\n"
            + "3;28.07.2026;9:07;A12;ROAST;3.105\n3;WEIGHINGS;SUM   6.850\n";
    var said = said(rows.replace(";", gap));
    assertTrue(
        settings(said).contains("ignore=^\\s*(\\d+\\s+WEIGHINGS)"), () -> String.join("\n", said));
    assertTrue(
        said.stream().anyMatch(line -> line.startsWith("  3 rows ")),
        () -> String.join("\n", said));
  }

  @ParameterizedTest
  @CsvSource({
    "CNCL 2, true, value.status.CNCL *=void:*",
    "VOID 2, true, value.status.VOID *=void:*",
    "WRONG 2, false, value.status.WRONG *=void:*",
    "CNCL 1, false, value.status.CNCL 1=void",
    "CNCL, false, value.status.CNCL=void"
  })
  void aWordBeforeTheTicketThatItCancelsIsReadSoOrAsked(
      String status, boolean settled, String line) {
    var said =
        said(
            "Txn,When,Body,Code,Wt,Flag\n1,2026-07-27 9:00,B17,BONE,2.5,OK\n"
                + "2,2026-07-27 9:01,B17,ROAST,1.34,OK\n3,2026-07-27 9:02,B17,ROAST,,"
                + status
                + "\n4,2026-07-27 9:03,B17,GROUND,2.2,OK\n5,2026-07-27 9:04,B17,GROUND,2.3,OK\n"
                + "1,2026-07-28 9:00,B17,BONE,2.6,OK\n2,2026-07-28 9:01,B17,BONE,2.7,OK\n"
                + "3,2026-07-28 9:02,B17,BONE,2.8,OK\n4,2026-07-28 9:03,B17,BONE,2.9,OK\n");

    assertTrue(settings(said).contains("column.ticket=Txn"), () -> String.join("\n", said));
    assertEquals(settled, settings(said).contains(line), () -> String.join("\n", said));
    assertEquals(!settled, said.contains("    " + line), () -> String.join("\n", said));
  }

  @Test
  void aLineWithFewCellsThatNamesATicketAboveIsARowAndItsMarkIsAsked() {
    var said =
        said(
            "Nr;Dag;Uur;Dier;Art;Netto;ST;Kenm\n419;27-07-2026;7:17;B17;ROAST;1,340;1;\n"
                + "420;27-07-2026;7:18;;;;;XYZ 419\n421;27-07-2026;7:19;B17;ROAST;1,450;1;\n"
                + "422;27-07-2026;7:20;B17;BONE;1,480;1;\n423;27-07-2026;7:21;B17;BONE;2,405;1;\n");

    assertTrue(
        settings(said).stream().noneMatch(line -> line.startsWith("ignore=")),
        () -> String.join("\n", said));
    assertSays(said, "    value.status.XYZ *=void:*");
  }

  @Test
  void aColumnOfSidesIsNoStatusOnceItIsReadAsSomethingElse() {
    var rows = new StringBuilder("No,When,Body,Code,Net,Half\n");
    for (int i = 0; i < 9; i++) {
      rows.append(
          "%d,2026-07-27 9:0%d,B17,ROAST,2.%d,%s\n".formatted(i, i, i, "L-R-----x".charAt(i)));
    }
    var said = said(rows.toString());
    assertTrue(
        said.stream().anyMatch(l -> l.contains("take out what stands behind column.status=")),
        () -> String.join("\n", said));
    var lines = String.join("\n", layout(said)).replace("column.status=Half", "column.pieces=Half");
    files.with(
        "layouts/S1.properties",
        lines + "\nvalue.pieces.L=1\nvalue.pieces.R=1\nvalue.pieces.-=2\nvalue.pieces.x=1\n");

    assertTrue(
        said().stream().noneMatch(l -> l.contains("status")), () -> String.join("\n", said()));
  }

  @ParameterizedTest
  @CsvSource({"K7, K7, true", "K7, '', false", "K7, K8, false", "yes, yes, false"})
  void aColumnThatLooksLikeBatchesIsAskedAboutUntilItIsAnswered(
      String one, String two, boolean asked) {
    files.with("codes.csv", "code,item,step\nROAST,rump,pack\nTRIM,trim,tub\nBONE,bone,bin\n");
    String rows =
        "No,When,Body,Code,Net,Sack\n1,2026-07-28 9:00,B17,ROAST,2.5,\n"
            + "2,2026-07-28 9:01,B17,TRIM,2.4,%s\n3,2026-07-28 9:02,B17,BONE,2.3,\n"
            + "4,2026-07-28 9:03,B17,TRIM,2.2,%s\n";
    var said = said(rows.formatted(one, two));
    assertEquals(asked, said.contains("    column.batch=Sack"), said.toString());
    files.with("layouts/S1.properties", String.join("\n", layout(said)) + "\ncolumn.batch=Sack\n");
    assertFalse(said().contains("    column.batch=Sack"));
  }

  @Test
  void aMistakeInALayoutRepeatsNoQuestionThatItAnswers() {
    var export =
        "When,Body,Code,Weight,Tare\n01/02/2026,A12,ROAST,2.5,0.1\n02/02/2026,A12,BONE,2.5,0.1\n";
    files.with("bodies.csv", "body,species\nA12,beef\n");
    var said = said(export);
    assertSays(said, "    column.net=Weight");
    var layout = String.join("\n", layout(said));
    for (String wrong : List.of("date=yyyy.MM.dd", "date=no pattern")) {
      files.with("layouts/S1.properties", layout + "\ncolumn.net=Weight\n" + wrong + "\n");
      assertFalse(said().contains("    column.net=Weight"), () -> String.join("\n", said()));
      assertEquals(List.of(), layout(said()));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"28/07", "28.07.", "28 Jul", "Jul 28"})
  void aDateWithoutAYearIsToldWithWhatToDo(String date) {
    var said = said("No,On,Body,Code,Net\n1," + date + ",B17,ROAST,2.5\n");
    assertSays(said, "    constant.date=name");
  }

  @Test
  void halfDaysAreReadAsSpanishWritesThem() {
    var said = said("No,Date,Time,Body,Code,Net\n1,28/07/2026,1:05 p. m.,B17,ROAST,2.5\n");
    assertTrue(
        said.stream().anyMatch(line -> line.contains("time 2026-07-28T13:05")), said::toString);
  }

  @Test
  void wholeNumbersWithoutAUnitAreAskedOfASavedLayoutToo() {
    files.with("layouts/S2.properties", "column.ticket=No\ncolumn.time=When\ncolumn.net=W\n");
    files.with("exports/S2/a.csv", "No,When,Body,Code,W\n1,2026-07-28 09:00,B17,ROAST,2550\n");
    var said = said();
    assertSays(
        said,
        "  1. To be answered: Are the whole numbers of \"W\" grams, or kg, or are the last digits"
            + " decimals without a point?");
    assertTrue(said.containsAll(List.of("    unit=g", "    unit=kg", "    column.net=W")));
  }

  @Test
  void aColumnOfTheTicketsThatVoidRowsCancelIsReadSo() {
    var said =
        said(
            "No,Kind,Of,When,Body,Code,Net\n1,WEIGH,,2026-07-28 9:00,B17,ROAST,2.5\n"
                + "2,WEIGH,,2026-07-28 9:01,B17,BONE,1.5\n"
                + "3,STORNO,1,2026-07-28 9:02,B17,ROAST,2.5\n");
    assertTrue(settings(said).contains("column.voids=Of"), said::toString);
    assertTrue(
        said.stream().anyMatch(line -> line.contains("ticket 3,") && line.endsWith("void:1")),
        said::toString);
  }

  @Test
  void aVoidOnATicketOfItsOwnBelowAnEqualRowIsAsked() {
    var said =
        said(
            "No,Kind,When,Body,Code,Net\n1,WEIGH,2026-07-28 9:00,B17,ROAST,2.5\n"
                + "2,WEIGH,2026-07-28 9:01,B17,BONE,1.5\n"
                + "3,STORNO,2026-07-28 9:02,B17,ROAST,2.5\n");
    assertTrue(
        settings(said).stream().noneMatch(line -> line.startsWith("value.status.STORNO=")),
        said::toString);
    assertTrue(
        said.stream().anyMatch(line -> line.contains("\"STORNO\" stands on ticket 3,")),
        said::toString);
  }

  @Test
  void aVoidRowThatEqualsTheOneBeforeItIsPointedOut() {
    var said =
        said(
            "No,When,Body,Code,Net,State\n1,2026-07-28 9:00,B17,ROAST,2.5,\n"
                + "2,2026-07-28 9:01,B17,ROAST,2.5,VOID\n");
    assertTrue(
        said.stream().anyMatch(line -> line.contains("Status \"VOID\" stands on ticket 2,")),
        said.toString());
    assertTrue(said.contains("    void=before"), said.toString());
  }

  @Test
  void aWordForAVoidInPlaceOfACodeIsAskedAboutAndIsNoCode() {
    String export =
        "No,When,Body,Code,Net\n1,2026-07-28 9:00,B17,ROAST,2.500\n"
            + "2,2026-07-28 9:01,B17,ROAST,2.400\n3,2026-07-28 9:02,----,CANCEL ONE,0.000\n"
            + "4,2026-07-28 9:03,B17,ROAST,2.200\n5,2026-07-28 9:04,B17,ROAST,2.100\n";
    var said = said(export);
    int last = said.indexOf("    void=last");
    assertEquals("    void.code=CANCEL ONE", said.get(last - 1), said::toString);
    assertEquals(
        "      = also takes away exports/S1/a.csv:3 ticket 2, body B17, code ROAST, net 2.400 kg",
        said.get(last + 2));
    assertTrue(said.contains("    void=own") && said.contains("    void.code="), said::toString);
    assertTrue(said.stream().noneMatch(l -> l.startsWith("    CANCEL ONE,")), said::toString);

    String lines = String.join("\n", layout(said)) + '\n';
    files.with("layouts/S1.properties", lines);
    var open = said();
    assertTrue(open.contains("    void=last"), open::toString);
    assertTrue(open.stream().noneMatch(l -> l.startsWith("    CANCEL ONE,")), open::toString);

    files.with("layouts/S1.properties", lines + "void.code=");
    var code = said();
    assertTrue(!code.contains("    void=last"), code::toString);
    assertTrue(code.stream().anyMatch(l -> l.startsWith("    CANCEL ONE,")), code::toString);
  }

  @Test
  void aVoidRowOfTheRowAboveItAddsNoWeightToATotal() {
    // 2.500 + 2.400 + 2.200 + 2.100 = 9.200, and 2.400 of it is cancelled.
    String export =
        "No,When,Body,Code,Net\n1,2026-07-28 9:00,B17,ROAST,2.500\n"
            + "2,2026-07-28 9:01,B17,ROAST,2.400\n3,2026-07-28 9:02,----,CANCEL ONE,0.000\n"
            + "4,2026-07-28 9:03,B17,ROAST,2.200\n5,2026-07-28 9:04,B17,ROAST,2.100\n"
            + "Total,,,,9.200\n";
    String lines = String.join("\n", layout(said(export))) + '\n';
    files.with("layouts/S1.properties", lines + "void.code=CANCEL ONE\nvoid=last\n");
    assertSays(
        said(),
        "  exports/S1/a.csv ends with \"Total,,,,9.200\": it agrees with the sum of all 5 rows, of which 2.400 does"
            + " not count: cancelled 2.");
  }

  @Test
  void aVoidRowOfNoWeightIsAskedWhetherItCancelsTheRowAboveIt() {
    var said =
        said(
            "No,When,Body,Code,Net,State\n1,2026-07-28 9:00,B17,ROAST,2.500,\n"
                + "2,2026-07-28 9:01,B17,BONE,0.000,VOID\n");
    assertTrue(
        said.stream().anyMatch(line -> line.contains("cancel the row just above it, ticket 1,")),
        said::toString);
    assertTrue(said.contains("    void=last"), said::toString);
  }

  @Test
  void aTotalIsNotComparedBeforeTheStatusIsAnswered() {
    var said =
        said(
            "No,When,Body,Code,Net,State\n1,2026-07-28 9:00,B17,ROAST,2.500,STILL\n"
                + "2,2026-07-28 9:01,B17,ROAST,2.400,STILL\n"
                + "3,2026-07-28 9:02,B17,ROAST,2.300,STILL\n"
                + "4,2026-07-28 9:03,B17,ROAST,2.500,SWUNG\nTotal,,,,9.700,\n");
    assertTrue(
        said.stream().anyMatch(line -> line.contains("\": not compared yet")), said.toString());
  }

  @ParameterizedTest
  @CsvSource({"'', true", "void=before, false", "void=own, false"})
  void aSavedLayoutIsAskedWhatALoneVoidCancels(String line, boolean asked) {
    files.with(
        "layouts/S1.properties",
        """
        column.ticket=No
        column.time=When
        time=yyyy-MM-dd H:mm
        column.body=Body
        column.code=Code
        column.net=Net
        column.status=State
        value.status.G=ok
        value.status.C=void
        """
            + line);
    var said =
        said(
            "No,When,Body,Code,Net,State\n1,2026-07-28 9:00,B17,ROAST,2.500,G\n"
                + "2,2026-07-28 9:01,B17,ROAST,2.500,C\n");
    assertEquals(asked, said.contains("    void=before"), said.toString());
  }

  @Test
  void anOwnerInEveryRowIsNotTakenForACustomerOfPacks() {
    var said = said("No,When,Body,Code,Net,Customer\n1,2026-07-28 9:00,B17,ROAST,2.5,ash\n");
    assertTrue(settings(said).contains("column.customer="), said.toString());
  }

  @Test
  void namesOfCutsAreCodesWhereThereAreNoOthers() {
    var said =
        said(
            "No,When,Body,Description,Net\n1,2026-07-28 9:00,B17,Rump,2.5\n"
                + "2,2026-07-28 9:01,B17,Chuck,2.5\n");
    assertTrue(settings(said).contains("column.code=Description"), said.toString());
  }

  @Test
  void anExportOfWindowsIsReadInItsCharacterSet() {
    files.with(
        "exports/S1/a.csv",
        "Stück;Netto;Datum;Tier;Code\n1;2,5;28.07.2026;B17;ROAST\n"
            .getBytes(Charset.forName("windows-1252")));
    assertTrue(
        settings(said()).containsAll(List.of("charset=windows-1252", "column.pieces=Stück")));
  }

  @Test
  void theDateMayStandInTheNameOfTheFile() {
    files.with("exports/S1/b_20260728.txt", "No,Clock,Body,Code,Net\n1,9:05,B17,ROAST,2.5\n");
    var said = said();
    assertTrue(settings(said).contains("constant.date=name"));
    assertSays(
        said,
        "      = scale S1, ticket 1, time 2026-07-28T09:05, body B17, code ROAST, net 2.5 kg");
  }

  @Test
  void aFileThatWasJoinedFromTwoHasItsHeaderOnlyOnce() {
    var said =
        said(
            "No,Date,Body,Code,Net\n1,2026-07-28,B17,ROAST,2.5\nNo,Date,Body,Code,Net\n"
                + "2,2026-07-29,B17,ROAST,2.5\n");
    assertTrue(said.stream().anyMatch(line -> line.startsWith("  2 rows ")), said.toString());
  }

  @Test
  void aRowThatLooksLikeAWeighingIsNeverPassedOver() {
    var said =
        said(
            """
            No,When,Body,Code,Net
            1,2026-07-28 09:00,B17,ROAST,2.5
            2,2026-07-28 09:01,B17,ROAST,2.6
            3,2026-07-28 09:02,B17,ROAST
            A4,2026-07-28 09:03,B17,ROAST,2.8
            """);
    assertTrue(
        settings(said).stream().noneMatch(line -> line.startsWith("ignore")), said.toString());
  }

  @Test
  void aTableDoesNotBeginBelowALineThatLooksLikeARow() {
    // A name of two words has a cell more where each blank parts cells.
    var said =
        said(
            """
            BLOCK 3
            1 2026-07-28 9:00:10 B17 HOT SIDE 148.35
            2 2026-07-28 9:01:20 B17 BONE 8.10
            3 2026-07-28 9:02:30 B17 BONE 7.95
            4 2026-07-28 9:03:40 B17 ROAST 2.55
            """);
    assertTrue(settings(said).contains("ignore=^\\s*(BLOCK)"), () -> String.join("\n", said));
    assertTrue(said.stream().anyMatch(l -> l.contains("1 2026-07-28 9:00:10")), said::toString);
  }

  /** A later file of the scale may begin with a weighing. */
  @Test
  void linesAboveATableWithoutAHeaderAreNotSkippedByTheirNumber() {
    var said =
        said(
            """
            POWER ON 28-07-2026
            0041,28-07-2026 9:00:10,B17,ROAST,2.50
            0042,28-07-2026 9:01:20,B17,BONE,8.10
            0043,28-07-2026 9:02:30,B17,ROAST,2.55
            """);
    assertTrue(settings(said).contains("ignore=^\\s*(POWER)"), () -> String.join("\n", said));
    assertTrue(settings(said).stream().noneMatch(l -> l.startsWith("skip")), said::toString);
  }

  @Test
  void anAfternoonInAColumnOfItsOwnKeepsTheClockOut() {
    var said =
        said(
            "No,Date,Time,Half,Body,Code,Net\n1,28/07/2026,1:05,PM,B17,ROAST,2.5\n"
                + "2,28/07/2026,1:06,PM,B17,BONE,2.4\n");
    assertTrue(settings(said).contains("column.clock="), () -> String.join("\n", said));
  }

  @Test
  void codesThatAreMissingAreReadyToPaste() {
    files.with("bodies.csv", "body,species\nB17,beef\n");
    var said =
        said(
            "No,When,Body,Code,Name,Net\n1,2026-07-28 09:00,B17,301,Rump,2.5\n"
                + "2,2026-07-28 09:01,B17,999,Odds,2.5\n");
    assertSays(said, "    301,rump,pack,Rump");
    assertSays(said, "    999,ITEM,STEP,Odds");
  }

  @Test
  void noCodeIsTakenForABinOrForAnItemOfAnotherSpeciesByALikeWord() {
    files.with("bodies.csv", "body,species\nB17,pork\n");
    var said =
        said(
            "No,When,Body,Code,Name,Net\n1,2026-07-28 9:00,B17,301,Fatt,2.5\n"
                + "2,2026-07-28 9:01,B17,302,Rump stek,2.5\n3,2026-07-28 9:02,B17,303,Bely,2.5\n");
    assertFalse(open(said).stream().anyMatch(line -> line.contains(",bin,")), said::toString);
    assertFalse(open(said).stream().anyMatch(line -> line.contains("rump,")), said::toString);
    assertTrue(open(said).contains("303,belly,pack,Belly"), said::toString);
  }

  /** The rows of codes that are not sure. */
  private static List<String> open(List<String> said) {
    return said.stream()
        .dropWhile(line -> !line.startsWith("codes.csv lacks these codes"))
        .skip(1)
        .takeWhile(line -> line.startsWith("    "))
        .map(String::strip)
        .toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"Rusk kg", "Skim", "Topsde", "Rump stek", "Kidny fat"})
  void aNameThatIsNearlyAnItemsIsNeverReadyToPaste(String name) {
    var said = said("No,When,Body,Code,Name,Net\n1,2026-07-28 9:00,B17,301," + name + ",2.5\n");
    assertTrue(
        said.stream().noneMatch(line -> line.contains("Look at these rows")), said::toString);
    assertTrue(open(said).stream().allMatch(line -> line.startsWith("301,")), said::toString);
    assertFalse(open(said).isEmpty(), said::toString);
  }

  @Test
  void anIngredientOfTheShopsOwnIsFoundAndAnyOtherIsSomethingAdded() {
    files.with("cuts.csv", "species,item,parent,name,kind\nbeef,rusk,carcase,Rusk,added\n");
    var said =
        said(
            "No,When,Body,Code,Name,Net\n1,2026-07-28 9:00,B17,301,RUSK,2.5\n"
                + "2,2026-07-28 9:01,B17,302,Salt,2.5\n3,2026-07-28 9:02,B17,303,Salt mix,2.5\n");
    assertSays(said, "    301,rusk,added,RUSK");
    assertSays(said, "    302,,added,Salt");
    assertTrue(open(said).contains("303,,added,Salt mix"), said::toString);
  }

  @Test
  void aCodeWithoutANameIsComparedAndMayBeAddedOrOfTheRailWhereItSaysNothing() {
    var said =
        said(
            "No,When,Body,Code,Net,Batch\n1,2026-07-28 9:00,B17,LN CHPS,2.5,\n"
                + "2,2026-07-28 9:01,A12,K,250.5,\n3,2026-07-28 9:02,B17,SHOLDR,2.5,\n"
                + "4,2026-07-28 9:03,,SEASN,0.5,M1\n");
    assertEquals(
        List.of("K,carcase,hot,", "K,carcase,cold,"),
        open(said).stream().filter(line -> line.startsWith("K,")).toList());
    assertTrue(open(said).contains("SHOLDR,blade,pack,Blade"), said::toString);
    assertFalse(open(said).contains("SHOLDR,carcase,hot,"), said::toString);
    assertFalse(open(said).contains("LN CHPS,carcase,hot,"), said::toString);
    assertTrue(open(said).contains("SEASN,,added,"), said::toString);
  }

  /** A record of the scale that takes another one back has no weight of its own. */
  private static final String TAKEN_BACK =
      "W;0001;28.07.2026;07:24:25;B17;Roast;6.10;0.35;5.75;kg;\n"
          + "W;0002;28.07.2026;07:33:08;B17;Mince;5.35;0.35;5.00;kg;\n"
          + "C;0003;28.07.2026;07:34:24;;;;;;;%s\n"
          + "W;0004;28.07.2026;07:35:38;B17;Mince;4.90;0.35;4.55;kg;\n"
          + "W;0005;28.07.2026;07:53:37;B17;Bone;3.20;0.35;2.85;kg;\n"
          + "E;0005\n";

  @Test
  void aRecordWithoutAWeightThatNamesANumberCancelsIt() {
    var said = said(TAKEN_BACK.formatted("0002"));
    assertSays(said, "  value.status.C=void");
    assertSays(said, "  column.voids=11");
    assertSays(
        said,
        "    exports/S1/a.csv:2 ticket 0002, body B17, code Mince, net 5.00 kg: by"
            + " exports/S1/a.csv:3, ticket 0003");
  }

  @Test
  void aRecordInTheMiddleOfTheCountIsNotPassedOver() {
    var said = said(TAKEN_BACK.formatted(""));
    assertTrue(said.stream().anyMatch(line -> line.contains("Status \"C\"")), said::toString);
    assertTrue(said.stream().noneMatch(line -> line.contains("ignore=^\\s*(C")), said::toString);
  }

  @Test
  void aNumberThatIsMostlyThatOfTheRowBeforeIsNoTicket() {
    var said =
        said(
            "Rec,When,ID1,ID2,Net\n318,2026-07-28 9:00,B17,1,97.3\n319,2026-07-28 9:02,B17,1,96.5\n"
                + "320,2026-07-29 9:02,B17,2,95.6\n321,2026-07-29 9:04,B17,2,94.7\n");
    assertTrue(
        said.stream()
            .anyMatch(line -> line.contains("ticket 318, time 2026-07-28T09:00, body B17")),
        said::toString);
  }

  /** Pages count weighings: nobody should believe that they count the bags in a tote. */
  @ParameterizedTest
  @ValueSource(strings = {"Pkgs", "Packs", "Pcs"})
  void whereAColumnMayBeOfPacksItIsSaidThatEachWeighingIsOne(String header) {
    var said =
        said(
            "No,When,Body,Code,"
                + header
                + ",Net\n1,2026-07-28 9:00,B17,RUMP,14,2.5\n2,2026-07-28 9:01,B17,BONE,1,3.5\n");
    assertSays(said, "  Each weighing counts as one pack, whatever \"" + header + "\" says.");
  }

  @Test
  void aColumnThatSaysWhichSideIsNoStatus() {
    var said =
        said(
            "2207;2026-07-28 8:42;B17;HOT;L;139.8\n2208;2026-07-28 8:45;B17;HOT;R;141.4\n"
                + "2209;2026-07-28 9:02;A12;HOT;-;81.6\n2210;2026-07-29 9:04;A12;COLD;-;79.8\n"
                + "2211;2026-07-29 9:06;A12;HOT;-;20.2\n2212;2026-07-29 9:08;A12;COLD;-;19.8\n");
    assertSays(said, "  Not used: column 5 (L; R; -).");
  }

  @Test
  void aColumnOfWordsNumbersNoWeighings() {
    var said =
        said(
            "Stamp,Lot,Weighing,Kg\n2026-07-28 9:00,B17,Beef side hot,150.2\n"
                + "2026-07-28 9:02,A12,Pig hot,80.4\n2026-07-29 9:02,A12,Pig cold,78.8\n");
    assertSays(
        said, "      = scale S1, time 2026-07-29T09:02, body A12, code Pig cold, net 78.8 kg");
  }

  @Test
  void aCodeWithACommaStandsInQuotes() {
    var said = said("No,When,Body,Code,Net\n1,2026-07-28 9:00,B17,\"BRISKET, BNLS\",2.5\n");
    assertSays(said, "    \"BRISKET, BNLS\",brisket,pack,Brisket");
  }

  /** G, T and N before weights that have their unit; a name has two words or three. */
  @Test
  void columnsSetByTwoBlanksKeepTheirWordsAndLettersBeforeWeightsAreNoUnit() {
    var said =
        said(
            "0611  07/28/2026  10:06 AM  ID B17   BEEF SIDE HOT   G  289.0 lb  T  7.5 lb  N  281.5 lb\n"
                + "0612  07/28/2026  10:09 AM  ID B17   BEEF SIDE HOT   G  285.5 lb  T  7.5 lb  N  278.0 lb\n"
                + "0613  07/28/2026  11:22 AM  ID A12   HOG HOT         G  191.0 lb  T  5.0 lb  N  186.0 lb\n"
                + "0614  07/29/2026  01:04 PM  ID A12   HOG COLD        G   64.0 lb  T  2.5 lb  N   61.5 lb\n");
    assertSays(
        said,
        "      = scale S1, ticket 0614, time 2026-07-29T13:04, body A12, code HOG COLD, net 61.5 lb,"
            + " gross 64.0 lb, tare 2.5 lb");
  }

  @Test
  void aPartWithAWordForItsStepIsReadyToPaste() {
    var said =
        said(
            "No,When,Body,Code,Unit,Net\n1,2026-07-28 9:00,B17,HOT SIDE,kg,152.5\n"
                + "2,2026-07-28 9:01,B17,BONE BARREL,kg,12.5\n");
    assertSays(said, "    HOT SIDE,side,hot,");
    assertSays(said, "    BONE BARREL,bone,bin,");
  }

  /** Leg is an item of lamb and of pork, and none of beef. */
  @Test
  void aNameThatNotEverySpeciesOfTheCodeHasIsNotReadyToPaste() {
    files.with("bodies.csv", "body,species\nB17,beef\nL1,lamb\nL2,lamb\n");
    var lamb = "No,When,Body,Code,Name,Net\n1,2026-07-28 9:00,L1,301,Leg,2.5\n";
    assertSays(said(lamb), "    301,leg,pack,Leg");
    assertEquals(List.of(), open(said(lamb)));
    assertFalse(open(said(lamb + "2,2026-07-28 9:01,B17,301,Leg,3.5\n")).isEmpty());
  }

  @Test
  void whatPagesCallTheItemsOfAChoiceIsSaid() {
    var said = said("No,When,Body,Code,Name,Net\n1,2026-07-28 9:00,B17,301,Rump stek,2.5\n");
    assertSays(said, "    301,rump-steak,pack,Rump steak");
  }

  /** In the us a page calls the item chuck "Chuck, boneless", which the word does not say. */
  @Test
  void aWordThatPagesOfTheRegionMakeMoreOfIsNotReadyToPaste() {
    files.with("shop.properties", ShopFiles.SETTINGS + "region=us\n");
    var said = said("No,When,Body,Code,Name,Net\n1,2026-07-28 9:00,B17,301,Chuck,2.5\n");
    assertTrue(open(said).contains("301,chuck,pack,\"Chuck, boneless\""), said::toString);
  }

  @Test
  void inStoreNumbersBesideCodeAndWeightNeedNoAnswer() {
    var said =
        said(
            "No,When,Body,Code,Net,EAN\n1,2026-07-28 9:00,B17,ROAST,2.5,2012030157959\n"
                + "2,2026-07-28 9:01,B17,ROAST,2.25,2012030157942\n");
    assertTrue(said.stream().noneMatch(line -> line.contains("To be answered")), said::toString);
    assertTrue(said.stream().anyMatch(line -> line.contains("Not used: \"EAN\"")), said::toString);
  }

  /** B17 was killed on the 27th: what is weighed then is hot, what is weighed later is cold. */
  @Test
  void aRailCodeIsHotOnTheDayOfTheKillAndColdLater() {
    var said =
        said(
            "No,When,Body,Code,Net\n1,2026-07-27 9:00,B17,R1,302.5\n"
                + "2,2026-07-28 9:00,B17,R2,296.5\n3,2026-07-28 10:00,B17,P1,2.5\n");
    assertEquals(
        List.of("P1,ITEM,STEP,", "R1,carcase,hot,", "R2,carcase,cold,"),
        open(said).stream().limit(3).toList());
  }

  /** 296.5 kg on the rail are more than twice 9,500 g, though 9,500 is the greater number. */
  @Test
  void weightsInTwoUnitsAreComparedAsWeights() {
    files.with("exports/S2/b.csv", "No,When,Body,Code,Unit,Net\n1,2026-07-29 9:00,B17,P1,g,9500\n");
    var said = said("No,When,Body,Code,Net\n1,2026-07-28 9:00,B17,R2,296.5\n");
    assertEquals(
        List.of("P1,ITEM,STEP,", "R2,carcase,cold,"), open(said).stream().limit(2).toList());
  }

  @Test
  void aSideThatIsHotIsNotOfferedAsCold() {
    var said =
        said(
            "No,When,Body,Code,Name,Net\n1,2026-07-28 9:00,A12,301,Hot sde,152.5\n"
                + "2,2026-07-28 9:02,A12,301,Hot sde,149.5\n");
    assertTrue(open(said).stream().anyMatch(line -> line.contains(",hot,")), said::toString);
    assertTrue(open(said).stream().noneMatch(line -> line.contains(",cold,")), said::toString);
  }

  @Test
  void rowsThatStandAgainAreSaidNotToCountTwice() {
    files.with("exports/S1/b.csv", "No,When,Body,Code,Net\n1,2026-07-28 9:00,B17,ROAST,2.5\n");
    assertSays(
        said("No,When,Body,Code,Net\n1,2026-07-28 9:00,B17,ROAST,2.5\n"),
        "  Rows that stand again, so that they do not count twice: 1; the first is"
            + " exports/S1/b.csv:2 ticket 1, body B17, code ROAST, net 2.5 kg.");
  }

  /** The count of the end line is right; its clock time is no weight of 164,030 g. */
  @Test
  void aClockTimeAtTheEndIsNoTotal() {
    var said =
        said(
            "No,When,Body,Code,Unit,Net\n1,2026-07-28 9:00,B17,ROAST,g,2500\n"
                + "2,2026-07-28 9:01,B17,ROAST,g,2600\nEND,0002,,16.40.30\n");
    assertSays(
        said,
        "  exports/S1/a.csv ends with \"END,0002,,16.40.30\": it agrees with the number of its rows that count.");
  }

  // Rows without a header.

  /** Counters of two scales, the second with a reprint; the codes are all that comes again. */
  private static final String LETTERED =
      """
      A004101 280726 0822 17 010 18.70 0.00 18.70 kg
      A004102 280726 0826 17 010 17.10 0.00 17.10 kg
      A004103 280726 0836 17 020 20.15 0.00 20.15 kg
      B009481 280726 0940 17 020 3.35 0.85 2.50 kg
      B009482 280726 0943 17 310 3.10 0.85 2.25 kg
      B009483 280726 0951 17 310 2.65 0.85 1.80 kg
      B009484 280726 0955 17 320 2.95 0.85 2.10 kg
      B009484 280726 0955 17 320 2.95 0.85 2.10 kg R
      B009485 280726 1002 17 330 3.45 0.85 2.60 kg
      B009486 280726 1009 17 330 4.05 0.85 3.20 kg
      """;

  private List<String> lettered() {
    files
        .with("bodies.csv", "body,species,killed\n17,beef,2026-07-27\n")
        .with("codes.csv", "code,item,step\n");
    return said(LETTERED);
  }

  @Test
  void aCounterMayHaveALetterAndATicketTwice() {
    assertTrue(settings(lettered()).contains("column.ticket=1"), () -> String.join("\n", said()));
  }

  @Test
  void theOneColumnThatComesAgainHasTheCodes() {
    assertTrue(settings(lettered()).contains("column.code=5"), () -> String.join("\n", said()));
  }

  @Test
  void aLetterBehindOneRowIsAskedFor() {
    var said = lettered();
    assertSays(said, "    value.status.R=repeat");
    assertTrue(settings(said).contains("column.status=10"), () -> String.join("\n", said));
  }

  @ParameterizedTest
  @CsvSource({"26209, true", "26207, false", "27210, false"})
  void fiveDigitsAreADayOfTheYearSoonAfterAKill(String day, boolean isDay) {
    var said =
        said(
            "W|00641|%1$s|07.02.15|B17|ROAST|2.5|KG\nW|00642|%1$s|07.17.10|B17|BONE|2.4|KG\n"
                .formatted(day));
    assertEquals(isDay, settings(said).contains("date=yyDDD"), () -> String.join("\n", said));
  }

  /** A gross weight and two tares, without a word on which is which. */
  @Test
  void aColumnThatMayBeTheTareOfAnotherIsAskedFor() {
    var rows = new StringBuilder();
    for (int i = 0; i < 9; i++) {
      rows.append(
          "S1,00321%d,28-JUL-26,08:1%d:22,B17,ROAST,+00002%d.%dkg,+000001.%dkg\n"
              .formatted(i, i, i, i, i % 2 + 1));
    }
    var said = said(rows.toString());
    assertSays(said, "    column.net=7");
    assertSays(said, "    column.gross=7");
    assertTrue(settings(said).contains("column.tare=8"), () -> String.join("\n", said));
    assertTrue(settings(said).contains("column.net="), () -> String.join("\n", said));
  }

  @Test
  void aLineThatMayTakeBackAWeighingIsPassedOverOnlyIfAPersonSaysSo() {
    String rows =
        "No,When,Body,Code,Net\n1,2026-07-28 9:00,B17,ROAST,2.5\nSubtotal,,,,2.5\n"
            + "2,2026-07-28 9:01,B17,ROAST,2.25\nDEL 2,2026-07-28 9:02\n"
            + "3,2026-07-28 9:03,B17,ROAST,2.0\n";
    var first = said(rows);
    assertTrue(settings(first).contains("ignore=^\\s*(Subtotal)"), first::toString);
    assertSays(first, "    ignore=^\\s*(DEL|Subtotal)");

    String layout = String.join("\n", layout(first)) + '\n';
    files.with("layouts/S1.properties", layout);
    assertSays(said(), "    ignore=^\\s*(Subtotal)|^\\s*(DEL)");

    files.with("layouts/S1.properties", layout.replace("(Subtotal)", "(Subtotal)|^\\s*(DEL)"));
    assertTrue(said().stream().noneMatch(line -> line.contains("Does \"DEL")), said()::toString);
  }

  @ParameterizedTest
  @ValueSource(strings = {"2,46\u00A0kg", "2,46\u202Fkg", "2,46 kg", "2,46kg"})
  void aHardBlankMayStandBeforeTheUnit(String net) {
    var said = said("No;When;Body;Code;Net\n1;2026-07-28 9:00;B17;ROAST;" + net + '\n');
    assertTrue(settings(said).contains("decimal=,"), said::toString);
    assertTrue(said.stream().anyMatch(line -> line.endsWith("net 2.46 kg")), said::toString);
  }

  // A folder of its own.

  @Test
  void aSecondFolderIsOfASecondScaleIfTheOnlyScaleHasItsOwn() {
    String rows =
        IntStream.range(0, 9)
            .mapToObj(i -> "%d,2026-07-28 9:0%d,B17,ROAST,%d.%d\n".formatted(i, i, 2 + i, i))
            .collect(Collectors.joining("", "No,When,Body,Code,Net\n", ""));
    files
        .with("scales.csv", "scale,where,unit,division\nS1,,kg,0.005\n")
        .with("exports/rail/r.csv", rows);
    var one = told();
    assertTrue(layout(one.lines()).contains("constant.scale=S1"), one::toString);
    var two = said(rows);
    assertSays(two, "    rail,kg,0.1");
    assertFalse(layout(two).contains("constant.scale=S1"), two::toString);
  }

  @ParameterizedTest
  @CsvSource({
    // Two sides of each, within minutes.
    "9:02, 151.5, 2026-07-28, side",
    // A hot and a cold weight, and a weight with that of a quarter.
    "9:02, 149.0, 2026-07-29, carcase",
    "9:02, 71.5, 2026-07-28, carcase",
  })
  void aRailCodeThatMostBodiesHaveTwiceIsOfSides(
      String clock, String second, String day, String item) {
    var said =
        said(
            "No,When,Body,Code,Net\n1,2026-07-28 9:00,B17,HOT,152.5\n2,%s %s,B17,HOT,%s\n"
                    .formatted(day, clock, second)
                + "3,2026-07-28 9:05,A12,HOT,150.5\n4,%s %s,A12,HOT,%s\n"
                    .formatted(day, clock, second));
    assertEquals(List.of(), open(said), () -> String.join("\n", said));
    assertSays(said, "    HOT," + item + ",hot,");
  }

  /** What hangs stands in another column, which names no scale. */
  @Test
  void hotAndColdInAColumnOfTheirOwnAreTheCodes() {
    var lines = new StringBuilder("No,When,Body,Piece,State,Net\n");
    for (int i = 0; i < 4; i++) {
      lines.append(
          "%d,2026-07-%d 9:0%d,B17,SIDE %s,%s,15%d.5\n"
              .formatted(
                  i, 27 + i / 2, i, i % 2 == 0 ? "LEFT" : "RIGHT", i < 2 ? "HOT" : "COLD", 4 - i));
    }
    var said = said(lines.toString());
    assertTrue(settings(said).contains("column.code=State"), said::toString);
    assertFalse(said.toString().contains("To be answered"), said::toString);
    assertSays(said, "    HOT,side,hot,");
    assertSays(said, "    COLD,side,cold,");
  }

  /** The last lines of a file stand again at the head of the next one. */
  @Test
  void numbersThatStandAgainInTheNextFileStillCount() {
    assertTrue(
        GuessFields.isCounting(List.of("11", "12", "13", "14", "15", "16", "15", "16", "17")));
    assertFalse(
        GuessFields.isCounting(List.of("11", "12", "13", "14", "15", "16", "18", "17", "19")));
  }

  @Test
  void aNameOfAnItemOfEachSpeciesNamesThemAll() {
    files.with("bodies.csv", "body,species\nB17,beef\nA12,lamb\n");
    var said =
        said(
            "No,When,Body,Code,Name,Net\n1,2026-07-28 9:00,B17,30,Keule,2.5\n"
                + "2,2026-07-28 9:01,A12,30,Keule,2.4\n3,2026-07-28 9:02,B17,31,Hüfte,2.3\n"
                + "4,2026-07-28 9:03,B17,32,Brust,2.2\n");
    assertSays(said, "    30,butt|leg,pack,Keule");
    assertSays(said, "    31,rump,pack,Hüfte");
  }

  /** The scale wrote its total before the correction. */
  @Test
  void aTotalIsComparedWithTheWeightsThatTheScaleWrote() {
    files
        .with(
            "layouts/S1.properties", String.join("\n", layout(said(withAVoid("Total,,,,6.850,")))))
        .with(
            "corrections.csv",
            "scale,ticket,field,value,by,on,reason\nS1,4,net,2.1,me,2026-07-28,with its tub\n");
    assertSays(
        said(),
        "  exports/S1/a.csv ends with \"Total,,,,6.850,\": it agrees with the sum of its rows that count.");
  }

  /** The second list begins with the last row of the first. */
  @Test
  void aTotalSaysWhichOfItsRowsCountInAnotherFile() {
    String header = "No,When,Body,Code,Net\n";
    String third = "3,2026-07-28 9:02,B17,BONE,2.460\n";
    files
        .with(
            "exports/S1/a.csv",
            header
                + "1,2026-07-28 9:00,B17,ROAST,1.285\n2,2026-07-28 9:01,B17,BONE,1.995\n"
                + third
                + "Total,,,,5.740\n")
        .with(
            "exports/S1/b.csv",
            header + third + "4,2026-07-28 9:03,B17,BONE,3.105\nTotal,,,,5.565\n");
    files.with("layouts/S1.properties", String.join("\n", layout(said())));
    var said = said();
    assertSays(
        said,
        "  exports/S1/a.csv ends with \"Total,,,,5.740\": it agrees with the sum of its rows that count.");
    assertSays(
        said,
        "  exports/S1/b.csv ends with \"Total,,,,5.565\": it agrees with the sum of its rows, some of them also in"
            + " other files, of which 2.460 does not count: repeated 3.");
  }

  /** The rail keys 231, and the bench the tag 4416. */
  @Test
  void whatATagNamesIsComparedWithTheCarcaseOfItsBody() {
    files
        .with("codes.csv", "code,item,step\n")
        .with("bodies.csv", "body,species,killed,tags\n231,lamb,2026-07-27,4416\n")
        .with(
            "exports/S1/a.csv",
            "No,When,Body,Code,Net\n1,2026-07-27 9:00,231,13,22.4\n2,2026-07-28 9:00,4416,30,6.67\n"
                + "3,2026-07-28 9:01,4416,31,5.20\n");
    assertEquals(List.of("13,carcase,hot,", "30,ITEM,STEP,", "31,ITEM,STEP,"), open(said()));
  }

  @ParameterizedTest
  @CsvSource({
    "CARC HOT,'carcase,hot'",
    "LAMB HOT,'carcase,hot'",
    "HOT LAMB BODY,'carcase,hot'",
    "SIDE L CHILLED,'side,cold'",
    "COLD LEFT,'side,cold'",
  })
  void wordsForTheRailAreReadyToPaste(String code, String meaning) {
    files
        .with("codes.csv", "code,item,step\n")
        .with("bodies.csv", "body,species\nB17,beef\nL1,lamb\n");
    String body = code.matches("SIDE.*|.*LEFT") ? "B17" : "L1";
    var said = said("No,When,Body,Code,Net\n1,2026-07-28 9:00," + body + ',' + code + ",22.5\n");
    assertSays(said, "    " + code + ',' + meaning + ',');
    assertEquals(List.of(), open(said));
  }

  /** Shoulder roast is an item of pork, which lamb has not. */
  @Test
  void aCodeOfTwoSpeciesIsOfferedWhatBothHave() {
    files
        .with("shop.properties", ShopFiles.SETTINGS + "region=us\n")
        .with("codes.csv", "code,item,step\n")
        .with("bodies.csv", "body,species\nL1,lamb\nP1,pork\n");
    var open =
        open(
            said(
                "No,When,Body,Code,Net\n1,2026-07-28 9:00,L1,SHLDR RST,2.5\n"
                    + "2,2026-07-28 9:01,P1,SHLDR RST,3.5\n"));
    assertTrue(open.contains("SHLDR RST,shoulder,pack,Shoulder"), open::toString);
    assertTrue(open.stream().noneMatch(line -> line.contains(",shoulder-roast,")), open::toString);
  }

  /** Customers take them home as often as nobody does. */
  @Test
  void ofBonesForTheKitchenItIsAskedWhetherTheyGoHome() {
    files.with("codes.csv", "code,item,step\n");
    assertEquals(
        List.of("SOUP BONES,stock-bones,bin,", "SOUP BONES,stock-bones,pack,Stock bones"),
        open(said("No,When,Body,Code,Net\n1,2026-07-28 9:00,B17,SOUP BONES,2.5\n")));
  }

  /** Its log begins with the last rows of the one before; else neither number counts up. */
  @Test
  void rowsWithWhichAFileGoesOnFromAnotherTellNothing() {
    String both = "105\t280726\t081500\tB17\tROAST\t2.45\n106\t280726\t081712\tB17\tBONE\t8.10\n";
    files
        .with(
            "exports/S1/L1.txt",
            "101\t270726\t092014\tB17\tROAST\t12.45\n102\t270726\t092309\tA12\tROAST\t12.30\n"
                + "103\t280726\t074431\tB17\tROAST\t2.60\n104\t280726\t080502\tB17\tBONE\t2.35\n"
                + both)
        .with(
            "exports/S1/L2.txt",
            both
                + "107\t280726\t091812\tB17\tBONE\t3.45\n108\t290726\t072330\tA12\tROAST\t2.55\n"
                + "109\t290726\t081812\tA12\tBONE\t1.45\n110\t290726\t082330\tA12\tROAST\t3.55\n");
    var settings = settings(said());
    assertTrue(
        settings.containsAll(
            List.of("column.ticket=1", "column.date=2", "column.clock=3", "clock=HHmmss")),
        settings::toString);
  }

  /** A letter on weights below zero says nothing that these do not say. */
  @Test
  void aMarkOnWeightsBelowZeroNeedsNoAnswer() {
    var told =
        files
            .with(
                "exports/S1/a.csv",
                "0041,2026-07-28 9:00,B17,ROAST,2.50,W,\n0042,2026-07-28 9:01,B17,BONE,8.10,W,\n"
                    + "0043,2026-07-28 9:02,B17,BONE,-8.10,C,0042\n"
                    + "0044,2026-07-28 9:03,B17,BONE,8.20,W,\n0045,2026-07-28 9:04,B17,ROAST,2.4,W,\n")
            .clean();
    var said = ExportAssistant.of(folder, told, TODAY).lines();
    assertTrue(
        settings(said)
            .containsAll(List.of("negative=void", "value.status.C=void", "column.voids=7")),
        said::toString);
    assertTrue(said.stream().noneMatch(line -> line.contains("To be answered")), said::toString);
  }

  /** Each scale writes a file of its own, and its name in every row. */
  @Test
  void aColumnWithOneValueAFileIsOfScalesAndNotOfCodes() {
    String rows =
        "%1$s,%2$d1,2026-07-28 9:0%2$d,B17,11,2.%2$d5\n%1$s,%2$d2,2026-07-28 9:1%2$d,B17,12,3.%2$d5\n"
            + "%1$s,%2$d3,2026-07-28 9:2%2$d,A12,11,2.%2$d0\n%1$s,%2$d4,2026-07-28 9:3%2$d,A12,14,4.%2$d5\n"
            + "%1$s,%2$d5,2026-07-28 9:4%2$d,A12,12,4.%2$d0\n%1$s,%2$d6,2026-07-28 9:5%2$d,A12,13,1.%2$d5\n";
    var shop =
        files
            .with("scales.csv", "scale,unit,division\n")
            .with("codes.csv", "code,item,step\n")
            .with("exports/hall/a.txt", rows.formatted("S1", 1))
            .with("exports/hall/b.txt", rows.formatted("S2", 2))
            .clean();
    var said = ExportAssistant.of(folder, shop, TODAY).lines();
    assertTrue(settings(said).contains("column.code=5"), said::toString);
    assertTrue(
        said.stream().anyMatch(l -> l.contains("Does column 1 (S1; S2) name the scales")),
        said::toString);
  }

  /** Who weighed stands in a column of words; it names no cut, and another column has numbers. */
  @Test
  void namesOfPeopleAreNotTakenForCodesBesideNumbers() {
    String rows =
        "No,When,Beast,Cod,Weight,By whom\n1,2026-07-28 9:00,B17,21,2.50,Siân\n"
            + "2,2026-07-28 9:01,B17,22,8.10,Siân\n3,2026-07-28 9:02,B17,21,2.60,Gwên\n";
    var said = said(rows);
    assertTrue(
        settings(said).stream().noneMatch(l -> l.equals("column.code=By whom")), said::toString);
    assertTrue(
        said.stream().anyMatch(l -> l.contains("Which column has the codes?")), said::toString);
    assertTrue(
        settings(said(rows.replace("Siân", "Rump").replace("Gwên", "Brisket")))
            .contains("column.code=By whom"));
  }

  /** Of a scale that is not known yet the point may be missing anywhere. */
  @Test
  void whereTheStepIsNotKnownAMissingPointIsOfferedAsWellAsGrams() {
    var shop =
        files
            .with("scales.csv", "scale,unit,division\n")
            .with(
                "exports/hall/a.csv",
                "No,When,Body,Code,Weight\n1,2026-07-28 9:00,B17,ROAST,250\n"
                    + "2,2026-07-28 9:01,B17,BONE,195\n")
            .clean();
    var said = ExportAssistant.of(folder, shop, TODAY).lines();
    for (String answer : List.of("unit=g", "unit=kg", "decimal=2", "decimal=1")) {
      assertSays(said, "    " + answer);
    }
  }

  /** The step of its weights is the same with the tare and without it. */
  @Test
  void aScaleIsReadyWhateverIsAnsweredOfItsWeights() {
    String rows =
        IntStream.range(0, 9)
            .mapToObj(i -> "%d,2026-07-28 9:0%d,B17,ROAST,%d.%d2,0.22\n".formatted(i, i, 2 + i, i))
            .collect(Collectors.joining("", "No,When,Body,Code,Weight,Tare\n", ""));
    var shop =
        files.with("scales.csv", "scale,unit,division\n").with("exports/hall/a.csv", rows).clean();
    var told = ExportAssistant.of(folder, shop, TODAY);
    assertTrue(
        told.lines().stream()
            .anyMatch(l -> l.contains("is it the weight without the tare or with")),
        told::toString);
    assertSays(told.lines(), "    hall,kg,0.02");

    var lines = new ArrayList<>(layout(told.lines()));
    lines.add("column.gross=Weight");
    files.with("layouts/hall.properties", String.join("\n", lines) + '\n');
    var answered = ExportAssistant.of(folder, files.clean(), TODAY).lines();
    assertTrue(answered.stream().noneMatch(l -> l.contains("To be answered")), answered::toString);
    assertSays(answered, "    hall,kg,0.02");
  }

  /** The first crate of ten was put on the scale before its key for the tare was pressed. */
  @Test
  void aTareThatWasForgottenIsSeen() {
    String rows =
        IntStream.range(0, 10)
            .mapToObj(
                i ->
                    "%d,2026-07-28 9:0%d,B17,ROAST,%d.%d50,%s\n"
                        .formatted(i, i, 2 + i, i, i == 0 ? "0.000" : "0.200"))
            .collect(Collectors.joining("", "No,When,Body,Code,Gross,Tare\n", ""));
    assertTrue(
        said(rows).stream()
            .anyMatch(
                l ->
                    l.startsWith(
                        "  Rows without a tare, though most have one: 1; the first is"
                            + " exports/S1/a.csv:2 ticket 0")),
        () -> String.join("\n", said(rows)));
    assertTrue(
        said(rows.replace("0.200", "0.000")).stream().noneMatch(l -> l.contains("without a tare")));
  }

  /** No cell tells which blank parts cells: ticket, date and clock are one blank apart. */
  @Test
  void oneBlankBetweenDigitsPartsCellsWhereTheFirstAreOneBlankApart() {
    var settings =
        settings(
            said(
                """
                0411 28/07/26 10:22  B17  EYE FILLET    2.35kg
                0412 28/07/26 10:25  B17  ROAST         3.40kg
                0413 28/07/26 10:31  A12  EYE FILLET    1.85kg
                0414 29/07/26 09:12  A12  BONE          8.10kg
                """));
    assertTrue(
        settings.containsAll(
            List.of(
                "delimiter=digit-blanks",
                "column.ticket=1",
                "column.date=2",
                "column.clock=3",
                "column.body=4",
                "column.code=5",
                "column.net=6")),
        settings::toString);
  }

  /** A line such as F|RAIL|20260728|2 ends each day. */
  @Test
  void aDayInAFootIsNoWeightAndItsCountIsCompared() {
    String rows =
        "1,20260728,0912,B17,ROAST,346\n2,20260728,0915,A12,ROAST,352\nF,RAIL,20260728,2\n";
    files.with(
        "layouts/S1.properties",
        "delimiter=,\nheader=no\nignore=^F\ncolumn.ticket=1\n"
            + "column.date=2\ndate=yyyyMMdd\ncolumn.clock=3\nclock=HHmm\ncolumn.body=4\n"
            + "column.code=5\ncolumn.net=6\n");
    assertSays(
        said(rows),
        "  exports/S1/a.csv ends with \"F,RAIL,20260728,2\": it agrees with the number of its rows that count.");
  }

  @Test
  void aTotalMayHoldARowThatACorrectionRemovesLater() {
    files
        .with(
            "layouts/S1.properties", String.join("\n", layout(said(withAVoid("Total,,,,6.850,")))))
        .with(
            "corrections.csv",
            "scale,ticket,field,value,by,on,reason\nS1,4,status,void,me,2026-07-28,weighed twice\n");
    assertSays(
        said(),
        "  exports/S1/a.csv ends with \"Total,,,,6.850,\": it agrees with the sum of its rows that count and those"
            + " that corrections.csv removes, of which 3.105 does not count: cancelled 4.");
    assertTrue(told().isSettled());
  }

  @Test
  void questionsAboutASavedLayoutAreAskedOfWhatItReads() {
    files.with(
        "layouts/S1.properties",
        """
        skip=2
        column.ticket=No
        column.time=When
        column.body=Body
        column.code=Code
        column.net=Drained
        column.status=State
        """);
    var said =
        said(
            """
            No,When,Body,Code,Net
            0,2026-07-28 08:00,B17,ROAST,9.5
            No,When,Body,Code,Net,Drained,State
            1,2026-07-28 09:00,B17,ROAST,2.5,2.4,G
            2,2026-07-28 09:01,B17,BONE,2.6,2.3,G
            3,2026-07-28 09:02,B17,ROAST,2.7,2.2,Q
            4,2026-07-28 09:03,B17,ROAST,2.8,2.1,G
            """);
    assertTrue(
        said.stream().anyMatch(line -> line.contains("net \"Drained\", status \"State\"")),
        () -> String.join("\n", said));
    assertSays(said, "    value.status.Q=void");
    assertSays(said, "    value.status.G=ok");
    assertTrue(
        said.stream()
            .anyMatch(l -> l.startsWith("      =") && l.endsWith("net 2.2 kg, status void")),
        () -> String.join("\n", said));
  }

  @Test
  void marksThatComeAsAPairAreAskedAboutOnce() {
    var rows = new StringBuilder("No,When,Body,Code,Net,Flag\n");
    for (int i = 0; i < 8; i++) {
      rows.append(
          "%d,2026-07-27 9:0%d,%s,%s,2.%d,%s\n"
              .formatted(
                  i,
                  i,
                  i % 4 < 2 ? "B17" : "A12",
                  i < 4 ? "ROAST" : "BONE",
                  i,
                  i < 4 ? List.of("LI", "RE").get(i % 2) : ""));
    }
    var said = said(rows.toString());
    assertEquals(
        1,
        said.stream().filter(line -> line.contains("To be answered")).count(),
        () -> String.join("\n", said));
    assertTrue(
        said.stream()
            .anyMatch(l -> l.contains("What do \"LI\" and \"RE\" in \"Flag\" mean (2 and 2 of 8")),
        () -> String.join("\n", said));
    int first = said.indexOf("    value.status.LI=ok");
    assertEquals("    value.status.RE=ok", said.get(first + 1));
  }

  @Test
  void aFileOutsideAnyFolderIsToldToMove() {
    files.with("exports/a.csv", "No;When;Body;Code;Net\n1;2026-07-28 09:00;B17;ROAST;2,5\n");
    assertSays(
        said(),
        "  Files directly under exports have no layout: make the folder exports/SCALE for them.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"one column\nonly\n", "x", "\"never closed\n"})
  void textWithoutColumnsIsSaidToBeSo(String text) {
    var said = said(text);
    assertSays(said, "  No comma, semicolon, tab, | or blanks divide its lines into columns.");
    assertEquals(List.of(), layout(said));
  }

  @Test
  void aBlankFileIsNotSpokenOf() {
    assertEquals(List.of(), said(" \n\n"));
  }

  @Test
  void lineEndsWithinCellsStayOutOfTheLayout() {
    var said = said("Net,\"Date\nof kill\"\n2.5,\"2026-02-01\"\n3.5,2026-02-02\n");
    assertTrue(settings(said).contains("column.date=2"), said.toString());
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void anyBytesGiveALayoutWithoutMistakesOrNone(long seed) {
    var random = new SplittableRandom(seed);
    for (int round = 0; round < 20; round++) {
      var bytes = new byte[1 + random.nextInt(400)];
      for (int i = 0; i < bytes.length; i++) {
        bytes[i] = (byte) ",;\t|\n\"19:./-aé \\=#".charAt(random.nextInt(18));
      }
      files.with("exports/S1/a.csv", bytes);
      var layout = layout(said());
      var notices = read("S1", String.join("\n", layout)).notices();
      files.without("exports/S1/layout.properties");
      assertTrue(
          notices.stream().noneMatch(notice -> notice.place().file().endsWith(".properties")),
          () -> notices + "\n" + String.join("\n", layout));
    }
  }
}
