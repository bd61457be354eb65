package gambrel.files.folder;

import static gambrel.trade.notice.NoticeWords.ENGLISH;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import gambrel.files.export.ExportReader;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.reckoning.Progress;
import gambrel.trade.rows.ExportFile;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.Field;
import gambrel.trade.rows.RowCells;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * One folder for each make of export under {@code gambrel/layouts}: a layout, an export, and the
 * same rows as an export that needs no layout. The makes are invented.
 */
public class LayoutExamplesTest {
  @TempDir Path folder;

  public static List<Path> makes() throws IOException, URISyntaxException {
    var top = Path.of(LayoutExamplesTest.class.getResource("/gambrel/layouts").toURI());
    try (var all = Files.list(top)) {
      return all.sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("makes")
  void anExportReadByItsLayoutIsThePlainOne(Path make) throws IOException {
    var shop =
        new ShopFiles(folder)
            .with("exports/make/layout.properties", bytes(make, "layout.properties"))
            .with("exports/make/a.csv", bytes(make, "export.csv"))
            .with("exports/z.csv", bytes(make, "expected.csv"))
            .clean();
    var exports = ExportReader.read(folder, shop, Progress.NONE);
    assertEquals(List.of(), exports.notices());
    assertFalse(exports.files().get(0).rows().isEmpty());
    assertEquals(outlines(exports.files().get(1)), outlines(exports.files().get(0)));
  }

  private static byte[] bytes(Path make, String name) throws IOException {
    return Files.readAllBytes(make.resolve(name));
  }

  private static String outlines(ExportFile file) {
    return String.join("\n", file.rows().stream().map(LayoutExamplesTest::outline).toList());
  }

  private static String outline(ExportRow row) {
    var fields = new TreeMap<>(RowCells.of(row));
    row.unit().map(WeightUnit::id).ifPresent(unit -> fields.putIfAbsent(Field.UNIT, unit));
    return fields + row.broken().map(ENGLISH::of).orElse("");
  }
}
