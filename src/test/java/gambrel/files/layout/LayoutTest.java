package gambrel.files.layout;

import static gambrel.trade.notice.NoticeWords.ENGLISH;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.files.csv.TextLine;
import gambrel.files.export.ExportReader;
import gambrel.files.export.Exports;
import gambrel.files.folder.ShopFiles;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Place;
import gambrel.trade.reckoning.Progress;
import gambrel.trade.rows.DecimalText;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.Field;
import gambrel.trade.rows.RowCells;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What each key of a layout makes of an export. */
class LayoutTest {
  private static final String SCALES =
      "scale,layout,unit,division\nS1,make,kg,0.005\nS2,,lb,0.01\n";
  private static final String HEADER = "ticket,time,body,code,net\n";
  private static final String ROW = "7,2026-07-01T09:00,B1,71,2.5\n";
  @TempDir Path folder;
  private ShopFiles files;

  @BeforeEach
  void start() {
    files = new ShopFiles(folder).with("scales.csv", SCALES);
  }

  private Exports read(String layout, String export) {
    return read(layout, export.getBytes(StandardCharsets.UTF_8));
  }

  private Exports read(String layout, byte[] export) {
    files.with("layouts/make.properties", layout).with("exports/S1/a.csv", export);
    return ExportReader.read(folder, files.clean(), Progress.NONE);
  }

  private List<ExportRow> rows(String layout, String export) {
    var exports = read(layout, export);
    assertEquals(List.of(), exports.notices());
    return exports.files().get(0).rows();
  }

  private ExportRow row(String layout, String export) {
    var rows = rows(layout, export);
    assertEquals(1, rows.size(), rows::toString);
    assertEquals(Optional.empty(), rows.get(0).broken());
    return rows.get(0);
  }

  /** The cell as an English notice quotes it. */
  private static String quoted(ExportRow row, Field field) {
    return row.quoted(field) instanceof Phrase why ? ENGLISH.of(why) : row.get(field);
  }

  private String cell(Field field, String layout, String column, String text) {
    var row = row(layout, "time,code," + column + "\n2026-07-01T09:00,71,\"" + text + "\"\n");
    assertEquals(row.unreadable().isEmpty(), DecimalText.of(row.get(field)).isPresent());
    return quoted(row, field);
  }

  private static String outline(ExportRow row) {
    var words = new StringBuilder();
    for (var field : Field.values()) {
      words.append(row.get(field).isEmpty() ? "" : field.id() + "=" + quoted(row, field) + " ");
    }
    return words.toString().strip();
  }

  @Test
  void theScaleOfTheFolderIsThatOfItsRows() {
    assertEquals(
        "scale=S1 ticket=7 time=2026-07-01T09:00 body=B1 code=71 net=2.5",
        outline(row("", HEADER + ROW)));
  }

  @Test
  void aLayoutInTheFolderGoesBeforeOneOfItsNameBeforeTheScales() {
    files
        .with("exports/S1/deeper/a.csv", HEADER + ROW)
        .with("layouts/make.properties", "constant.operator=scales");
    assertEquals("scales", onlyOperator());
    files.with("layouts/S1.properties", "constant.operator=name");
    assertEquals("name", onlyOperator());
    files.with("exports/S1/layout.properties", "constant.operator=own");
    assertEquals("own", onlyOperator());
  }

  private String onlyOperator() {
    var exports = ExportReader.read(folder, files.clean(), Progress.NONE);
    assertEquals(List.of(), exports.notices());
    return exports.files().get(0).rows().get(0).get(Field.OPERATOR);
  }

  @Test
  void aFolderThatIsNoScaleNeedsAColumnOrConstantForIt() {
    files
        .with("layouts/make.properties", "")
        .with("layouts/counter.properties", "")
        .with("exports/counter/a.csv", HEADER + ROW);
    var shop = files.clean();
    assertEquals(
        "it lacks the column scale; its first line has ticket, time, body, code, net",
        ENGLISH.message(ExportReader.read(folder, shop, Progress.NONE).notices().get(0)));
    files.with("layouts/counter.properties", "constant.scale=S2");
    assertEquals(List.of(), ExportReader.read(folder, shop, Progress.NONE).notices());
  }

  @Test
  void anExportWhoseLayoutIsMissingIsNotRead() {
    files.with("exports/S1/a.csv", "scale," + HEADER + "S1," + ROW);
    var exports = ExportReader.read(folder, files.clean(), Progress.NONE);
    assertEquals(NoticeCode.REFERENCE_UNKNOWN, exports.notices().get(0).code());
    assertEquals(1, exports.files().get(0).leftOut());
    assertEquals(NoticeCode.EXPORT_UNREADABLE, exports.notices().get(1).code());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "tab ! \t",
        "\\t ! \t",
        "; ! ;",
        "semicolon ! ;",
        "| ! |",
        "~ ! ~",
        ": ! :",
      })
  void cellsStandBetweenTheDelimiter(String delimiter, String c) {
    String mark = c == null ? "\t" : c;
    String layout = "delimiter=" + delimiter + "\ntime=yyyy-MM-dd HHmm\ncolumn.scale=Scale, No\n";
    String text = "scale, no;ticket;time;code;net\nS2;7;2026-07-01 0900;71;2.5\n";
    assertEquals(
        "scale=S2 ticket=7 time=2026-07-01T09:00:00 code=71 net=2.5",
        outline(row(layout, text.replace(";", mark))));
  }

  @Test
  void theQuoteMayBeAnotherOrNone() {
    String single = "quote='\n";
    assertEquals("7,8", row(single, HEADER + ROW.replace("B1", "'7,8'")).get(Field.BODY));
    String none = "quote=none\n";
    assertEquals("\"B1", row(none, HEADER + ROW.replace("B1", "\"B1")).get(Field.BODY));
  }

  @ParameterizedTest
  @CsvSource({
    "windows-1252, windows-1252",
    "UTF-16LE, UTF-16LE",
    "UTF-16, UTF-16",
    "UTF-8, UTF-8",
    "windows-1252, UTF-16",
    "'', UTF-16"
  })
  void theCharacterSetIsTheLayoutsOrTheByteOrderMarks(String declared, String written) {
    String layout = declared.isEmpty() ? "" : "charset=" + declared;
    var bytes = (HEADER + ROW.replace("B1", "Kuh Zoë")).getBytes(Charset.forName(written));
    assertEquals("Kuh Zoë", read(layout, bytes).files().get(0).rows().get(0).get(Field.BODY));
  }

  @Test
  void aByteOrderMarkIsNoText() {
    assertEquals("7", row("charset=windows-1252", "\uFEFF" + HEADER + ROW).get(Field.TICKET));
  }

  @Test
  void skippedIgnoredAndBlankLinesAreNoRows() {
    String layout = "skip=2\nignore=^(Total|Page \\d+|-+$)\n";
    var rows =
        rows(layout, "Day book\n\"\n\n" + HEADER + ROW + "-----\nTotal;1\n\n" + ROW + "Page 2\n");
    assertEquals(List.of(5, 9), rows.stream().map(row -> row.place().line()).toList());
  }

  @Test
  void aLineTooLongForATotalIsNeverIgnored() {
    String endless = "a".repeat(TextLine.LONGEST + 1);
    assertEquals(2, rows("ignore=^a+$", HEADER + endless + "\naaa\n" + ROW).size());
  }

  @Test
  void anExpressionThatIgnoresForEverIsGivenUpWithANotice() {
    var exports = read("ignore=^(a+)+\\1b", HEADER + ROW + "a".repeat(60) + "!\n" + ROW);
    assertEquals(NoticeCode.SETTING_BAD, exports.notices().get(0).code());
    assertEquals(
        "ignore takes too many steps on line 3 of exports/S1/a.csv",
        ENGLISH.message(exports.notices().get(0)));
    assertEquals(3, exports.files().get(0).rows().size());
  }

  @Test
  void withoutAHeaderColumnsAreKnownByNumber() {
    String layout = "header=no\ncolumn.time=1\ncolumn.code=3\ncolumn.net=2\n";
    var rows =
        rows(
            layout,
            "2026-07-01T09:00,2.5,71,x\n2026-07-01T09:01,2,5,71,x\n2026-07-01T09:02,3\n"
                + "2026-07-01T09:03,2.5,71,x\n");
    assertEquals("scale=S1 time=2026-07-01T09:00 code=71 net=2.5", outline(rows.get(0)));
    assertEquals(
        List.of("", "it has 5 cells where most rows have 4", "it ends after 2 of 4 cells", ""),
        rows.stream().map(row -> row.broken().map(ENGLISH::of).orElse("")).toList());
  }

  @Test
  void numbersMayPickColumnsOfAHeaderToo() {
    String layout = "column.time=2\ncolumn.code=Code\ncolumn.net=NETTO kg\n";
    assertEquals(
        "scale=S1 time=2026-07-01T09:00 code=71 net=2.5",
        outline(row(layout, "Code,when,Netto kg\n71,2026-07-01T09:00,2.5\n")));
  }

  @Test
  void aColumnOfAnOwnNameThatMeansSomethingElseCanBeLeftOut() {
    String text = "ticket,time,body,code,net,customer\n7,2026-07-01T09:00,B1,71,2.5,cash\n";
    assertEquals("cash", row("", text).get(Field.CUSTOMER));
    assertEquals("", row("column.customer=", text).get(Field.CUSTOMER));
    assertEquals("", row("column.operator=customer", text).get(Field.CUSTOMER));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "decimal=.                    | 2.50       | 2.50",
        "decimal=,                    | 2,50       | 2.50",
        "decimal=,                    | -2,5       | -2.5",
        "decimal=comma                | + 1,25     | 1.25",
        "thousands=comma              | 1,234.5    | 1234.5",
        "decimal=,;thousands=.        | 1.234,5    | 1234.5",
        "decimal=,;thousands=space    | 1 234,5    | 1234.5",
        "thousands='                  | 1'234.5    | 1234.5",
        "thousands=,                  | 1234.5     | 1234.5",
        "unit=lb                      | .5         | 0.5"
      })
  void numbersAreReadByTheDeclaredMarks(String layout, String text, String number) {
    assertEquals(number, cell(Field.NET, layout.replace(';', '\n'), "net", text));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "decimal=.         | 2,5",
        "decimal=.         | 1,234",
        "decimal=,         | 2.5",
        "decimal=,         | 1.234",
        "thousands=,       | 1,23",
        "thousands=,       | 1234,567",
        "thousands=,       | 1,234,56",
        "decimal=.         | 1 234",
        "decimal=.         | 1E3",
        "decimal=.         | 12 stone",
        "decimal=.         | 1234567890123",
        "unit=lb-oz        | 12",
        "unit=lb-oz        | 12 lb 16 oz",
        "unit=lb-oz        | 12.5 lb 3 oz",
        "unit=lb-oz        | 12 lb 1/3 oz",
        "unit=lb-oz        | 12 lb 5 3/2 oz"
      })
  void aNumberThatIsNotByTheMarksStaysTextThatNobodyCanTakeForOne(String layout, String text) {
    String cell = cell(Field.NET, layout, "net", text);
    assertTrue(cell.startsWith(text + " ("), cell);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "unit=lb-oz  | 12 lb 5 1/2 oz | 197.5   | oz",
        "unit=lb-oz  | 12lb 5.5oz     | 197.5   | oz",
        "unit=lb-oz  | 12 lbs. 5½ oz. | 197.5   | oz",
        "unit=lb-oz  | 12-5.5         | 197.5   | oz",
        "unit=lb-oz  | 12 lb          | 192     | oz",
        "unit=lb-oz  | 7/8 oz         | 0.875   | oz",
        "unit=lb-oz  | -1 lb 2 oz     | -18     | oz",
        "decimal=.   | 0 lb 2 oz      | 2       | oz",
        "decimal=.   | 1.25 kg        | 1.25    | kg",
        "decimal=.   | 1250 G         | 1250    | g",
        "decimal=,   | 2,75lb         | 2.75    | lb",
        "unit=g      | 1.25 kg        | 1.25    | kg"
      })
  void aUnitInTheCellIsTheRows(String layout, String text, String net, String unit) {
    var row = row(layout, "time,code,net\n2026-07-01T09:00,71,\"" + text + "\"\n");
    assertEquals(net + " " + unit, row.get(Field.NET) + " " + row.get(Field.UNIT));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1.25 kg | 1.35 kg | 100 g   |    | net=1250 gross=1350 tare=100 unit=g",
        "1.25    | 1.35    | 100 g   | kg | net=1250 gross=1350 tare=100 unit=g",
        "1 lb    | 18 oz   | 2 oz    |    | net=16 gross=18 tare=2 unit=oz",
        "1.25 kg | 1.25 kg | 0       |    | net=1.25 gross=1.25 tare=0 unit=kg",
        "1.25    | 1.35    | 0.1     | KG | net=1.25 gross=1.35 tare=0.1 unit=KG"
      })
  void theWeightsOfARowComeToOneUnit(
      String net, String gross, String tare, String unit, String outline) {
    String cells = String.join(",", net, gross, tare, unit == null ? "" : unit);
    var row = row("", "time,code,net,gross,tare,unit\n2026-07-01T09:00,71," + cells + "\n");
    assertTrue(outline(row).endsWith(outline), outline(row));
  }

  @ParameterizedTest
  @ValueSource(strings = {"1.25 kg,1.35,0.1,", "1 kg,2 lb,1 kg,", "1 kg,1 kg,0,lb"})
  void unitsThatCannotBelongTogetherAreNotReconciled(String cells) {
    var row = row("", "time,code,net,gross,tare,unit\n2026-07-01T09:00,71," + cells + "\n");
    assertTrue(outline(row).contains("("), outline(row));
  }

  @Test
  void theUnitOfALayoutIsThatOfRowsThatNameNone() {
    assertEquals(Optional.of(WeightUnit.LB), row("unit=lb", HEADER + ROW).unit());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "time=dd/MM/yyyy HH:mm     | 01/07/2026 09:05    | 2026-07-01T09:05:00",
        "time=d.M.yy H:mm:ss       | 1.7.26 9:05:10      | 2026-07-01T09:05:10",
        "time=MM/dd/yyyy hh:mm a   | 07/01/2026 09:05 pm | 2026-07-01T21:05:00",
        "time=dd-MMM-yyyy HH:mm    | 01-SEP-2026 09:05   | 2026-09-01T09:05:00",
        "time=yyyyMMddHHmmss       | 20260701090510      | 2026-07-01T09:05:10",
        "time=yyyy-MM-dd HH:mm xxx | 2026-07-01 09:05 +10:00 | 2026-07-01T09:05:00+10:00",
        "time=yyyy-MM-dd 'day' HH:mm | 2026-07-01 day 09:05 | 2026-07-01T09:05:00",
        "decimal=.                 | 2026-07-01 09:05    | 2026-07-01 09:05"
      })
  void timesAreReadByTheirPattern(String layout, String text, String iso) {
    var row = row(layout, "time,code,net\n" + text + ",71,2.5\n");
    assertEquals(iso, row.get(Field.TIME));
  }

  @ParameterizedTest
  @ValueSource(strings = {"31/02/2026 09:05", "2026-07-01T09:05", "01/07/26 09:05", "01/07/2026"})
  void aTimeThatIsNotByThePatternIsNotGuessed(String text) {
    var row = row("time=dd/MM/yyyy HH:mm", "time,code,net\n" + text + ",71,2.5\n");
    assertEquals(text + " (not by the layout's pattern)", quoted(row, Field.TIME));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "date=dd.MM.yyyy;clock=HHmm      | 01.07.2026 | 0905  | 2026-07-01T09:05",
        "column.date=date;column.clock=clock | 2026-07-01 | 9:05 | 2026-07-01T09:05",
        "date=dd.MM.yyyy;clock=h:mm a    | 01.07.2026 | 9:05 PM | 2026-07-01T21:05",
        "date=dd.MM.yyyy;clock=HH:mm | 1.7.2026   | 09:05 | 1.7.2026 09:05 (the date is not by the"
            + " pattern)",
        "date=dd.MM.yyyy;clock=HH:mm | 01.07.2026 | 9.05  | 01.07.2026 9.05 (the clock is not by"
            + " the pattern)",
        "date=dd.MM.yyyy;clock=HH:mm     | 01.07.2026 |       | 01.07.2026 (no clock time)",
        "date=dd.MM.yyyy;clock=HH:mm     |            | 09:05 | 09:05 (no date)",
        "date=dd.MM.yyyy;column.clock=   | 01.07.2026 | 09:05 | 2026-07-01T00:00"
      })
  void dateAndClockMayStandInTwoColumns(String layout, String date, String clock, String iso) {
    String cells = (date == null ? "" : date) + "," + (clock == null ? "" : clock);
    var row = row(layout.replace(';', '\n'), "date,clock,code,net\n" + cells + ",71,2.5\n");
    assertEquals(iso, quoted(row, Field.TIME));
  }

  @Test
  void foreignValuesBecomeOwnOnesAndOthersPass() {
    String layout =
        """
        column.status=State
        value.status.STORNO=void
        value.status.VOID SALE=void
        value.status.a\\=b\\:c=ok
        value.body.0000=
        value.unit.=lb
        """;
    String header = "State,time,body,code,net,unit\n";
    assertEquals("void", row(layout, header + "STORNO,T,B1,71,1,\n").get(Field.STATUS));
    assertEquals("void", row(layout, header + "VOID SALE,T,B1,71,1,\n").get(Field.STATUS));
    assertEquals("ok", row(layout, header + "a=b:c,T,B1,71,1,\n").get(Field.STATUS));
    assertEquals("Storno", row(layout, header + "Storno,T,B1,71,1,\n").get(Field.STATUS));
    assertEquals("", row(layout, header + "ok,T,0000,71,1,\n").get(Field.BODY));
    assertEquals("lb", row(layout, header + "ok,T,B1,71,1,\n").get(Field.UNIT));
  }

  @Test
  void constantsStandForBlankCells() {
    String layout = "constant.code=99\nconstant.operator=counter\n";
    var row = row(layout, "time,net,operator\nT,1,\n");
    assertEquals("scale=S1 time=T code=99 net=1 operator=counter", outline(row));
    assertEquals("Kim", row(layout, "time,net,operator\nT,1,Kim\n").get(Field.OPERATOR));
  }

  @Test
  void anIdentityIsItsFieldsAndTheTextsOfOtherColumns() {
    String header = "time,code,net,barcode\n";
    assertEquals(
        Optional.of(
            new ExportRow.Identity(Set.of(Field.SCALE, Field.TIME, Field.NET), List.of(""))),
        row("identity=time, barcode, net\n", header + "T,71,1.0,\n").identity());
    assertEquals(Optional.empty(), row("", "time,code,net\nT,71,1\n").identity());
  }

  @Test
  void aBarcodeTellsWhatOtherColumnsLeaveOpen() {
    String code = "]C131030001951326071410B17\u001D3006\u001D70021011";
    assertEquals(
        "scale=S1 time=2026-07-14T00:00 body=B17 code=1011 net=0.195 unit=kg pieces=6",
        outline(row("column.barcode=Label", "Label\n" + code + "\n")));
    assertEquals(
        "scale=S1 time=T body=B2 code=71 net=9 pieces=2",
        outline(
            row(
                "column.barcode=Label",
                "Label,time,body,code,net,pieces\n" + code + ",T,B2,71,9,2\n")));
  }

  @Test
  void aDateOfABarcodeJoinsAClock() {
    assertEquals(
        "2026-07-14T09:05",
        row("clock=HH:mm", "barcode,clock,code\n(13)260714(3103)000195,09:05,71\n")
            .get(Field.TIME));
  }

  @ParameterizedTest
  @CsvSource({
    "(3303)000195, 'barcode (gives a gross weight, not a net one)'",
    "(01)09520123456789, 'barcode (has a wrong check digit after (01): it should be 8)'"
  })
  void aBarcodeWithoutANetWeightIsNoWeight(String barcode, String net) {
    var row = row("", "barcode,time,body,code\n\"" + barcode + "\",T,B1,71\n");
    assertEquals(net, quoted(row, Field.NET));
  }

  @Test
  void aBarcodeThatCannotBeReadBreaksARowThatNeedsItAndNoOther() {
    String header = "barcode,time,body,code,net\n";
    assertEquals(Optional.empty(), row("", header + "garbage,T,B1,71,1\n").broken());
    assertEquals(
        Optional.of("its barcode has no known identifier at character 1"),
        rows("", header + "garbage,T,,71,1\n").get(0).broken().map(ENGLISH::of));
  }

  /** The odd digits from the right threefold, the others once: 47, so that 3 is missing. */
  @Test
  void inStoreNumbersGiveItemAndWeight() {
    String layout = "instore=20IIIIIWWWWWC\ninstore.decimals=2\nunit=lb\n";
    var row = row(layout, "barcode,time,body\n2004711012343,T,B1\n");
    assertEquals("time=T body=B1 code=04711 net=12.34", outline(row).replace("scale=S1 ", ""));
    assertEquals(Optional.of(WeightUnit.LB), row.unit());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "delimiter=ab",
        "delimiter=a",
        "quote=\" \"",
        "decimal=;",
        "thousands=x",
        "charset=klingon",
        "skip=-1",
        "header=perhaps",
        "ignore=(",
        "unit=stone",
        "time=dd/MM/yyyy",
        "time=dd/MM/yyyy hh:mm",
        "date=dd/mm/yyyy",
        "clock=HH:MM",
        "identity=colour",
        "instore=WC",
        "column.colour=2",
        "value.colour.x=y",
        "constant.colour=red",
        "column.net=0",
        "header=no\ncolumn.net=Net",
        "decimal=,\nthousands=,",
        "delimiter=;\nquote=;",
        "quote=;",
        "time=yyyy-MM-dd HH:mm\nclock=HH:mm"
      })
  void aLayoutWithAMistakeReadsNothingAndSaysWhere(String layout) {
    var exports = read(layout, HEADER + ROW);
    var bad = exports.notices().get(0);
    assertEquals(NoticeCode.SETTING_BAD, bad.code(), layout);
    assertEquals("layouts/make.properties", bad.place().file());
    assertTrue(bad.place().line() > 0);
    assertEquals(NoticeCode.EXPORT_UNREADABLE, exports.notices().get(1).code());
    assertEquals(List.of(), exports.files().get(0).rows());
  }

  @Test
  void aKeyThatMeansNothingIsARemark() {
    var exports = read("# a remark\nunti=lb\n", HEADER + ROW);
    assertEquals(
        List.of(new Place("layouts/make.properties", 2)),
        exports.notices().stream().map(notice -> notice.place()).toList());
    assertEquals(1, exports.files().get(0).rows().size());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"column.tare=Tara | Tara", "column.net=9 | 9", "column.code= | code"})
  void aFileThatLacksANamedOrNeededColumnDoesNotFit(String layout, String column) {
    var exports = read(layout, HEADER + ROW);
    assertEquals(
        "it lacks the column " + column + "; its first line has ticket, time, body, code, net",
        ENGLISH.message(exports.notices().get(0)));
    assertEquals(1, exports.files().get(0).leftOut());
  }

  @Test
  void blankCellsBeyondTheLastColumnAreNoFault() {
    assertEquals("2.5", row("", HEADER + ROW.replace("\n", ",,\n")).get(Field.NET));
  }

  @Test
  void aBrokenRowTellsOnlyWhoseItIs() {
    var row = rows("decimal=,", HEADER + "7,2026-07-01T09:00,B1,71,2,5\n").get(0);
    assertEquals(
        Map.of(
            Field.SCALE, "S1", Field.TICKET, "7", Field.TIME, "2026-07-01T09:00", Field.BODY, "B1"),
        RowCells.of(row));
  }

  @ParameterizedTest
  @CsvSource({
    "1784012345, 2026-07-14T06:59:05Z",
    "1784012345.25, 2026-07-14T06:59:05.25Z",
    "1784012345250, 2026-07-14T06:59:05.25Z"
  })
  void secondsOrMillisecondsSince1970AreTimes(String text, String time) {
    var row = row("time=epoch", "ticket,time,code,net\n7," + text + ",71,2.5\n");
    assertEquals(time, row.get(Field.TIME));
  }

  @Test
  void printedColumnsArePartedByTwoBlanksOrMore() {
    var rows =
        rows(
            "delimiter=blanks\ntime=yyyy-MM-dd HH:mm\n",
            """
            ticket  time               body  code      net
                 7  2026-07-01 09:00   B1    71      2.500 kg
                18  2026-07-01 09:05   B1    RUMP   12.500 kg
            """);
    assertEquals(
        "scale=S1 ticket=18 time=2026-07-01T09:05:00 body=B1 code=RUMP net=12.500 unit=kg",
        outline(rows.get(1)));
    assertEquals("7 2026-07-01 09:00 B1 71 2.500 kg", rows.get(0).raw());
  }

  @Test
  void aWeightBelowZeroVoidsTheNearestRowBeforeItWithThatWeight() {
    var rows =
        rows(
            "negative=void",
            HEADER
                + "7,2026-07-01T09:00,B1,71,2.5\n"
                + "8,2026-07-01T09:01,B1,71,2.50\n"
                + "9,2026-07-01T09:02,B1,72,2.5\n"
                + "10,2026-07-01T09:03,B1,71,-2.5\n"
                + "11,2026-07-01T09:04,B1,71,-2.5\n"
                + "12,2026-07-01T09:05,B1,71,-2.5\n");
    assertEquals(
        "scale=S1 ticket=8 time=2026-07-01T09:01 body=B1 code=71 net=2.50 status=void",
        outline(rows.get(3)));
    assertEquals("7 void", rows.get(4).get(Field.TICKET) + " " + rows.get(4).get(Field.STATUS));
    assertEquals("-2.5", rows.get(5).get(Field.NET));
  }

  @Test
  void aVoidRowCancelsTheNearestEqualRowBeforeItIfTheLayoutSaysSo() {
    String header = "ticket,time,body,code,net,status\n";
    String rows =
        "7,2026-07-01T09:00,B1,71,2.5,\n"
            + "8,2026-07-01T09:01,B1,71,2.5,\n"
            + "9,2026-07-01T09:02,B1,71,2.5,void\n"
            + "10,2026-07-01T09:03,B1,71,2.50,void\n"
            + "11,2026-07-01T09:04,B1,71,2.5,void\n"
            + "12,2026-07-01T09:05,B1,72,2.5,void\n";
    assertEquals("7 8 8 7 11 12", tickets(rows("void=before", header + rows)));
    assertEquals("7 8 9 10 11 12", tickets(rows("void=own", header + rows)));
  }

  @Test
  void aVoidRowCancelsTheRowJustAboveItWhateverItHoldsIfTheLayoutSaysSo() {
    var rows =
        rows(
            "void=last\nvoid.code=CANCEL|SCRATCH\nvoid.body=",
            "scale,ticket,time,body,code,net,status\n"
                + "S1,6,2026-07-01T08:59,,73,0.3,\n"
                + "S1,7,2026-07-01T09:00,B1,71,2.5,\n"
                + "S2,7,2026-07-01T09:01,B2,72,1.5,\n"
                + "S1,8,2026-07-01T09:02,,,0.000,void\n"
                + "S2,8,2026-07-01T09:03,***,CANCEL,,\n"
                + "S2,9,2026-07-01T09:04,***,SCRATCH,,\n");
    assertEquals(
        "scale=S1 ticket=7 time=2026-07-01T09:00 body=B1 code=71 net=2.5 status=void",
        outline(rows.get(3)));
    assertEquals(
        "scale=S2 ticket=7 time=2026-07-01T09:01 body=B2 code=72 net=1.5 status=void",
        outline(rows.get(4)));
    // The row above the last one is void itself: which weighing is meant nobody can say.
    assertEquals("FAULT.VOIDS_NONE", rows.get(5).broken().orElseThrow().key());
    assertEquals("", rows.get(0).get(Field.STATUS));
  }

  @ParameterizedTest
  @CsvSource({
    "decimal=2, 195, 1.95",
    "decimal=2, 7 kg, 0.07",
    "decimal=3, 1250, 1.250",
    "decimal=2, 1.9, 1.9",
    "decimal=., 195, 195"
  })
  void lastDigitsAreDecimalsIfTheLayoutSaysSo(String line, String net, String read) {
    String header = "ticket,time,body,code,net\n";
    var rows = rows(line, header + "7,2026-07-01T09:00,B1,71," + net + "\n");
    assertEquals(read, rows.get(0).get(Field.NET));
  }

  @Test
  void yearsAreThoseOfTheThaiCalendarIfTheLayoutSaysSo() {
    // 2567 is 2024, a leap year.
    String header = "ticket,time,body,code,net\n";
    var rows = rows("calendar=thai\ntime=d/M/yyyy H:mm", header + "7,29/02/2567 9:05,B1,71,2.5\n");
    assertEquals("2024-02-29T09:05:00", rows.get(0).get(Field.TIME));
  }

  private static String tickets(List<ExportRow> rows) {
    return rows.stream().map(row -> row.get(Field.TICKET)).collect(Collectors.joining(" "));
  }

  @Test
  void aLineAboveGivesAFieldToTheRowsBelowItUntilTheNextOne() {
    var rows =
        rows(
            "above.body=^Animal:\\s*(\\S*)",
            """
            ticket,time,code,net
            1,2026-07-01T09:00,71,2.5
            Animal: B1
            2,2026-07-01T09:01,71,2.5
            3,2026-07-01T09:02,71,2.5
            Animal:
            4,2026-07-01T09:03,71,2.5
            """);
    assertEquals(List.of("", "B1", "B1", ""), rows.stream().map(r -> r.get(Field.BODY)).toList());
  }

  @Test
  void aLineAboveMayStandAmongThoseThatAreSkipped() {
    var row =
        row(
            "skip=2\nabove.date=^Day (\\S+)\ndate=dd.MM.yyyy\ncolumn.clock=clock\n"
                + "column.ticket=ticket\ncolumn.body=body\ncolumn.code=code\ncolumn.net=net",
            "Day 03.07.2026\nAll weighings\nticket,clock,body,code,net\n7,9:05,B1,71,2.5\n");
    assertEquals("2026-07-03T09:05", row.get(Field.TIME));
  }

  @Test
  void anOmittedTextIsLeftOutOfTheCellsOfItsFieldOnly() {
    var row =
        row(
            "omit.body=No.\nomit.ticket=space",
            "ticket,time,body,code,net\n1 204,2026-07-01T09:00,No. B1,No.71,2.5\n");
    assertEquals(
        List.of("1204", "B1", "No.71"),
        List.of(row.get(Field.TICKET), row.get(Field.BODY), row.get(Field.CODE)));
  }

  @ParameterizedTest
  @CsvSource({"STORNO 0004, void:0004", "STORNO, STORNO", "STORNIERT 4, STORNIERT 4", "'', ''"})
  void aValueThatEndsInAStarKeepsTheRestOfTheCell(String cell, String status) {
    var row =
        row(
            "value.status.STORNO *=void:*",
            "ticket,time,body,code,net,status\n7,2026-07-01T09:00,B1,71,2.5," + cell + "\n");
    assertEquals(status, row.get(Field.STATUS));
  }

  @ParameterizedTest
  @CsvSource({"'',3,void:3", "void,3,void:3", "ok,3,ok", "void,'',void", "'','',''"})
  void aRowMayNameTheTicketThatItCancels(String status, String voids, String read) {
    var row =
        row(
            "column.voids=of",
            "ticket,time,body,code,net,status,of\n7,2026-07-01T09:00,B1,71,2.5,%s,%s\n"
                .formatted(status, voids));
    assertEquals(read, row.get(Field.STATUS));
  }

  /** Day 1 is 1 January 1900, day 61 is 1 March: spreadsheets count a 29 February 1900. */
  @ParameterizedTest
  @CsvSource({
    "61,1900-03-01T00:00:00",
    "61.5,1900-03-01T12:00:00",
    "'45292,25',2024-01-01T06:00:00",
    "45292.000011574,2024-01-01T00:00:01"
  })
  void daysAreCountedAsSpreadsheetsDo(String cell, String time) {
    var row = row("time=days", "ticket,time,body,code,net\n7,\"" + cell + "\",B1,71,2.5\n");
    assertEquals(time, row.get(Field.TIME));
  }

  @ParameterizedTest
  @ValueSource(strings = {"-1", "110000", "1e4", "noon"})
  void whatIsNoDayNumberIsNoTime(String cell) {
    var row = row("time=days", "ticket,time,body,code,net\n7," + cell + ",B1,71,2.5\n");
    assertTrue(row.unreadable().containsKey(Field.TIME));
  }

  @ParameterizedTest
  @CsvSource({"'3,415-',-3.415", "3.415 -,refused", "'-3,415-',refused", "'-3,415',-3.415"})
  void aMinusMayStandBehindANumber(String cell, String net) {
    var row =
        row(
            "decimal=,\ndelimiter=;",
            "ticket;time;body;code;net\n7;2026-07-01T09:00;B1;71;" + cell + "\n");
    assertEquals(net, row.unreadable().isEmpty() ? row.get(Field.NET) : "refused");
  }

  @Test
  void anyBlanksPartCells() {
    var row =
        row(
            "delimiter=any-blanks\nheader=no\ncolumn.ticket=1\ncolumn.time=2\ncolumn.body=3\n"
                + "column.code=4\ncolumn.net=5",
            "   7 2026-07-01T09:00   B1  71      2.5  \n");
    assertEquals("B1", row.get(Field.BODY));
    assertEquals("2.5", row.get(Field.NET));
  }

  private static final String PRINTED =
      "delimiter=any-blanks\nheader=no\ncolumn.time=1\ncolumn.code=2\ncolumn.net=3\n";

  @Test
  void whereBlanksPartCellsALastOneMayBeMissingInTheFirstLineAndElsewhere() {
    var layout = PRINTED + "column.status=4\nvalue.status.\\*=void\n";
    var marked = "2026-07-01T09:00 71  2.5\n2026-07-01T09:01 71  2.6 *\n2026-07-01T09:02 71  2.7";
    for (String export : List.of(marked, marked.replace("*", ""))) {
      var rows = rows(layout, export);
      assertEquals(
          List.of("", export.contains("*") ? "void" : "", ""),
          rows.stream().map(row -> row.get(Field.STATUS)).toList());
      assertTrue(rows.stream().allMatch(row -> row.broken().isEmpty()), rows::toString);
    }
    assertEquals(
        "it has 5 cells where most rows have 4",
        rows(layout, marked.replace("*", "* *")).get(1).broken().map(ENGLISH::of).orElse(""));
  }

  /** A scale that no longer prints a column must not be read as if it were blank. */
  @ParameterizedTest
  @CsvSource({"any-blanks, body, 4", "any-blanks, status, 6", "comma, status, 4"})
  void anyOtherColumnBehindTheFirstLineIsLacking(String delimiter, String column, int number) {
    var layout = PRINTED.replace("any-blanks", delimiter) + "column.%s=%d\n";
    var export = "2026-07-01T09:00 71 2.5\n2026-07-01T09:01 71 2.6\n";
    var notices =
        read(
                layout.formatted(column, number),
                delimiter.equals("comma") ? export.replace(' ', ',') : export)
            .notices();
    assertEquals(
        List.of("it lacks the column %d; its first line has 3 cells".formatted(number)),
        notices.stream().map(ENGLISH::message).toList());
  }

  @Test
  void theDateInAFilesNameMayBeByThePatternOfDates() {
    files
        .with("layouts/make.properties", "constant.date=name\ndate=ddMMyy\ncolumn.clock=clock")
        .with("exports/S1/scale2_030726.csv", "ticket,clock,body,code,net\n7,9:05,B1,71,2.5\n");
    var exports = ExportReader.read(folder, files.clean(), Progress.NONE);
    assertEquals("2026-07-03T09:05", exports.files().get(0).rows().get(0).get(Field.TIME));
  }
}
