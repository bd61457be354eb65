package gambrel.laws;

import java.nio.file.Path;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A night's figures do not depend on how its scales write: delimiters, decimal marks, character
 * sets, date formats, finer units, status words, codes of their own.
 */
class ForeignScalesTest {
  @TempDir private Path folder;

  static IntStream seeds() {
    return LawShop.seeds();
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void exportsOfOtherMakesGiveTheSameFigures(int seed) {
    var shop = new LawShop(folder.resolve("shop"), seed);
    shop.correctByTicketOnly();
    // A corrected weight is in the unit of its row, which other makes change.
    shop.change("corrections.csv", f -> f.where(row -> !row.get("field").matches("net|gross")));
    for (var path : shop.exports().keySet()) {
      shop.change(path, file -> file.where(ForeignExports::isPlain));
    }
    var before = shop.night();
    ForeignExports.write(shop, new SplittableRandom(seed));

    shop.night().assertSameFigures(before, "seed " + seed);
  }
}
