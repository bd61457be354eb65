package gambrel.files.csv;

import static gambrel.trade.notice.NoticeWords.ENGLISH;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Taking text apart into records by RFC 4180, whatever stands in it. */
class CsvRowsTest {
  private static final int ANY = Integer.MAX_VALUE;

  private static List<TextLine> lines(byte[] bytes) {
    try {
      return TextLine.read(new ByteArrayInputStream(bytes), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static List<CsvRow> rows(String text, int fewest, int most) {
    return new CsvRows(lines(text.getBytes(StandardCharsets.UTF_8)), ',', fewest, most).all(0);
  }

  private static List<List<String>> cells(String text) {
    return rows(text, 1, ANY).stream().map(CsvRow::cells).toList();
  }

  private static String outline(List<CsvRow> rows) {
    var words = new StringBuilder();
    for (var row : rows) {
      words.append(row.line()).append(row.broken().isPresent() ? "! " : " ");
    }
    return words.toString().strip();
  }

  @Test
  void recordsEndWithAnyLineEndAndTheLastMayHaveNone() {
    assertEquals(
        List.of(List.of("a", "b"), List.of("c", "d"), List.of("e", "f"), List.of("g", "h")),
        cells("a,b\r\nc,d\ne,f\rg,h"));
  }

  @Test
  void quotedCellsHoldDelimitersQuotesAndNewlines() {
    assertEquals(
        List.of(List.of("a,b", "say \"no\"", "two\r\nlines", "")),
        cells("\"a,b\",\"say \"\"no\"\"\",\"two\r\nlines\",\"\"\n"));
  }

  @Test
  void aRecordStandsOnTheLineOnWhichItStarts() {
    assertEquals("1 2 5", outline(rows("a,b\n\"x\n\ny\",z\nc,d\n", 1, 2)));
  }

  @Test
  void blankLinesAreNoRecordsButCount() {
    assertEquals("2 5", outline(rows("\na,b\n \n\t\nc,d\n\n", 1, 2)));
  }

  @Test
  void aQuoteInsideAnUnquotedCellIsText() {
    assertEquals(List.of(List.of("12\" knife", "b")), cells("12\" knife,b"));
  }

  @Test
  void aQuoteThatIsNeverClosedBreaksOnlyItsLine() {
    var rows = rows("a,b\nc,\"d\ne,f\ng,h\n", 1, 2);
    assertEquals("1 2! 3 4", outline(rows));
    assertEquals(List.of("c"), rows.get(1).cells());
    assertEquals(List.of("e", "f"), rows.get(2).cells());
  }

  @Test
  void aQuoteThatALaterLineSeemsToCloseBreaksOnlyItsLine() {
    assertEquals("1! 2 3", outline(rows("a,\"b\nc,\"d\"\ne,f\n", 1, 2)));
    assertEquals("1! 2 3", outline(rows("a,\"b\nc,d\ne,f\"\n", 3, 3)));
  }

  @Test
  void textAfterAClosingQuoteBreaksTheRecord() {
    assertEquals("1! 2", outline(rows("\"a\"b,c\nd,e\n", 1, 2)));
    assertEquals(List.of(List.of("a", "b")), cells("\"a\" ,b\n"));
  }

  @Test
  void nulAndBytesThatAreNoTextBreakTheRecord() {
    var bytes = "a,b\nc\0,d\ne,?\ng,h\n".getBytes(StandardCharsets.UTF_8);
    bytes[11] = (byte) 0xE9;
    assertEquals("1 2! 3! 4", outline(new CsvRows(lines(bytes), ',', 1, 2).all(0)));
  }

  @Test
  void aMonstrousLineIsBrokenAndKeptShort() {
    var rows = rows("a,b\nc," + "x".repeat(TextLine.LONGEST) + "\nd,e\n", 1, 2);
    assertEquals("1 2! 3", outline(rows));
    assertEquals(500, rows.get(1).raw().length());
    assertEquals("c", rows.get(1).cell(0));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void anyPrintedTableReadsBackEqual(long seed) throws IOException {
    var random = new SplittableRandom(seed);
    for (int round = 0; round < 100; round++) {
      int columns = 1 + random.nextInt(5);
      var table = new ArrayList<List<String>>();
      var text = new StringBuilder();
      for (int i = 0; i < 6; i++) {
        var cells = cells(random, columns);
        table.add(cells);
        CSVFormat.RFC4180.printRecord(text, cells.toArray());
      }
      var rows = rows(text.toString(), 1, columns);
      assertEquals(table, rows.stream().map(CsvRow::cells).toList(), text.toString());
    }
  }

  private static List<String> cells(SplittableRandom random, int columns) {
    var cells = new ArrayList<String>();
    cells.add("k" + text(random, "ab ,;\"\n\r\t'=é"));
    while (cells.size() < columns) {
      cells.add(text(random, "ab ,;\"\n\r\t'=é"));
    }
    return cells;
  }

  private static String text(SplittableRandom random, String alphabet) {
    var text = new StringBuilder();
    for (int i = random.nextInt(8); i > 0; i--) {
      text.append(alphabet.charAt(random.nextInt(alphabet.length())));
    }
    return text.toString();
  }

  @ParameterizedTest
  @ValueSource(longs = {11, 12, 13, 14, 15, 16, 17, 18})
  void whateverTheTextEveryLineThatIsNotBlankBelongsToOneRecord(long seed) {
    var random = new SplittableRandom(seed);
    for (int round = 0; round < 500; round++) {
      String text = text(random, "a,\"\n\r ") + text(random, "\",\n") + text(random, "a,\"\n\r \0");
      var lines = lines(text.getBytes(StandardCharsets.UTF_8));
      var rows = new CsvRows(lines, ',', 1, 1 + random.nextInt(3)).all(0);
      for (var line : lines) {
        boolean covered = rows.stream().anyMatch(row -> covers(row, line));
        assertTrue(covered || line.isBlank(), () -> line + " is lost of " + text);
      }
    }
  }

  /** What may stand in an export, and what damage puts there. */
  private static final String DAMAGE =
      "a0.-T ,,;\t|\"'\n\r\0\uFFFD\uFFFE\uFEFF\u001A\u0085\u2028\\#\uD800";

  @ParameterizedTest
  @ValueSource(longs = {21, 22, 23, 24, 25, 26, 27, 28})
  void whateverTheTextCellsAreTheOnesThatTheLibraryFinds(long seed) throws IOException {
    var random = new SplittableRandom(seed);
    for (int round = 0; round < 500; round++) {
      char delimiter = ",;\t|".charAt(random.nextInt(4));
      char quote = "\"'\0".charAt(random.nextInt(3));
      String text = damaged("bench1,17,2026-07-06T13:06:11,B0701,101,1.235,,\n".repeat(4), random);
      var lines = lines(text.getBytes(StandardCharsets.UTF_8));
      for (var row : new CsvRows(lines, delimiter, quote, 1, ANY).all(0)) {
        if (isWhole(row)) {
          assertEquals(byTheLibrary(row.raw(), delimiter, quote), row.cells(), row.raw());
        }
      }
    }
  }

  private static String damaged(String text, SplittableRandom random) {
    var damaged = new StringBuilder(text);
    for (int i = random.nextInt(20); i > 0; i--) {
      int at = random.nextInt(damaged.length());
      char c = DAMAGE.charAt(random.nextInt(DAMAGE.length()));
      damaged.replace(at, at + random.nextInt(2), String.valueOf(c));
    }
    return damaged.toString();
  }

  /** Of other broken rows only the first cells are told apart. */
  private static boolean isWhole(CsvRow row) {
    return row.broken().filter(why -> !ENGLISH.of(why).startsWith("it holds")).isEmpty();
  }

  private static List<String> byTheLibrary(String record, char delimiter, char quote)
      throws IOException {
    var format =
        CSVFormat.RFC4180
            .builder()
            .setDelimiter(delimiter)
            .setQuote(quote == TextForm.NO_QUOTE ? null : Character.valueOf(quote))
            .setIgnoreEmptyLines(false)
            .get();
    try (var parser = CSVParser.parse(record + '\n', format)) {
      return parser.iterator().next().toList();
    }
  }

  private static boolean covers(CsvRow row, TextLine line) {
    long more = row.raw().lines().count() - 1;
    return row.line() <= line.number() && line.number() <= row.line() + Math.max(0, more);
  }

  @Test
  void theHeaderDecidesTheDelimiterByTheColumnsItMakesAppear() {
    var known = List.of("body", "species", "note");
    for (char delimiter : new char[] {',', ';', '\t'}) {
      var text = String.join("" + delimiter, "\uFEFFBody", " Species ", "\"note\"") + "\n";
      var lines = lines(text.getBytes(StandardCharsets.UTF_8));
      var header = Header.find(lines, TextForm.PLAIN, h -> found(h, known)).orElseThrow();
      assertEquals(delimiter, header.delimiter());
      assertEquals(List.of("Body", "Species", "note"), header.names());
    }
    assertEquals(Optional.empty(), Header.find(List.of(), TextForm.PLAIN, h -> found(h, known)));
  }

  private static int found(Header header, List<String> known) {
    return new NameComparison(header.names(), known).positions().size();
  }
}
