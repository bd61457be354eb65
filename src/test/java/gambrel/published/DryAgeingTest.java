package gambrel.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.insight.month.loss.FurtherDay;
import gambrel.insight.statistics.Trend;
import gambrel.trade.measure.Exact;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * "Dry aging of beef; Review", Journal of Animal Science and Technology 58:20 (2016), Table 1:
 * cooler shrink of dry-aged subprimals at 14, 21, 28 and 35 days
 * (beef_dry_vs_wet_ageing_subprimal.txt). Printed are the shrinks; lines and prices are worked from
 * them here, each sum short enough to follow.
 */
class DryAgeingTest {
  private static final String TABLE = "beef_dry_vs_wet_ageing_subprimal";

  private static List<Map<String, String>> rows(String subprimal) {
    return Published.table(TABLE, "method", "dry").stream()
        .filter(row -> row.get("subprimal").equals(subprimal))
        .toList();
  }

  private static Trend line(String subprimal) {
    return Trend.of(
            rows(subprimal).stream()
                .map(
                    row ->
                        new Trend.Point(
                            BigFraction.of(Integer.parseInt(row.get("days"))), shrink(row)))
                .toList())
        .orElseThrow();
  }

  private static BigFraction shrink(Map<String, String> row) {
    return Exact.fraction(new BigDecimal(row.get("cooler_shrink_pct")));
  }

  private static BigFraction exact(double value) {
    return Exact.fraction(new BigDecimal(value));
  }

  /**
   * Days lie 10.5, 3.5, 3.5 and 10.5 about 24.5, 245 in squares. The slope is 10.5 · (last − first)
   * + 3.5 · (third − second) over 245; for the ribeye (10.5 · 5.7 + 3.5 · 2.1) / 245 = 67.2 / 245.
   */
  @ParameterizedTest
  @CsvSource({"ribeye, 67.2", "strip, 44.8", "top sirloin, 69.3"})
  void isTheSlopeOfItsShrinkOnDays(String subprimal, double product) {
    assertEquals(product / 245, line(subprimal).slope(), 1e-12);
  }

  /**
   * The ribeye's printed shrinks: 92.4 of 100 are left to sell at 21 days and 90.3 at 28. What
   * brings 924 at a price of 10 must bring it at 924 / 90.3 = 10.2326.
   */
  @Test
  void isMadeUpByThePriceThatSellsTheSmallerPieceForTheSameMoney() {
    var printed = rows("ribeye");
    var at21 = shrink(printed.get(1));
    var further = shrink(printed.get(2)).subtract(at21);
    var rise = FurtherDay.rise(at21, further);
    assertEquals("2.326", Exact.round(rise, 3).toPlainString());
    var price = BigFraction.of(10).multiply(rise.divide(100).add(BigFraction.ONE));
    assertEquals(BigFraction.of(924), price.multiply(BigFraction.of(903, 10)));
  }

  /**
   * A line's price must make up what the table lost between two of its rows, but for how far those
   * rows lie off the line: no row lies more than half a point off it.
   */
  @ParameterizedTest
  @CsvSource({"ribeye", "strip", "top sirloin"})
  void pricesTheTablesWeeksToWithinAPoint(String subprimal) {
    var printed = rows(subprimal);
    var line = line(subprimal);
    var week = exact(7 * line.slope());
    for (int i = 0; i + 1 < printed.size(); i++) {
      var now = shrink(printed.get(i));
      int days = Integer.parseInt(printed.get(i).get("days"));
      assertEquals(now.doubleValue(), line.at(days), 0.5, subprimal + " at " + days);
      var byTable = FurtherDay.rise(now, shrink(printed.get(i + 1)).subtract(now));
      var byLine = FurtherDay.rise(exact(line.at(days)), week);
      assertEquals(byTable.doubleValue(), byLine.doubleValue(), 1.1, subprimal + " at " + days);
    }
  }

  /** What has dried costs more to dry further: the same loss is a larger part of less meat. */
  @Test
  void costsTheMoreTheLongerThePieceHasHung() {
    var line = line("top sirloin");
    var day = exact(line.slope());
    var early = FurtherDay.rise(exact(line.at(14)), day);
    var late = FurtherDay.rise(exact(line.at(35)), day);
    assertTrue(late.compareTo(early) > 0 && early.compareTo(day) > 0);
  }
}
