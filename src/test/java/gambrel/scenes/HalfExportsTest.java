package gambrel.scenes;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Nothing goes out on half an export. */
class HalfExportsTest extends SceneTest {
  private static final String HEADER = "scale,ticket,time,body,code,net\n";
  private static final String ROW = "bench,91,2026-03-05T11:00,B1,pack.rump,1.250\n";
  private static final String SECOND = "bench,92,2026-03-05T11:01,B1,pack.rump,18.640\n";

  @BeforeEach
  void oneBody() {
    scene.simpleBody().set("bins=partly");
  }

  private Found withExport(String text) {
    return scene.text("exports/b.csv", text).at(LATER);
  }

  /** The file has a notice, none of its rows is used, and B1 is as it is without it. */
  private static void assertStopped(Found found, String code, int rows) {
    assertEquals("stop", found.notice(code, "severity"));
    assertEquals("issued", found.state("B1"));
    assertBody(found, "take_home_kg", "200.000");
    assertEquals(0, found.rows("statements").size());
    assertEquals(1, found.exit());
    assertEquals(rows + " = 0 + 0 + 0 + " + rows, found.counts("exports/b.csv"));
  }

  private static void assertRead(Found found, String counts) {
    assertEquals(counts, found.counts("exports/b.csv"));
    assertEquals(0, found.rows("notices", "severity=stop").size());
  }

  @ParameterizedTest
  @ValueSource(strings = {"18.64", "18.6", "18.", "18", "1"})
  void aLastWeightWithFewerDecimalsThanAllOthersStopsTheNight(String net) {
    assertStopped(
        withExport(HEADER + ROW + SECOND.replace("18.640\n", net)), "export-unfinished", 2);
  }

  @ParameterizedTest
  @ValueSource(strings = {"b", "bench,92", "bench,92,2026-03-05T11:01,B1,pack.rump", "\"bench"})
  void aLastLineWithFewerCellsThanTheHeaderStopsTheNight(String line) {
    assertStopped(withExport(HEADER + ROW + line), "export-unfinished", 2);
  }

  @ParameterizedTest
  @ValueSource(strings = {"18.640", "18.6\n", "18.6400", "18.640\n\u001A", "18.640\n  "})
  void aLastWeightAsLongAsTheOthersOrWithALineEndIsComplete(String net) {
    assertRead(withExport(HEADER + ROW + SECOND.replace("18.640\n", net)), "2 = 2 + 0 + 0 + 0");
  }

  @Test
  void aLastWeightIsComparedWithNothingIfItIsTheOnlyOne() {
    assertRead(withExport(HEADER + ROW.replace("1.250\n", "1.2")), "1 = 1 + 0 + 0 + 0");
  }

  @Test
  void theLastFilledCellIsLookedAt() {
    String header = HEADER.replace("\n", ",pieces,status\n");
    String row = ROW.replace("\n", ",2,\n");
    assertStopped(withExport(header + row + SECOND.replace("40\n", ",,")), "export-unfinished", 2);
  }

  @Test
  void theDecimalMarkIsTheLayouts() {
    scene.file("exports/scale/layout.properties", "decimal=,", "thousands=.");
    String text = (HEADER + ROW + SECOND).replace(",", ";").replace(".", ",");
    String whole = text.replace("pack,rump", "pack.rump").replace("18,640\n", "1.018,640");
    scene.text("exports/scale/c.csv", whole);
    assertEquals("2 = 2 + 0 + 0 + 0", scene.at(LATER).counts("exports/scale/c.csv"));
    scene.text("exports/scale/c.csv", whole.replace("1.018,640", "1.018"));
    assertEquals("2 = 0 + 0 + 0 + 2", scene.at(LATER).counts("exports/scale/c.csv"));
  }

  @Test
  void aLastLineThatTheLayoutIgnoresIsNotLookedAt() {
    scene.file("exports/scale/layout.properties", "ignore=^Total");
    scene.text("exports/scale/c.csv", HEADER + ROW + "Total 1.2");
    assertEquals("1 = 1 + 0 + 0 + 0", scene.at(LATER).counts("exports/scale/c.csv"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "\n", HEADER, "\uFEFF"})
  void anExportWithoutRowsIsComplete(String text) {
    var found = withExport(text);
    assertRead(found, "0 = 0 + 0 + 0 + 0");
    assertEquals(1, found.rows("statements").size());
  }

  @Test
  void anExportThatLostItsHeaderStopsTheNight() {
    assertStopped(withExport(ROW + SECOND), "export-unreadable", 2);
  }

  @Test
  void anExportThatLostItsHeaderAndIsReadByNumbersStopsTheNight() {
    scene.file(
        "exports/scale/layout.properties",
        "column.scale=1",
        "column.ticket=2",
        "column.time=3",
        "column.body=4",
        "column.code=5",
        "column.net=6");
    scene.text("exports/scale/c.csv", HEADER + ROW + SECOND);
    assertEquals("2 = 2 + 0 + 0 + 0", scene.at(LATER).counts("exports/scale/c.csv"));
    scene.text("exports/scale/c.csv", ROW + SECOND);
    var found = scene.at(LATER);
    assertEquals("stop", found.notice("export-unreadable", "severity"));
    assertEquals(0, found.rows("statements").size());
  }

  @Test
  void aBlockOfNulsStopsTheNight() {
    assertStopped(
        withExport(HEADER + ROW + "\0".repeat(512) + "\n" + SECOND), "export-unreadable", 3);
  }

  @Test
  void oneNulSetsItsRowAside() {
    assertRead(withExport(HEADER + ROW.replace("1.250", "1.2\0") + SECOND), "2 = 1 + 0 + 0 + 1");
  }

  @Test
  void anExportInUtf16WithoutAMarkStopsTheNight() {
    var found = withExport((HEADER + ROW).replaceAll("(?s)(.)", "$1\0"));
    assertEquals("stop", found.notice("export-unreadable", "severity"));
    assertEquals(0, found.rows("statements").size());
    assertEquals("issued", found.state("B1"));
  }

  @Test
  void anExportOfWhichNoRowIsTextStopsTheNight() {
    assertStopped(withExport(HEADER + ROW.replace("B1", "B\uFFFD")), "export-unreadable", 1);
  }

  @Test
  void aBrokenRowInTheMiddleSetsItselfAsideAlone() {
    var found = withExport(HEADER + "bench,93,2026-03-05T11:02,B1\n" + ROW + SECOND);
    assertRead(found, "3 = 2 + 0 + 0 + 1");
    assertEquals("held row-set-aside", found.state("B1"));
  }

  @Test
  void aLinkOrAFolderThatCannotBeReadStopsTheNight() throws IOException {
    scene.at(LATER);
    var exports = folder.resolve("shop/exports");
    var other = Files.writeString(folder.resolve("c.csv"), HEADER + ROW);
    Files.createSymbolicLink(exports.resolve("c.csv"), other);
    var found = scene.at(LATER);
    assertEquals("stop", found.notice("export-unreadable", "severity"));
    assertEquals(0, found.rows("statements").size());
    assertEquals("issued", found.state("B1"));
  }

  @Test
  void anExportWhoseLayoutIsMissingStopsTheNight() {
    scene.file("scales.csv", "scale,division,layout", "rail,0.01,", "bench,0.01,lost");
    scene.text("exports/bench/c.csv", HEADER + ROW);
    var found = scene.at(LATER);
    assertEquals("stop", found.notice("export-unreadable", "severity"));
    assertEquals(0, found.rows("statements").size());
  }

  @Test
  void aLayoutThatIsMissingAndThatNoExportNeedsIsAMark() {
    scene.file("scales.csv", "scale,division,layout", "rail,0.01,", "bench,0.01,lost");
    var found = scene.at(LATER);
    assertEquals(List.of("mark reference-unknown"), found.notices());
    assertEquals("issued", found.state("B1"));
    assertEquals(1, found.rows("statements").size());
    assertEquals(0, found.exit());
    scene.text("layouts/bench.properties", "delimiter=,\n");
    assertEquals(List.of(), scene.at(LATER).notices());
  }

  @Test
  void theNextNightIssuesWhatTheWholeExportGives() {
    scene.text("exports/b.csv", HEADER + ROW + SECOND.replace("40\n", "")).nextNight("30T00:00");
    scene.text("exports/b.csv", HEADER + ROW + SECOND);
    assertEquals("219.890", scene.nextNight(LATER).statement("ann", "B1", "take_home_kg"));
  }

  @Test
  void whatWasIssuedStandsAndWhatIsHeldFollows() {
    scene.body("B2,beef,2026-03-02,bob,,,,").weigh("02T10:00 B2 hot carcase 300");
    scene.nextNight("28T00:00");
    scene.weigh("05T10:00 B2 pack rump 250");
    scene.text("exports/b.csv", HEADER + ROW + "bench");
    var found = scene.nextNight(LATER);
    assertEquals(1, found.rows("statements").size());
    assertEquals(
        List.of("held/bob/B2.pdf", "statements/ann/B1-r1.pdf"),
        found.documents().stream().filter(d -> d.contains("/B")).toList());
  }

  @ParameterizedTest
  @ValueSource(strings = {"a.TXT", "b.tsv", "c.tab", "d.log", "e.dat", "f.prn", "g", "h.Csv"})
  void aTextFileIsAnExportByItsName(String name) {
    var found = scene.text("exports/" + name, HEADER + ROW).at(LATER);
    assertEquals("1 = 1 + 0 + 0 + 0", found.counts("exports/" + name));
  }

  @ParameterizedTest
  @ValueSource(strings = {".a.csv", "~$a.csv", "~b.xlsx", ".old/a.csv", "layout.properties"})
  void temporaryAndHiddenFilesArePassedOver(String name) {
    var found = scene.text("exports/" + name, ROW).at(LATER);
    assertEquals(List.of(), found.notices());
    assertEquals(1, found.rows("statements").size());
  }

  @ParameterizedTest
  @ValueSource(strings = {"a.xlsx", "b.XLS", "c.ods"})
  void aSpreadsheetStopsTheNightAndTheCureIsTold(String name) {
    var found = scene.text("exports/" + name, "PK").at(LATER);
    assertEquals("stop", found.notice("export-unreadable", "severity"));
    assertEquals(
        "Open it, save it as CSV among the exports, and take the spreadsheet out."
            + " Until then no statement goes out.",
        found.notice("export-unreadable", "advice"));
    assertEquals(0, found.rows("statements").size());
  }

  @ParameterizedTest
  @ValueSource(strings = {"a.pdf", "b.bak", "Thumbs.db", "PACK.001"})
  void anyOtherFileIsAMark(String name) {
    var found = scene.text("exports/" + name, "x").at(LATER);
    assertEquals(List.of("mark export-other"), found.notices());
    assertEquals(1, found.rows("statements").size());
  }
}
