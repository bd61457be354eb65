package gambrel.files.export;

import static gambrel.trade.notice.NoticeWords.ENGLISH;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.files.csv.TextLine;
import gambrel.files.folder.ShopFiles;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Place;
import gambrel.trade.reckoning.Progress;
import gambrel.trade.rows.ExportFile;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.Field;
import gambrel.trade.rows.RowCells;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Plain exports as rows of text, every line accounted for. */
class ExportReaderTest {
  private static final String HEADER = "scale,ticket,time,body,code,net\n";
  private static final String ROW = "S1,7,2026-07-01T09:00,B1,71,2.5";
  @TempDir Path folder;
  private ShopFiles files;

  @BeforeEach
  void start() {
    files = new ShopFiles(folder).with("exports/empty.csv", "");
  }

  private Exports read() {
    return ExportReader.read(folder, files.clean(), Progress.NONE);
  }

  private List<ExportRow> rows(String text) {
    files.with("exports/a.csv", text);
    var exports = read();
    assertEquals(List.of(), exports.notices());
    return exports.files().get(0).rows();
  }

  private ExportRow onlyRow(String text) {
    var rows = rows(text);
    assertEquals(1, rows.size(), rows::toString);
    return rows.get(0);
  }

  private static List<String> broken(List<ExportRow> rows) {
    return rows.stream()
        .map(r -> r.place().line() + " " + r.broken().map(ENGLISH::of).orElse(""))
        .toList();
  }

  @Test
  void aRowIsItsCellsByFieldWithItsPlaceAndText() {
    assertEquals(
        RowCells.row(
            new Place("exports/a.csv", 2),
            Map.of(
                Field.SCALE, "S1",
                Field.TICKET, "7",
                Field.TIME, "2026-07-01T09:00",
                Field.BODY, "B1",
                Field.CODE, "71",
                Field.NET, "2.5"),
            Optional.empty(),
            ROW),
        onlyRow(HEADER + ROW + "\n"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "scale,ticket,time,body,code,net\nS1,7,T,B1,71,2.5\n",
        "\uFEFFnet,ticket,colour,scale,time,body,code\r\n2.5,7,red,S1,T,B1,71\r\n",
        "scale;ticket;time;body;code;net\nS1;7;T;B1;71;2.5",
        "scale\tticket\ttime\tbody\tcode\tnet\nS1\t7\tT\tB1\t71\t2.5\n",
        "scale,ticket,time,body,code,net,,\n\"S1\" ,7,T,B1, 71 ,\" 2.5\",,\n"
      })
  void columnsMayStandInAnyOrderAndDelimiter(String text) {
    var row = onlyRow(text);
    assertEquals(
        "S1 7 T B1 71 2.5",
        String.join(
            " ",
            row.get(Field.SCALE),
            row.get(Field.TICKET),
            row.get(Field.TIME),
            row.get(Field.BODY),
            row.get(Field.CODE),
            row.get(Field.NET)));
  }

  @Test
  void blankLinesAreNoRowsAndBlankCellsNoEntries() {
    var row = onlyRow(HEADER + "\n  \n,,,,,2.5\n\n");
    assertEquals(Map.of(Field.NET, "2.5"), RowCells.of(row));
    assertEquals(4, row.place().line());
  }

  @Test
  void grossStandsInForAMissingNetColumn() {
    var row = onlyRow("scale,ticket,time,body,code,gross\nS1,7,T,B1,71,2.5\n");
    assertEquals("2.5", row.get(Field.GROSS));
  }

  @Test
  void onlyOptionalCellsMayBeMissingAtTheEnd() {
    var rows = rows("scale,ticket,time,body,code,net,tare,pieces\n" + ROW + "\nS1,8,T,B1,71\n");
    assertEquals(List.of("2 ", "3 it ends after 5 of 8 cells"), broken(rows));
  }

  @Test
  void moreCellsThanColumnsBreakARowThatStillTellsItsBody() {
    var row = onlyRow(HEADER + "S1,7,T,B1,71,2,5\n");
    assertEquals(
        Optional.of("it has 7 cells where the first line has 6"), row.broken().map(ENGLISH::of));
    assertEquals("B1", row.get(Field.BODY));
    assertEquals("", row.get(Field.NET));
  }

  @Test
  void aQuoteThatIsNeverClosedDoesNotSwallowTheFile() {
    var rows = rows(HEADER + "S1,6,T,B1,\"71,1\n" + ROW + "\n" + ROW + "\n");
    assertEquals(List.of("2 a quote is opened and not closed", "3 ", "4 "), broken(rows));
    assertEquals("B1", rows.get(0).get(Field.BODY));
  }

  @Test
  void aQuoteThatALaterRowSeemsToCloseDoesNotSwallowTheRowsBetween() {
    var rows = rows(HEADER + "S1,6,T,\"B1,71,1\n" + ROW + "\nS1,8,T,B1\",71,2\n" + ROW + "\n");
    assertEquals(4, rows.size());
    assertTrue(rows.get(0).broken().isPresent());
    assertEquals("7", rows.get(1).get(Field.TICKET));
  }

  @Test
  void twoStrayQuotesInARemarkDoNotMakeOneRowOfTwo() {
    var header = "scale,ticket,time,body,remark,code,net\n";
    var rows = rows(header + "S1,6,T,B1,\"oh,71,1\nS1,7,T,B1,oh\",71,2\n");
    assertEquals(List.of("2 a quote is opened and not closed", "3 "), broken(rows));
  }

  @Test
  void aQuotedNewlineMayStandInAnyColumn() {
    var text = "remark,scale,ticket,time,body,code,net\n\"a\nb\"," + ROW + "\n";
    assertEquals(List.of("2 "), broken(rows(text)));
  }

  @Test
  void aQuotedNewlineIsPartOfItsRow() {
    var text = "scale,ticket,time,body,code,net,remark\n" + ROW + ",\"a\nb\"\n" + ROW + ",\n";
    assertEquals(List.of("2 ", "4 "), broken(rows(text)));
  }

  @Test
  void nulAndBytesThatAreNoTextBreakTheirRowOnly() {
    var bytes =
        (HEADER + "S1\0,6,T,B1,71,1\nS1,6,T,B?,71,1\n" + ROW).getBytes(StandardCharsets.UTF_8);
    bytes[HEADER.length() + 16 + 9 - 1] = (byte) 0xFF;
    files.with("exports/a.csv", bytes);
    var rows = read().files().get(0).rows();
    assertEquals(
        List.of(true, true, false), rows.stream().map(r -> r.broken().isPresent()).toList());
  }

  @Test
  void aMonstrousLineIsOneBrokenRowWithAShortText() {
    var rows = rows(HEADER + "S1,6," + "9".repeat(3 * TextLine.LONGEST) + "\n" + ROW);
    assertEquals(2, rows.size());
    assertTrue(rows.get(0).broken().isPresent());
    assertEquals(500, rows.get(0).raw().length());
    assertEquals("6", rows.get(0).get(Field.TICKET));
  }

  @Test
  void aFileThatLacksAColumnIsOneNoticeAndNoneOfItsRowsIsUsed() {
    files.with("exports/a.csv", "\nscale,ticket,time,body,net\n1,2,3,B1,5\n1,2,3,B2,5\n");
    var exports = read();
    assertEquals(1, exports.notices().size());
    var notice = exports.notices().get(0);
    assertEquals(NoticeCode.EXPORT_UNREADABLE, notice.code());
    assertEquals(new Place("exports/a.csv", 2), notice.place());
    assertEquals(
        "it lacks the column code; its first line has scale, ticket, time, body, net",
        ENGLISH.message(notice));
    assertEquals(new ExportFile("exports/a.csv", List.of(), 2, false), exports.files().get(0));
  }

  @Test
  void aFirstLineThatIsNoHeaderIsARow() {
    files.with("exports/a.csv", ROW + "\n" + ROW + "\n");
    var exports = read();
    assertEquals(1, exports.notices().size());
    assertEquals(2, exports.files().get(0).leftOut());
  }

  @Test
  void ofTwoColumnsOfOneNameTheFirstIsReadAndNothingGoesOut() {
    files.with("exports/a.csv", "scale,ticket,time,body,code,net,net\nS1,7,T,B1,71,2,3\n");
    var notice = read().notices().get(0);
    assertEquals(NoticeCode.COLUMN_UNKNOWN, notice.code());
    assertTrue(ENGLISH.message(notice).startsWith("net stands twice"), ENGLISH.message(notice));
    assertEquals("2", read().files().get(0).rows().get(0).get(Field.NET));
  }

  @Test
  void filesAreReadInTheOrderOfTheirPathsBytes() {
    files
        .with("exports/b.csv", HEADER)
        .with("exports/a/z.CSV", HEADER)
        .with("exports/a-1.csv", HEADER)
        .with("exports/B.csv", HEADER)
        .with("exports/é.csv", HEADER)
        .with("exports/c", HEADER)
        .with("exports/d.TXT", HEADER)
        .with("exports/~e.csv", "not an export")
        .with("exports/a/layout.properties", "")
        .with("exports/.old/f.csv", "not an export")
        .with("exports/.hidden.csv", "not an export");
    assertEquals(
        List.of(
            "exports/B.csv",
            "exports/a-1.csv",
            "exports/a/z.CSV",
            "exports/b.csv",
            "exports/c",
            "exports/d.TXT",
            "exports/empty.csv",
            "exports/é.csv"),
        read().files().stream().map(ExportFile::path).toList());
  }

  @Test
  void aLinkIsNotFollowed() throws IOException {
    files.with("outside.csv", HEADER + ROW).with("exports/a.csv", HEADER + ROW);
    Files.createSymbolicLink(folder.resolve("exports/b.csv"), folder.resolve("outside.csv"));
    Files.createSymbolicLink(folder.resolve("exports/loop"), folder.resolve("exports"));
    var exports = read();
    assertEquals(
        List.of("exports/b.csv", "exports/loop"),
        exports.notices().stream().map(Notice::place).map(Place::file).toList());
    assertEquals(1, exports.files().get(0).rows().size());
  }

  @Test
  void withoutAnExportFolderThereAreNoRowsAndARemark() throws IOException {
    files.without("exports/empty.csv");
    Files.delete(folder.resolve("exports"));
    assertEquals(List.of(), read().files());
    assertEquals("exports", read().notices().get(0).place().file());
  }
}
