package gambrel.files.folder;

import static gambrel.trade.notice.NoticeWords.ENGLISH;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.files.csv.TextForm;
import gambrel.files.csv.TextLine;
import gambrel.files.export.CountedLines;
import gambrel.files.export.ExportReader;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.reckoning.Progress;
import gambrel.trade.rows.ExportFile;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.Field;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whatever happens to the bytes of an export, reading ends and loses no line. */
class DamagedExportsTest {
  private static final String HEADER = "ticket;time;body;code;net;remark\n";
  private static final List<String> LAYOUTS =
      List.of(
          "delimiter=;\ndecimal=,\n",
          "delimiter=;\nheader=no\ncolumn.ticket=1\ncolumn.time=2\ncolumn.code=4\ncolumn.net=5\n",
          "delimiter=;\nquote=none\nidentity=time,net\nunit=lb-oz\n");

  @TempDir Path folder;

  private ExportFile read(String layout, byte[] bytes) {
    var shop =
        new ShopFiles(folder)
            .with("exports/make/layout.properties", layout + "constant.scale=S1\n")
            .with("exports/make/a.csv", bytes)
            .clean();
    return ExportReader.read(folder, shop, Progress.NONE).files().get(0);
  }

  @ParameterizedTest
  @CsvSource({"1, UTF-8", "2, windows-1252", "3, UTF-16", "4, UTF-8", "5, UTF-16LE", "6, UTF-8"})
  void everyLineThatIsNotBlankBelongsToOneRowOrIsTheHeader(long seed, String charset) {
    var random = new SplittableRandom(seed);
    int read = 0;
    for (int round = 0; round < 60; round++) {
      var bytes = damaged(random, export(random).getBytes(Charset.forName(charset)));
      String layout = LAYOUTS.get(round % LAYOUTS.size()) + "charset=" + charset + "\n";
      var file = read(layout, bytes);
      var lines = lines(bytes, charset);
      if (file.leftOut() > 0) {
        continue;
      }
      read++;
      for (var line : lines) {
        boolean header = line.number() == firstNotBlank(lines) && !layout.contains("header=no");
        long rows = file.rows().stream().filter(row -> covers(row, line)).count();
        boolean told = rows == 1 || line.isBlank() || header && rows == 0;
        assertTrue(told, () -> "seed " + seed + ": " + rows + " rows of " + line);
      }
    }
    assertTrue(read > 10, "seed " + seed + ": " + read + " files read");
  }

  private static List<TextLine> lines(byte[] bytes, String charset) {
    var set = Charset.forName(charset);
    var form = new TextForm(List.of(';'), '"', set, 0, true, Optional.empty(), Map.of(), '.');
    try {
      return CountedLines.read(new ByteArrayInputStream(bytes), form).lines();
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static int firstNotBlank(List<TextLine> lines) {
    return lines.stream().filter(line -> !line.isBlank()).findFirst().orElseThrow().number();
  }

  private static boolean covers(ExportRow row, TextLine line) {
    int first = row.place().line();
    long more = row.raw().lines().count() - 1;
    return first <= line.number() && line.number() <= first + Math.max(0, more);
  }

  private static String export(SplittableRandom random) {
    var text = new StringBuilder(HEADER);
    for (int i = 0; i < 12; i++) {
      text.append(i).append(";2026-07-01T09:").append(10 + i).append(";B1;71;2,5;");
      text.append(random.nextInt(4) == 0 ? "\"kept; \"\"cold\"\"\nfor Ash\"" : "ok").append("\n");
    }
    return text.toString();
  }

  private static byte[] damaged(SplittableRandom random, byte[] whole) {
    var bytes = whole.clone();
    switch (random.nextInt(6)) {
      case 0 -> bytes = Arrays.copyOf(bytes, 1 + random.nextInt(bytes.length - 1));
      case 1 -> bytes = twice(bytes);
      case 2 -> flip(random, bytes, (byte) '"');
      case 3 -> flip(random, bytes, (byte) 0);
      case 4 -> flip(random, bytes, (byte) '\n');
      default -> {
        for (int i = 0; i < 10; i++) {
          flip(random, bytes, (byte) random.nextInt(256));
        }
      }
    }
    return bytes;
  }

  private static void flip(SplittableRandom random, byte[] bytes, byte to) {
    // The header stays: a file that lost it is another test's.
    int from = 2 * HEADER.length() + 2;
    bytes[from + random.nextInt(bytes.length - from)] = to;
  }

  private static byte[] twice(byte[] bytes) {
    var pasted = Arrays.copyOf(bytes, 2 * bytes.length);
    System.arraycopy(bytes, 0, pasted, bytes.length, bytes.length);
    return pasted;
  }

  @Test
  void aFilePastedTwiceHasAllItsRowsTwiceAndItsHeaderForOne() {
    var text = (HEADER + "1;T;B1;71;1;\n").getBytes(StandardCharsets.UTF_8);
    var once = read(LAYOUTS.get(0), text);
    var twice = read(LAYOUTS.get(0), twice(text));
    assertEquals(1, once.rows().size());
    assertEquals(3, twice.rows().size());
  }

  @Test
  void thousandsOfColumnsAreOneHeaderAndItsRows() {
    String wide = ";x".repeat(9_000) + "\n";
    var file =
        read(
            LAYOUTS.get(0),
            (HEADER.strip() + wide + "1;T;B1;71;1,5;" + wide + "2;T;B1;71;1,5;\n")
                .getBytes(StandardCharsets.UTF_8));
    assertEquals(
        List.of("1.5", "1.5"), file.rows().stream().map(row -> row.get(Field.NET)).toList());
  }

  @Test
  void oneLineWithoutAnEndIsOneBrokenRow() {
    var bytes = new byte[8 << 20];
    Arrays.fill(bytes, (byte) ';');
    var text = (HEADER + "1;T;B1;71;1,5;\n").getBytes(StandardCharsets.UTF_8);
    System.arraycopy(text, 0, bytes, 0, text.length);
    var file = read(LAYOUTS.get(0), bytes);
    assertEquals(2, file.rows().size());
    assertTrue(ENGLISH.of(file.rows().get(1).broken().orElseThrow()).contains("longer"));
  }

  @Test
  void aFileThatIsNoTextIsTheFilesFaultAndAllItsLinesAreRows() {
    var bytes = new byte[5000];
    new SplittableRandom(7).nextBytes(bytes);
    var shop =
        new ShopFiles(folder)
            .with("exports/make/layout.properties", "constant.scale=S1\n")
            .with("exports/make/a.csv", bytes)
            .clean();
    var exports = ExportReader.read(folder, shop, Progress.NONE);
    assertEquals(NoticeCode.EXPORT_UNREADABLE, exports.notices().get(0).code());
    assertTrue(exports.files().get(0).rows().stream().allMatch(row -> row.broken().isPresent()));
  }
}
