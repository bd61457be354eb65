package gambrel.night;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.oracle.CsvTrees;
import gambrel.oracle.Oracle;
import gambrel.oracle.OracleDiff;
import gambrel.oracle.RandomShop;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every figure agrees, to the last digit, with a second calculation that shares no code with it.
 */
class SecondCalculationTest {
  private static final int SEEDS = Integer.getInteger("seeds", 60);

  @TempDir private Path folder;

  static IntStream seeds() {
    return IntStream.range(0, SEEDS);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void everyFigureOfARandomShopAgrees(int seed) throws Exception {
    var shop = folder.resolve("shop");
    List<OffsetDateTime> moments = RandomShop.write(shop, seed, CsvTrees::of);
    var trees = CsvTrees.of(shop);
    var differences = new ArrayList<String>();
    for (int i = 0; i < moments.size(); i++) {
      var out = folder.resolve("out" + i);
      run(shop, out, moments.get(i));
      var expected = Oracle.compute(shop, moments.get(i), trees);
      for (String difference : OracleDiff.compare(expected, out.resolve("data"))) {
        differences.add(moments.get(i) + ": " + difference);
      }
    }
    assertEquals(List.of(), differences);
  }

  private static void run(Path shop, Path out, OffsetDateTime asOf) throws RefusedException {
    var inputs = Inputs.read(shop);
    var outcome = new NightlyRun(inputs, new PlainDocuments()).run(out, asOf, List.of());
    assertEquals(NightOutcome.Done.class, outcome.getClass(), outcome::toString);
  }
}
