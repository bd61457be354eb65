package gambrel.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.bench.MonthFiles;
import gambrel.data.NightTables;
import gambrel.data.Table;
import gambrel.intake.ExportReader;
import gambrel.publish.Csv;
import gambrel.reckoning.Night;
import gambrel.reckoning.Reckoner;
import gambrel.run.Inputs;
import gambrel.run.RefusedException;
import gambrel.weighing.ExportFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Where rows and weighings do not all fit in memory, everything is as if they did. */
class ManyRowsTest {
  private static final Path SAMPLE = Path.of("sample-exports");

  @TempDir private Path folder;

  static IntStream seeds() {
    return LawShop.seeds();
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void aRandomShopIsReckonedAlike(int seed) throws RefusedException {
    var shop = new LawShop(folder.resolve("shop"), seed);
    assertAlike(shop.folder(), shop.asOf(), 0);
  }

  @ParameterizedTest(name = "{0} kept")
  @ValueSource(ints = {0, 1, 1000})
  void theSampleShopIsReckonedAlike(int kept) throws RefusedException {
    assertAlike(SAMPLE, OffsetDateTime.parse("2026-10-01T02:00+10:00"), kept);
  }

  private static void assertAlike(Path shop, OffsetDateTime asOf, int kept)
      throws RefusedException {
    var inputs = Inputs.read(shop);
    var again = ExportReader.read(shop, inputs.shop(), kept);
    var whole = new Reckoner(inputs.shop(), inputs.exports()).at(asOf);
    var packed = new Reckoner(inputs.shop(), again.files(), kept).at(asOf);
    assertEquals(told(whole), told(packed));
  }

  /** All that the data files, the morning sheet and a trace are made of. */
  private static List<Object> told(Night night) {
    var tables = new TreeMap<String, String>();
    var all = new ArrayList<Table>(NightTables.of(night));
    all.addAll(MonthFiles.of(night));
    for (var table : all) {
      tables.put(table.name(), new String(Csv.bytes(table), StandardCharsets.UTF_8));
    }
    var ledger = night.ledger();
    return List.of(
        tables,
        night.notices(),
        ledger.notices(),
        ledger.setAside(),
        ledger.corrections().stream().map(Object::toString).toList(),
        night.batches());
  }

  @Test
  void aFileThatIsReadAgainHasTheSameRows() throws RefusedException {
    var shop = Inputs.read(SAMPLE).shop();
    var kept = ExportReader.read(SAMPLE, shop, Integer.MAX_VALUE).files();
    var again = ExportReader.read(SAMPLE, shop, 0).files();
    assertEquals(rows(kept), rows(again));
    assertEquals(rows(again), rows(again));
  }

  private static List<Object> rows(List<ExportFile> files) {
    return files.stream()
        .map(file -> (Object) List.of(file.path(), file.count(), file.rows()))
        .toList();
  }
}
