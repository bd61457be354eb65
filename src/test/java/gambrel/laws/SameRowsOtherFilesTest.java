package gambrel.laws;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** In which files a random shop's rows arrive does not matter. */
class SameRowsOtherFilesTest {
  @TempDir private Path folder;

  static IntStream seeds() {
    return LawShop.seeds();
  }

  private LawShop shop(int seed) {
    var shop = new LawShop(folder.resolve("shop"), seed);
    shop.correctByTicketOnly();
    return shop;
  }

  private static List<String> columns(LawShop shop) {
    return shop.exports().values().iterator().next().columns();
  }

  private static List<Map<String, String>> rows(LawShop shop) {
    return shop.exports().values().stream().flatMap(file -> file.rows().stream()).toList();
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void allFilesAsOne(int seed) {
    var shop = shop(seed);
    var before = shop.night();
    var one = new TreeMap<String, CsvFile>();
    one.put("exports/one.csv", new CsvFile(columns(shop), rows(shop)));
    shop.exports(one);

    shop.night().assertSameFigures(before, "seed " + seed);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void aFileForEveryFewRows(int seed) {
    var shop = shop(seed);
    var before = shop.night();
    var random = new SplittableRandom(seed);
    var many = new TreeMap<String, CsvFile>();
    var rows = rows(shop);
    for (int at = 0, end; at < rows.size(); at = end) {
      end = Math.min(rows.size(), at + 1 + random.nextInt(8));
      var name = String.format("exports/%s/%05d.csv", at < 40 ? "a" : "b", at);
      many.put(name, new CsvFile(columns(shop), rows.subList(at, end)));
    }
    shop.exports(many);

    shop.night().assertSameFigures(before, "seed " + seed);
  }

  /**
   * Which of two weighings of one moment a void means is decided by place: such shops are left out.
   */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void filesInAnotherOrderWhereNothingIsVoided(int seed) {
    var shop = shop(seed);
    var own = new TreeMap<String, CsvFile>();
    shop.exports().forEach((path, file) -> own.put(path, withoutVoids(file)));
    shop.exports(own);
    var before = shop.night();
    var paths = new ArrayList<>(own.keySet());
    Collections.reverse(paths);
    var renamed = new TreeMap<String, CsvFile>();
    for (int i = 0; i < paths.size(); i++) {
      renamed.put("exports/" + i + " of " + paths.size() + ".csv", own.get(paths.get(i)));
    }
    shop.exports(renamed);

    shop.night().assertSameFigures(before, "seed " + seed);
  }

  private static CsvFile withoutVoids(CsvFile file) {
    return file.where(row -> !row.getOrDefault("status", "").startsWith("void"));
  }
}
