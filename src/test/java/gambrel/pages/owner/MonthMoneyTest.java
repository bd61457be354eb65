package gambrel.pages.owner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.night.Inputs;
import gambrel.night.NightlyRun;
import gambrel.night.PlainDocuments;
import gambrel.oracle.CsvTrees;
import gambrel.oracle.ExactNight;
import gambrel.oracle.RandomShop;
import gambrel.trade.reckoning.Progress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The most to bid, what 100 g more on a cut earns, what was charged by kind and for a unit of
 * weight, and the accounts of a month agree with a second calculation from the manual's definitions
 * that shares no code with the program.
 */
class MonthMoneyTest {
  private static final int SEEDS = Integer.getInteger("seeds", 12);
  private static final List<String> FIGURES =
      List.of(
          "bid_take_home_pct",
          "bid_worth_of_hot",
          "bid_work_of_hot",
          "bid_of_hot",
          "more_on_cut",
          "charged",
          "charged_of_boning",
          "statements_net",
          "statements_tax",
          "statements_received",
          "statements_owed",
          "owed");

  /** How many values of each figure were compared. */
  private static final Map<String, Integer> COMPARED = new ConcurrentSkipListMap<>();

  @TempDir private Path folder;

  static IntStream seeds() {
    return IntStream.range(0, SEEDS);
  }

  @AfterAll
  static void everyFigureWasMet() {
    System.out.println("values of a month's money compared: " + COMPARED);
    assertTrue(COMPARED.keySet().containsAll(FIGURES), COMPARED::toString);
  }

  /** Shops with every kind of slip, at their last moment. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void agreesInARandomShop(int seed) throws Exception {
    var moments = RandomShop.write(folder, seed, CsvTrees::of);
    writeValues(seed);
    assertAgreement(moments.get(moments.size() - 1));
  }

  /** Shops that work without slips, in kilos and in pounds; some customers have paid. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void agreesInABusyShop(int seed) throws Exception {
    new BusyShop(folder, seed, seed % 2 == 1).with(14).inputs();
    var paid = new StringBuilder("customer,body,date,amount\n");
    var dice = new SplittableRandom(seed);
    for (var customer : List.of("c-ann", "c-bob", "c-trust")) {
      paid.append(
          "%s,,2026-12-%d,%d.%02d\n"
              .formatted(customer, 10 + dice.nextInt(20), dice.nextInt(2_000), dice.nextInt(100)));
    }
    Files.writeString(folder.resolve("payments.csv"), paid);
    assertAgreement(OffsetDateTime.parse(BusyShop.LATER));
  }

  private void assertAgreement(OffsetDateTime asOf) throws Exception {
    var out = folder.resolve("reports");
    var inputs = Inputs.read(folder, Progress.NONE);
    new NightlyRun(inputs, new PlainDocuments()).run(out, asOf, List.of());
    var data = out.resolve("data");
    var expected = ExactNight.of(folder, asOf, CsvTrees.of(folder)).money(folder, data);
    var found = ExactNight.printedMoney(data, FIGURES);
    found.keySet().forEach(key -> COMPARED.merge(key.split("\\|")[1], 1, Integer::sum));
    assertEquals(lines(expected), lines(found));
  }

  private static String lines(Map<String, String> figures) {
    var text = new StringBuilder();
    new TreeMap<>(figures).forEach((key, value) -> text.append(key + " = " + value + "\n"));
    return text.toString();
  }

  /** Values of two thirds of the items, some with a change in the middle. */
  private void writeValues(int seed) throws Exception {
    var dice = new SplittableRandom(seed);
    var items =
        List.of(
            "carcase",
            "mince",
            "sausages",
            "rump",
            "leg",
            "loin",
            "shoulder",
            "blade",
            "brisket",
            "chuck",
            "topside",
            "striploin",
            "belly",
            "bone",
            "shank",
            "rib-set",
            "forequarter",
            "hindquarter",
            "trim");
    var text = new StringBuilder("item,value,from,to\n");
    for (var item : items) {
      if (dice.nextInt(3) > 0) {
        text.append("%s,%d.%02d,,\n".formatted(item, dice.nextInt(5, 40), dice.nextInt(100)));
      }
      if (dice.nextInt(5) == 0) {
        text.append(
            "%s,%d.50,2026-0%d-15,\n".formatted(item, dice.nextInt(5, 40), dice.nextInt(1, 10)));
      }
    }
    Files.writeString(folder.resolve("values.csv"), text);
  }
}
