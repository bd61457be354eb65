package gambrel.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.files.publish.HastyDisk;
import gambrel.night.Inputs;
import gambrel.night.NightlyRun;
import gambrel.oracle.CsvTrees;
import gambrel.oracle.RandomShop;
import gambrel.trade.reckoning.Progress;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every sum on every statement of random shops is what its printed parts add up to: boxes, the
 * picture, charges, tax by rate, what is owed here and in all. {@code -Dshops=200} tries more.
 */
class PrintedSumsTest {
  private static final int SHOPS = Integer.getInteger("shops", 20);
  private static int statements;
  private static int sums;

  @TempDir private Path folder;

  static IntStream shops() {
    return IntStream.range(0, SHOPS);
  }

  @AfterAll
  static void somethingWasAddedUp() {
    System.out.println(sums + " sums of " + statements + " statements added up");
    assertTrue(sums > 10 * SHOPS, "sums: " + sums);
  }

  @ParameterizedTest(name = "shop {0}")
  @MethodSource("shops")
  void areWhatThePartsAddUpTo(int seed) throws Exception {
    var shop = folder.resolve("shop");
    var moments = RandomShop.write(shop, seed, CsvTrees::of);
    var inputs = Inputs.read(shop, Progress.NONE);
    var documents = new ViewDocuments(inputs.shop().settings());
    for (var moment : moments) {
      new NightlyRun(inputs, documents, new HastyDisk(), Progress.NONE)
          .run(folder.resolve("out"), moment, List.of());
    }
    var wrong = new ArrayList<String>();
    for (var made : documents.made()) {
      var printed = new PrintedSums(made.view(), documents.wording());
      statements++;
      sums += printed.added();
      String name = made.planned().body() + ' ' + made.planned().customer() + ' ';
      printed.wrong().forEach(sum -> wrong.add(name + sum));
    }
    assertEquals(List.of(), wrong);
  }
}
