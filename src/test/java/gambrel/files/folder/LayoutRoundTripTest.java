package gambrel.files.folder;

import static gambrel.trade.notice.NoticeWords.ENGLISH;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.files.export.ExportReader;
import gambrel.trade.reckoning.Progress;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.Field;
import gambrel.trade.rows.RowCells;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Rows written in some foreign way come back as they were, when the layout says how. */
class LayoutRoundTripTest {
  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void rowsWrittenByALayoutReadBackEqual(long seed) {
    var random = new SplittableRandom(seed);
    var files = new ShopFiles(folder);
    var shop = files.clean();
    for (int round = 0; round < 12; round++) {
      var rows = rows(random);
      var make = new ForeignMake(random);
      files
          .with("exports/make/layout.properties", make.layout())
          .with("exports/make/a.csv", make.export(rows));
      var exports = ExportReader.read(folder, shop, Progress.NONE);
      String told = "seed " + seed + " round " + round + "\n" + make.layout();
      assertEquals(List.of(), exports.notices(), told);
      var read = exports.files().get(0).rows();
      assertEquals(rows, read.stream().map(LayoutRoundTripTest::cells).toList(), told);
    }
  }

  private static Map<Field, String> cells(ExportRow row) {
    assertEquals("", row.broken().map(ENGLISH::of).orElse(""));
    return RowCells.of(row);
  }

  private static List<Map<Field, String>> rows(SplittableRandom random) {
    var rows = new ArrayList<Map<Field, String>>();
    for (int i = 1 + random.nextInt(8); i > 0; i--) {
      var row = new EnumMap<Field, String>(Field.class);
      row.put(Field.SCALE, "S" + random.nextInt(3));
      row.put(Field.TICKET, "00" + random.nextInt(10_000));
      row.put(Field.TIME, time(random));
      row.put(Field.CODE, "C" + random.nextInt(100));
      row.put(Field.GROSS, weight(random));
      row.put(Field.UNIT, random.nextBoolean() ? "kg" : "lb");
      if (random.nextBoolean()) {
        row.put(Field.NET, weight(random));
        char strange = "é\"|;,\t'".charAt(random.nextInt(7));
        row.put(Field.BODY, "B " + random.nextInt(50) + strange + "x");
      }
      if (random.nextInt(4) == 0) {
        row.put(Field.STATUS, "void");
      }
      rows.add(row);
    }
    return rows;
  }

  private static String time(SplittableRandom random) {
    return "2026-%02d-%02dT%02d:%02d:%02d"
        .formatted(
            1 + random.nextInt(12),
            1 + random.nextInt(28),
            random.nextInt(24),
            random.nextInt(60),
            1 + random.nextInt(59));
  }

  private static String weight(SplittableRandom random) {
    return random.nextInt(3000) + "." + (100 + random.nextInt(900));
  }
}
