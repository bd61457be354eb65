package gambrel.night;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import gambrel.laws.EveryPlace;
import gambrel.laws.XhtmlDocuments;
import gambrel.oracle.CsvTrees;
import gambrel.oracle.ExactNight;
import gambrel.oracle.OracleDiff;
import gambrel.oracle.RandomShop;
import gambrel.trade.reckoning.Night;
import gambrel.trade.reckoning.Progress;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every figure of the data files, of the months and of the statements' pages agrees, to the last
 * digit, with a second calculation that shares no code with it.
 */
class SecondCalculationTest {
  private static final int SEEDS = Integer.getInteger("seeds", 60);

  /** A shop in which an open batch of an issued body grows, which hardly any other has. */
  private static final int GROWING = 82;

  private static final AtomicLong CELLS = new AtomicLong();

  /** In how many shops each clause of the contract was met. */
  private static final Map<String, Integer> MET = new ConcurrentSkipListMap<>();

  @TempDir private Path folder;

  static IntStream seeds() {
    return IntStream.concat(IntStream.range(0, SEEDS), IntStream.of(GROWING)).distinct();
  }

  @AfterAll
  static void sayHowMuchWasCompared() {
    System.out.println(CELLS + " cells compared with the second calculation");
    MET.forEach((clause, shops) -> System.out.println(clause + ": in " + shops + " shops"));
    if (SEEDS >= 60) {
      var missed = new TreeSet<>(ExactNight.allClauses());
      missed.removeAll(MET.keySet());
      assertEquals(Set.of(), missed, "clauses that no shop meets");
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void everyFigureOfARandomShopAgrees(int seed) throws Exception {
    var shop = folder.resolve("shop");
    List<OffsetDateTime> moments = RandomShop.write(shop, seed, CsvTrees::of);
    var trees = CsvTrees.of(shop);
    var differences = new ArrayList<String>();
    var nights = new ArrayList<ExactNight>();
    for (int i = 0; i < moments.size(); i++) {
      var out = folder.resolve("out" + i);
      var night = run(shop, out, moments.get(i));
      var expected = ExactNight.of(shop, moments.get(i), trees);
      nights.add(expected);
      var compared = OracleDiff.compareAll(expected, out.resolve("data"));
      var pages = EveryPlace.compareStatements(expected, night, out);
      CELLS.addAndGet(compared.cells() + pages.figures());
      differences.addAll(pages.differences());
      for (String difference : compared.differences()) {
        differences.add(moments.get(i) + ": " + difference);
      }
    }
    differences.addAll(revisionsThatDiffer(shop, nights, moments));
    ExactNight.clauses(nights).forEach(clause -> MET.merge(clause, 1, Integer::sum));
    assertEquals(List.of(), differences);
  }

  /** The same nights once more, one after the other in one output folder. */
  private List<String> revisionsThatDiffer(
      Path shop, List<ExactNight> nights, List<OffsetDateTime> moments) throws RefusedException {
    var out = folder.resolve("kept");
    var differences = new ArrayList<String>();
    for (int i = 0; i < moments.size(); i++) {
      run(shop, out, moments.get(i));
      var until = ExactNight.register(nights.subList(0, i + 1));
      var compared = OracleDiff.compare(until, out.resolve("data"));
      CELLS.addAndGet(compared.cells());
      for (String difference : compared.differences()) {
        differences.add(moments.get(i) + ", one after the other: " + difference);
      }
    }
    return differences;
  }

  private static Night run(Path shop, Path out, OffsetDateTime asOf) throws RefusedException {
    var inputs = Inputs.read(shop, Progress.NONE);
    var documents = new XhtmlDocuments(inputs.shop().settings());
    var outcome = new NightlyRun(inputs, documents).run(out, asOf, List.of());
    return assertInstanceOf(NightOutcome.Done.class, outcome).report().night();
  }
}
