package gambrel.damage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.files.export.ExportReader;
import gambrel.night.Inputs;
import gambrel.night.NightOutcome;
import gambrel.night.NightShop;
import gambrel.night.NightlyRun;
import gambrel.night.PlainDocuments;
import gambrel.night.RefusedException;
import gambrel.night.Trees;
import gambrel.trade.reckoning.Progress;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import org.apache.commons.io.function.IOFunction;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Exports that are cut, written to while they are read, or unreadable: nothing is issued that whole
 * exports would not give. {@code -Dcuts=1} cuts at every byte of the last 200.
 */
class CutExportsTest {
  private static final int EVERY = Integer.getInteger("cuts", 7);
  private static final int LAST = 200;
  private static final String EXPORT = "exports/b.csv";
  private static final String ROWS =
      """
      scale,ticket,time,body,code,net
      bench,901,2026-03-05T11:00,B1,rump,1.250
      bench,902,2026-03-05T11:01,B1,rump,0.840
      bench,903,2026-03-05T11:02,B1,mince,2.105
      bench,904,2026-03-05T11:03,B1,mince,0.955
      bench,905,2026-03-05T11:04,B1,rump,1.325
      """;

  @TempDir private Path temporary;
  private NightShop shop;
  private Path folder;

  @BeforeEach
  void openShop() {
    shop =
        new NightShop(temporary.resolve("shop"))
            .beef("B1", "ann")
            .add("shop.properties", "bins=partly");
    shop.packs("B1", "110");
    folder = shop.write();
  }

  /** The figures of what is issued; empty if nothing is. */
  private List<String> issued(IOFunction<Path, InputStream> opener) {
    try {
      var read = Inputs.read(folder, Progress.NONE);
      var exports = ExportReader.read(folder, read.shop(), opener, Progress.NONE);
      var notices = new ArrayList<>(read.notices());
      notices.addAll(exports.notices());
      return issued(new Inputs(read.shop(), exports.files(), notices));
    } catch (RefusedException e) {
      throw new AssertionError(e);
    }
  }

  private List<String> issued() {
    try {
      return issued(Inputs.read(folder, Progress.NONE));
    } catch (RefusedException e) {
      throw new AssertionError(e);
    }
  }

  private List<String> issued(Inputs inputs) {
    var out = new FolderCopy(new TreeMap<>()).writeTo(temporary.resolve("out"));
    var asOf = NightShop.moment(NightShop.NIGHT);
    var outcome = new NightlyRun(inputs, new PlainDocuments()).run(out, asOf, List.of());
    var report = ((NightOutcome.Done) outcome).report();
    if (report.issued().isEmpty()) {
      assertEquals(1, outcome.exitCode());
    }
    var figures = new ArrayList<String>();
    report.issued().forEach(row -> figures.add(Trees.text(out.resolve(row.file()))));
    return figures;
  }

  private void export(byte[] bytes) {
    try {
      Files.write(folder.resolve(EXPORT), bytes);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", ",pieces,status"})
  void anExportThatIsCutWithinARowIssuesNothing(String more) {
    String text = ROWS.replace("\n", more.replaceAll("[a-z]", "") + "\n");
    var whole = bytes(text.replaceFirst(",*\n", more + "\n"));
    export(whole);
    assertEquals(1, issued().size());
    for (int length = whole.length - LAST; length < whole.length; length += EVERY) {
      var cut = Arrays.copyOf(whole, length);
      export(cut);
      var found = issued();
      String rows = new String(cut, StandardCharsets.UTF_8);
      if (!found.isEmpty()) {
        // The rows that are whole are an export of their own.
        export(bytes(rows.replaceFirst(",*\n?$", more.replaceAll("[a-z]", "") + "\n")));
        // Of a single row nothing tells how many decimals its weight should have.
        boolean single = rows.lines().count() == 2;
        assertTrue(single || rows.matches("(?s).*\\.\\d{3},*\n?"), rows);
        assertEquals(issued(), found, rows);
      }
    }
  }

  @Test
  void anExportThatIsWrittenToWhileItIsReadIssuesNothing() {
    export(bytes(ROWS));
    var found =
        issued(
            path -> {
              var content = Files.readAllBytes(path);
              if (path.endsWith("b.csv")) {
                Files.writeString(path, "bench,906", StandardOpenOption.APPEND);
              }
              return new ByteArrayInputStream(content);
            });
    assertEquals(List.of(), found);
  }

  @Test
  void anExportThatCannotBeReadIssuesNothing() throws IOException {
    String header = ROWS.substring(0, ROWS.indexOf('\n') + 1);
    var texts =
        List.of(
            ROWS.substring(header.length()),
            ROWS.replace("net", "weight"),
            ROWS.replace("scale,", ""),
            ROWS.replace("net", "nett"),
            ROWS.replaceAll("(?s)(.)", "$1\0"),
            ROWS.replaceAll("(?s)(.)", "\0$1"),
            ROWS.replace("0.840", "\0".repeat(64)),
            "\0".repeat(4096),
            ROWS.replace("B1", "B\uFFFD"),
            ROWS.replace(',', '|'),
            '"' + ROWS,
            "PK\u0003\u0004" + ROWS);
    for (String text : texts) {
      export(bytes(text));
      assertEquals(List.of(), issued(), text);
    }
    Files.delete(folder.resolve(EXPORT));
    Files.createSymbolicLink(
        folder.resolve(EXPORT), Files.write(temporary.resolve("c"), bytes(ROWS)));
    assertEquals(List.of(), issued());
    Files.delete(folder.resolve(EXPORT));
    Files.write(folder.resolve("exports/b.xlsx"), bytes(ROWS));
    assertEquals(List.of(), issued());
  }
}
