package gambrel.laws;

import static gambrel.laws.NightTables.number;
import static gambrel.laws.NightTables.weight;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.trade.account.Bill;
import gambrel.trade.balance.BodyBalance;
import gambrel.trade.balance.Outputs;
import gambrel.trade.measure.Money;
import gambrel.trade.measure.Weight;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.shop.Charge.Basis;
import gambrel.trade.shop.Customer;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What goes into a random shop comes out of it again: mass, batches, shares, money, rows. */
class WholeNightsAddUpTest {
  /** Half a thousandth for each of the four or nine printed figures that are added. */
  private static final BigDecimal BATCH_ROUNDING = new BigDecimal("0.002");

  private static final BigDecimal BODY_ROUNDING = new BigDecimal("0.0045");

  @TempDir private Path folder;

  static IntStream seeds() {
    return LawShop.seeds();
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void aBodysWeightIsItsPacksTubsBinsAndLossToTheLastDigit(int seed) {
    var night = new LawShop(folder.resolve("shop"), seed).run().night();
    for (var account : night.bodies().values()) {
      var balance = account.balance();
      var loss = balance.outputs().flatMap(Outputs::cuttingLoss);
      if (loss.isPresent()) {
        var out = out(balance, night.ledger().weighings().stream().toList());
        assertEquals(balance.boning().orElseThrow(), out.plus(loss.get()), account.body().id());
      }
    }
  }

  /** What left the block by the ledger: no offal, no rail trim, no tub that went nowhere. */
  private static Weight out(BodyBalance balance, List<Weighing> weighings) {
    var trimmed = balance.trim().all();
    var tree = balance.weighings().tree();
    return Weighing.total(
        weighings.stream()
            .filter(w -> w.body().equals(balance.body().id()))
            .filter(
                w ->
                    w.step() == Step.BIN
                        || w.step() == Step.TUB && w.inBatch()
                        || w.step() == Step.PACK && !w.inBatch())
            .filter(w -> !trimmed.contains(w))
            .filter(w -> !tree.find(w.item()).orElseThrow().kind().id().equals("offal"))
            .toList());
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void thePrintedFiguresOfABodyAddUp(int seed) {
    var tables = new LawShop(folder.resolve("shop"), seed).night();
    for (var body : tables.rows("bodies.csv")) {
      if (number(body, column(body, "cutting_loss")).signum() != 0
          && !body.get(column(body, "batch_loss")).isEmpty()) {
        var out =
            List.of("take_home", "batch_loss", "bone", "fat", "waste", "cutting_loss").stream()
                .map(name -> weight(body, name))
                .reduce(weight(body, "rail_trim").negate(), BigDecimal::add)
                .subtract(offalInBins(tables, body.get("body")));
        assertNear(weight(body, "boning"), out, BODY_ROUNDING, body);
      }
    }
  }

  /** It was never hung: it is weighed as waste and is none of what the body lost. */
  private static BigDecimal offalInBins(NightTables tables, String body) {
    return tables.rows("cuts.csv").stream()
        .filter(row -> row.get("body").equals(body))
        .filter(row -> row.get("kind").equals("offal") && row.get("step").equals("bin"))
        .map(row -> weight(row, "weight"))
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private static String column(Map<String, String> row, String name) {
    return row.containsKey(name + "_kg") ? name + "_kg" : name + "_lb";
  }

  private static void assertNear(BigDecimal one, BigDecimal other, BigDecimal most, Object what) {
    assertTrue(
        one.subtract(other).abs().compareTo(most) <= 0, () -> one + " or " + other + ": " + what);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void whatGoesIntoABatchComesOutOfItOrIsItsLoss(int seed) {
    var shop = new LawShop(folder.resolve("shop"), seed);
    for (var batch : shop.night().rows("batches.csv")) {
      if (!batch.get(column(batch, "loss")).isEmpty()) {
        var in = weight(batch, "meat_in").add(weight(batch, "added"));
        assertNear(in, weight(batch, "out").add(weight(batch, "loss")), BATCH_ROUNDING, batch);
      }
    }
    for (var batch : shop.run().night().batches().values()) {
      // The parts together are whole thousandths, half up.
      long parts = Weight.sum(batch.partByBody().values()).thousandths();
      assertTrue(parts <= batch.meatIn().thousandths(), batch.batch().id());
      assertTrue(parts <= batch.out().thousandths(), batch.batch().id());
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void whatTheOwnersTakeHomeIsWhatTheBodyGives(int seed) {
    var night = new LawShop(folder.resolve("shop"), seed).run().night();
    for (var account : night.bodies().values()) {
      var whole = account.balance().outputs().map(Outputs::takeHome);
      if (whole.isPresent() && account.body().sharesAddUp()) {
        long parts =
            account.entitlements().values().stream()
                .mapToLong(e -> e.takeHome().hundredThousandths())
                .sum();
        // Each item and batch part is rounded to a thousandth once before it is divided.
        long most = 50L * account.balance().weighings().all().size();
        long off = Math.abs(whole.get().hundredThousandths() - parts);
        assertTrue(off <= most, () -> account.body().id() + " is off by " + off);
      }
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void theOwnersPartsOfAChargeAreTheWholeCharge(int seed) {
    var shop = new LawShop(folder.resolve("shop"), seed);
    boolean included = shop.run().night().shop().settings().taxIncluded();
    for (var account : shop.run().night().bodies().values()) {
      var owners = account.body().owners();
      boolean whole = account.body().sharesAddUp() && !owners.containsKey(Customer.SHOP);
      for (var line : whole ? account.bill().lines() : List.<Bill.Line>of()) {
        // Everybody pays a charge on shares in full.
        int times = line.charge().basis() == Basis.SHARE ? owners.size() : 1;
        var parts = line.parts().values();
        var net = parts.stream().map(p -> p.net()).reduce(Money.ZERO, Money::plus);
        var tax = parts.stream().map(p -> p.tax()).reduce(Money.ZERO, Money::plus);
        var paid = included ? net.plus(tax) : net;
        assertEquals(line.amount().minor() * times, paid.minor(), () -> told(account));
        assertEquals(line.tax().minor() * times, tax.minor(), () -> told(account));
      }
    }
  }

  private static String told(BodyAccount account) {
    return account.body().id();
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void whatIsDueIsChargesAndTaxLessWhatWasPaid(int seed) {
    var shop = new LawShop(folder.resolve("shop"), seed);
    for (var row : shop.night().rows("statements.csv")) {
      assertEquals(
          number(row, "charges").add(number(row, "tax")).subtract(number(row, "paid")),
          number(row, "due"),
          row::toString);
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void everyRowOfEveryExportIsCountedOnce(int seed) {
    var shop = new LawShop(folder.resolve("shop"), seed);
    var read =
        shop.night().rows("rows.csv").stream()
            .collect(Collectors.toMap(r -> r.get("file"), WholeNightsAddUpTest::counted));
    var there =
        shop.exports().entrySet().stream()
            .collect(Collectors.toMap(e -> e.getKey(), e -> e.getValue().rows().size()));
    assertEquals(there, read);
  }

  private static int counted(Map<String, String> row) {
    int fates =
        List.of("used", "repeat", "void", "set_aside").stream()
            .mapToInt(fate -> number(row, fate).intValueExact())
            .sum();
    assertEquals(number(row, "read").intValueExact(), fates, row::toString);
    return fates;
  }
}
