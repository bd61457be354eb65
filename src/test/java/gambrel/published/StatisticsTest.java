package gambrel.published;

import static gambrel.published.Published.assertPrinted;
import static gambrel.published.Published.table;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.insight.statistics.Mean;
import gambrel.insight.statistics.Moments;
import gambrel.insight.statistics.Trend;
import gambrel.trade.measure.Exact;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * NIST/ITL Statistical Reference Datasets: certified values to fifteen digits. The source of each
 * set stands in the text file beside its table.
 */
class StatisticsTest {
  @ParameterizedTest
  @ValueSource(strings = {"Lew", "Mavro", "Michelso", "NumAcc1", "NumAcc2", "NumAcc3"})
  void meansOfUnivariateSetsToEveryCertifiedDigit(String set) {
    var values =
        table("nist_strd_" + set.toLowerCase(Locale.ROOT)).stream()
            .map(row -> Exact.fraction(new BigDecimal(row.get("y"))))
            .toList();
    assertEquals(Integer.parseInt(certified(set, "mean").get("n")), values.size());
    assertPrinted(
        certified(set, "mean").get("certified_value"),
        Exact.round(Mean.of(values), 30).toPlainString(),
        set + " mean");
  }

  /**
   * Least digits in agreement with the certified fifteen. A double holds no more than that, and
   * sums of 36 products cost one or two; the intercept is a small difference of large numbers and
   * keeps twelve.
   */
  @ParameterizedTest
  @CsvSource({"B0_estimate, 12", "B1_estimate, 14", "B1_sd, 13", "residual_sd, 13"})
  void theLineOfNorrisToAsManyDigitsAsDoublesKeep(String statistic, int digits) {
    var points =
        table("nist_strd_norris").stream()
            .map(row -> new Trend.Point(number(row.get("x")), number(row.get("y"))))
            .toList();
    var trend = Trend.of(points).orElseThrow();
    var computed =
        Map.of(
            "B0_estimate", trend.intercept(),
            "B1_estimate", trend.slope(),
            "B1_sd", trend.slopeError(),
            "residual_sd", trend.residual());
    double expected = Double.parseDouble(certified("Norris", statistic).get("certified_value"));
    double reached = agreement(computed.get(statistic), expected);
    assertTrue(reached >= digits, statistic + " agrees to " + reached + " digits");
  }

  /** NIST/SEMATECH e-Handbook 1.3.6.7.2, upper critical values of Student's t, from memory. */
  @ParameterizedTest
  @CsvSource({"1, 0.025, 12.706", "10, 0.025, 2.228", "30, 0.005, 2.750", "100, 0.05, 1.660"})
  void studentsTAsPrinted(int degrees, double above, String printed) {
    assertPrinted(
        printed, BigDecimal.valueOf(Moments.studentsAbove(degrees, above)).toPlainString(), "t");
  }

  /** y = 1 + 2 x. */
  @Test
  void aPlainLineThatAReaderCanDraw() {
    var line =
        Trend.of(List.of(point("0", "1"), point("1", "3"), point("2", "5"), point("3", "7")))
            .orElseThrow();
    assertEquals(2, line.slope(), 1e-15);
    assertEquals(1, line.intercept(), 1e-15);
    assertEquals(0, line.slopeMargin(0.95), 1e-12);
  }

  private static Trend.Point point(String x, String y) {
    return new Trend.Point(number(x), number(y));
  }

  private static BigFraction number(String text) {
    return Exact.fraction(new BigDecimal(text));
  }

  private static Map<String, String> certified(String set, String statistic) {
    return table("nist_strd_certified", "dataset", set).stream()
        .filter(row -> row.get("statistic").equals(statistic))
        .findFirst()
        .orElseThrow();
  }

  /** Digits in agreement: −log10 of the relative error, at most fifteen. */
  private static double agreement(double computed, double certified) {
    double error = Math.abs(computed - certified) / Math.abs(certified);
    return error == 0 ? 15 : Math.min(15, -Math.log10(error));
  }
}
