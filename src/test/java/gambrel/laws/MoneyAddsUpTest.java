package gambrel.laws;

import static gambrel.laws.NightTables.number;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.trade.shop.Payment;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The register, the charges and the accounts of a random shop agree to the last cent. */
class MoneyAddsUpTest {
  @TempDir private Path folder;
  private Path out;

  static IntStream seeds() {
    return LawShop.seeds();
  }

  @BeforeEach
  void chooseAFolder() {
    out = folder.resolve("out");
  }

  private NightTables tables() {
    return new NightTables(out.resolve("data"));
  }

  /** The latest row of the register of each customer and body; revisions stand in order. */
  private Collection<Map<String, String>> inForce() {
    var latest = new HashMap<String, Map<String, String>>();
    tables()
        .rows("statements.csv")
        .forEach(row -> latest.put(row.get("customer") + '\n' + row.get("body"), row));
    return latest.values();
  }

  private static BigDecimal sum(Collection<Map<String, String>> rows, String column) {
    return rows.stream().map(row -> number(row, column)).reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private static void assertSame(BigDecimal one, BigDecimal other, Object what) {
    assertEquals(0, one.compareTo(other), () -> one + " or " + other + ": " + what);
  }

  private void assertChargesAreTheStatements() {
    for (var statement : inForce()) {
      var lines =
          tables().rows("charges.csv").stream()
              .filter(line -> line.get("number").equals(statement.get("number")))
              .toList();
      assertSame(number(statement, "charges"), sum(lines, "amount"), statement);
      assertSame(number(statement, "tax"), sum(lines, "tax"), statement);
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void theChargesOfAStatementAddUpToItsRowOfTheRegister(int seed) {
    new LawShop(folder.resolve("shop"), seed).run(out);
    assertChargesAreTheStatements();
  }

  /** The setting number_from of the shop, else 1. */
  private int firstNumber() {
    try (var lines = Files.lines(folder.resolve("shop/shop.properties"))) {
      return lines
          .filter(line -> line.startsWith("number_from="))
          .map(line -> Integer.parseInt(line.substring(line.indexOf('=') + 1).strip()))
          .findFirst()
          .orElse(1);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void numbersAreConsecutiveInTheOrderOfCustomerAndBody(int seed) {
    new LawShop(folder.resolve("shop"), seed).run(out);
    var rows = tables().rows("statements.csv");
    int first = firstNumber();
    assertEquals(
        IntStream.range(first, first + rows.size()).mapToObj(String::valueOf).toList(),
        rows.stream().map(row -> row.get("number")).toList());
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void newPricesChangeNoLineThatWasIssued(int seed) {
    var shop = new LawShop(folder.resolve("shop"), seed);
    shop.run(out);
    var before = tables().rows("charges.csv");
    var numbers = before.stream().map(line -> line.get("number")).toList();
    shop.change("charges.csv", file -> file.each(MoneyAddsUpTest::dearer));
    shop.run(out);
    // A new price may make a row legible that held statements back: these go out now.
    var after = tables().rows("charges.csv").stream();
    assertEquals(before, after.filter(line -> numbers.contains(line.get("number"))).toList());
  }

  private static Map<String, String> dearer(Map<String, String> row) {
    row.computeIfPresent("price", (column, price) -> "9" + price.replace("-", ""));
    return row;
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void accountsAreTheRegisterAndThePayments(int seed) {
    var night = new LawShop(folder.resolve("shop"), seed).run(out).night();
    var payments =
        night.shop().payments().stream()
            .filter(payment -> !payment.date().isAfter(night.asOf().toLocalDate()))
            .toList();
    var customers = new TreeSet<String>();
    inForce().forEach(row -> customers.add(row.get("customer")));
    payments.forEach(payment -> customers.add(payment.customer()));
    var accounts = tables().rows("accounts.csv");
    assertEquals(customers, new TreeSet<>(accounts.stream().map(a -> a.get("customer")).toList()));
    assertEquals(customers.size(), accounts.size());
    for (var account : accounts) {
      var own =
          inForce().stream()
              .filter(row -> row.get("customer").equals(account.get("customer")))
              .toList();
      assertEquals(String.valueOf(own.size()), account.get("statements"));
      assertSame(sum(own, "charges"), number(account, "charges"), account);
      assertSame(sum(own, "tax"), number(account, "tax"), account);
      long paid =
          payments.stream()
              .filter(payment -> payment.customer().equals(account.get("customer")))
              .map(Payment::amount)
              .mapToLong(money -> money.minor())
              .sum();
      var minor = BigDecimal.valueOf(paid, number(account, "paid").scale());
      assertSame(minor, number(account, "paid"), account);
      var due = number(account, "charges").add(number(account, "tax")).subtract(minor);
      assertSame(due, number(account, "due"), account);
      // Money given back to a customer without a statement is owed, but for none.
      boolean owed = due.signum() > 0 && !own.isEmpty();
      assertEquals(!owed, account.get("oldest").isEmpty(), account::toString);
      assertTrue(
          account.get("oldest").isEmpty()
              || own.stream().anyMatch(r -> r.get("issued").startsWith(account.get("oldest"))),
          account::toString);
    }
  }
}
