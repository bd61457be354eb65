package gambrel.night;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.Shuffle;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** It does not matter in which files, in which order or how often the scales' rows arrive. */
class ShuffledExportsTest {
  private static final String EXPORT = "exports/a.csv";
  private static final List<String> FIGURES =
      List.of("bodies.csv", "cuts.csv", "pieces.csv", "batches.csv", "shrink.csv");

  @TempDir private Path folder;
  private NightShop shop;
  private List<String> rows;
  private Map<String, String> expected;

  /** With a shared body, a batch of two bodies, voids, a conflict and a corrected row. */
  @BeforeEach
  void openShop() {
    shop = new NightShop(folder.resolve("shop"));
    shop.beef("B1", "ann").beef("B2", "bob").body("B3", "").packs("B3", "110").body("B4", "ann");
    shop.add("shares.csv", "body,customer,share", "B3,ann,1/3", "B3,bob,2/3");
    shop.add("batches.csv", "batch,product", "M1,Mince");
    shop.weigh("bench", "05T11:00:00", "B1", "trim", "2.5", "", "M1");
    shop.weigh("bench", "05T11:01:00", "B2", "trim", "1.5", "", "M1");
    shop.weigh("bench", "05T12:00:00", "", "mince", "3.905", "", "M1");
    shop.weigh("bench", "05T12:10:00", "B3", "rump", "9.9", "", "", "ann");
    shop.weigh("bench", "05T12:11:00", "B3", "rump", "7", "", "", "", "void:31");
    shop.add(EXPORT, "bench,900,2026-03-05T13:00:00,B2,fat,0.5,,,,");
    shop.add(EXPORT, "bench,900,2026-03-05T13:00:00,B2,fat,0.6,,,,");
    shop.add(EXPORT, "bench,901,2026-03-05T13:10:00,B1,rump,44,,,,");
    shop.add("corrections.csv", "scale,ticket,date,field,value,by,on,reason");
    shop.add("corrections.csv", "bench,901,,net,0.4,Hetty,2026-03-05T14:00,keyed wrong");
    rows = shop.lines(EXPORT).subList(1, shop.lines(EXPORT).size());
    expected = figures("plain");
  }

  private Map<String, String> figures(String name) {
    var out = folder.resolve(name);
    shop.run(out, NightShop.NIGHT);
    var figures = new TreeMap<String, String>();
    for (var file : FIGURES) {
      figures.put(file, Trees.text(out.resolve("data").resolve(file)));
    }
    figures.put("register", statementFigures(out));
    return figures;
  }

  private static String statementFigures(Path out) {
    return String.join("\n", Trees.lines(out.resolve("data/statements.csv")));
  }

  private void exports(Map<String, List<String>> files) {
    var header = shop.lines(EXPORT).get(0);
    shop.without(EXPORT);
    files.forEach(
        (file, lines) -> {
          shop.add(file, header);
          lines.forEach(line -> shop.add(file, line));
        });
  }

  @Test
  void theShopHasFiguresToCompare() {
    assertEquals(3, expected.get("register").lines().filter(l -> l.contains("-r1.pdf")).count());
    assertEquals(2, expected.get("batches.csv").lines().count());
  }

  @Test
  void renamedFiles() {
    exports(Map.of("exports/zz/older name.csv", rows));

    assertEquals(expected, figures("renamed"));
  }

  @Test
  void everyFileThreeTimes() {
    exports(Map.of("exports/a.csv", rows, "exports/b.csv", rows, "exports/c/a.csv", rows));

    assertEquals(expected, figures("repeated"));
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void rowsShuffledOverFilesThatOverlap(long seed) {
    var random = new SplittableRandom(seed);
    var shuffled = new ArrayList<>(rows);
    Shuffle.inPlace(shuffled, random);
    var files = new TreeMap<String, List<String>>();
    for (var row : shuffled) {
      int copies = 1 + random.nextInt(2);
      for (int i = 0; i < copies; i++) {
        var name = "exports/" + (char) ('a' + random.nextInt(5)) + ".csv";
        files.computeIfAbsent(name, f -> new ArrayList<>()).add(row);
      }
    }
    exports(files);

    assertEquals(expected, figures("shuffled"));
  }
}
