package gambrel.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.night.Trees;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The unit in which a shop keeps its books changes no state, no reason and no percentage. */
class PoundShopTest {
  private static final BigDecimal POUND = new BigDecimal("0.45359237");
  private static final List<String> PERCENTAGES =
      List.of(
          "dressing_pct",
          "chill_shrink_pct",
          "ageing_shrink_pct",
          "take_home_of_hot_pct",
          "take_home_of_cold_pct",
          "meat_of_cold_pct");

  /** Each weighing is kept to 0.00001 of the unit, so that it is off by half of that. */
  private static final BigDecimal HALF_STEP = new BigDecimal("0.000005");

  /** A batch's part of a body is a whole thousandth. */
  private static final BigDecimal THOUSANDTH = new BigDecimal("0.001");

  @TempDir private Path folder;

  static IntStream seeds() {
    return LawShop.seeds();
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void theSameScalesInAShopOfTheOtherUnit(int seed) {
    var shop = new LawShop(folder.resolve("shop"), seed);
    shop.remove("charges.csv");
    shop.remove("releases.csv");
    // A test weight that is off by exactly the limit may pass in one unit and fail in the other.
    shop.change("codes.csv", f -> f.each(PoundShopTest::untested));
    var before = shop.night().rows("bodies.csv");
    boolean pounds = !before.isEmpty() && before.get(0).containsKey("hot_lb");
    long rows = shop.exports().values().stream().mapToLong(file -> file.rows().size()).sum();
    keepBooksIn(shop, pounds ? "lb" : "kg", pounds ? "kg" : "lb");
    var after = shop.night().rows("bodies.csv");

    assertEquals(before.size(), after.size());
    for (int i = 0; i < before.size(); i++) {
      assertAgree(before.get(i), after.get(i), rows);
    }
  }

  /**
   * A percentage is a part of a whole. Both are off by half a step a row at most, and by a
   * thousandth for every batch, in both shops; a percentage is printed to a thousandth.
   */
  private static void assertAgree(Map<String, String> one, Map<String, String> other, long rows) {
    assertEquals(one.get("state"), other.get("state"), one::toString);
    assertEquals(one.get("reasons"), other.get("reasons"), one::toString);
    for (var column : PERCENTAGES) {
      assertEquals(one.get(column).isEmpty(), other.get(column).isEmpty(), column + one);
      if (!one.get(column).isEmpty()) {
        var off =
            HALF_STEP.multiply(BigDecimal.valueOf(rows)).add(THOUSANDTH.multiply(BigDecimal.TEN));
        var whole = wholeOf(column, one).min(wholeOf(column, other)).max(BigDecimal.ONE);
        var bound =
            off.multiply(BigDecimal.valueOf(400))
                .divide(whole, MathContext.DECIMAL32)
                .add(THOUSANDTH);
        var difference =
            new BigDecimal(one.get(column)).subtract(new BigDecimal(other.get(column)));
        assertTrue(difference.abs().compareTo(bound) <= 0, () -> column + " " + one + other);
      }
    }
  }

  private static BigDecimal wholeOf(String column, Map<String, String> body) {
    return switch (column) {
      case "dressing_pct" -> NightTables.weight(body, "live");
      case "chill_shrink_pct", "take_home_of_hot_pct" -> NightTables.weight(body, "hot");
      default -> NightTables.weight(body, "cold").max(NightTables.weight(body, "boning"));
    };
  }

  private static void keepBooksIn(LawShop shop, String from, String to) {
    var settings = String.join("\n", Trees.lines(shop.folder().resolve("shop.properties")));
    shop.write("shop.properties", settings.replace("unit=" + from, "unit=" + to) + "\n");
    shop.change("scales.csv", f -> f.each(row -> named(row, from)));
    shop.change("bodies.csv", f -> f.each(row -> converted(row, to, "live_weight")));
    shop.change("codes.csv", f -> f.each(row -> converted(row, to, "tare")));
  }

  private static Map<String, String> untested(Map<String, String> code) {
    var untested = new HashMap<>(code);
    untested.put("nominal", "");
    return untested;
  }

  private static Map<String, String> named(Map<String, String> scale, String unit) {
    var named = new HashMap<>(scale);
    named.computeIfPresent("unit", (column, own) -> own.isEmpty() ? unit : own);
    return named;
  }

  /** Cells in the shop's unit, to a hundred-thousandth of the other. */
  private static Map<String, String> converted(
      Map<String, String> row, String to, String... columns) {
    var changed = new HashMap<>(row);
    for (var column : columns) {
      changed.computeIfPresent(
          column, (same, text) -> text.isEmpty() ? text : convert(text, to).toPlainString());
    }
    return changed;
  }

  private static BigDecimal convert(String text, String to) {
    var exact =
        to.equals("kg")
            ? new BigDecimal(text).multiply(POUND)
            : new BigDecimal(text).divide(POUND, MathContext.DECIMAL64);
    return exact.setScale(5, RoundingMode.HALF_UP);
  }
}
