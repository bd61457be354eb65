package gambrel.insight.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Groups;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class ControlChartTest {
  /**
   * NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2, flow-rate example: printed mean
   * 50.81, upper limit 55.8041, lower limit 45.8159.
   */
  @Test
  void reproducesTheHandbooksIndividualsExample() {
    var chart =
        chart("49.6", "47.6", "49.9", "51.3", "47.8", "51.2", "52.6", "52.4", "53.6", "52.1");
    assertEquals("50.81", printed(chart.centre().orElseThrow(), 2));
    assertEquals("55.8041", printed(chart.upper().orElseThrow(), 4));
    assertEquals("45.8159", printed(chart.lower().orElseThrow(), 4));
    assertTrue(IntStream.range(0, 10).allMatch(i -> chart.signals(i).isEmpty()));
  }

  @Test
  void oneValueHasACentreAndNoLimits() {
    var chart = chart("2.5");
    assertEquals("2.500", printed(chart.centre().orElseThrow(), 3));
    assertTrue(chart.lower().isEmpty() && chart.upper().isEmpty());
    assertEquals(List.of(), chart.signals(0));
  }

  @Test
  void noValueHasNoCentre() {
    assertTrue(chart().centre().isEmpty());
  }

  @Test
  void valuesThatNeverMoveGiveLimitsAndNoSignal() {
    var chart = chart("2", "2", "2");
    assertEquals("2.000", printed(chart.upper().orElseThrow(), 3));
    assertEquals(List.of(), chart.signals(2));
  }

  @Test
  void whereValuesNeverMovedAnyOtherValueIsBeyondTheLimits() {
    var thirds = Collections.nCopies(30, BigFraction.of(7, 3));
    var chart = ControlChart.of(Groups.both(thirds, List.of(BigFraction.of(4))), 30);
    assertEquals(List.of("beyond-limits"), chart.signals(30));
    assertEquals(List.of(), chart.signals(29));
  }

  @Test
  void aValueBeyondTheLimitsIsASignal() {
    var chart = chart("1", "1.1", "1", "1.1", "1", "1.1", "1", "1.1", "1", "9");
    assertTrue(chart.signals(9).contains("beyond-limits"));
    assertEquals(List.of(), chart.signals(4));
  }

  @Test
  void eightValuesOnOneSideOfTheCentreAreASignalFromTheEighthOn() {
    var chart =
        chart("3", "1", "3", "1", "1.9", "1.8", "1.9", "1.8", "1.9", "1.8", "1.9", "1.8", "9", "1");
    assertEquals(List.of(), chart.signals(9));
    assertTrue(chart.signals(10).contains("eight-on-one-side"));
  }

  @Test
  void aMeanOfThirdsIsNotSpoiltByTheirDecimals() {
    var chart =
        ControlChart.of(
            List.of(BigFraction.of(1, 3), BigFraction.of(2, 3), BigFraction.of(1, 2000)), 3);
    // (1/3 + 2/3 + 1/2000) / 3 = 2001/6000 = 0.3335, exactly half-way.
    assertEquals(new BigDecimal("0.334"), ControlChart.output(chart.centre().orElseThrow()));
  }

  private static ControlChart chart(String... values) {
    return ControlChart.of(fractions(List.of(values)), values.length);
  }

  private static List<BigFraction> fractions(List<String> values) {
    return values.stream().map(v -> Exact.fraction(new BigDecimal(v))).toList();
  }

  private static String printed(BigDecimal value, int decimals) {
    return value.setScale(decimals, RoundingMode.HALF_UP).toPlainString();
  }

  /** The values after a first stretch that alone makes the limits: centre 0, sigma 3. */
  private static ControlChart after(String... values) {
    // 0, 3.384, 0, -3.384, 0: mean 0, every moving range 3.384 = 3 * 1.128
    var all = new ArrayList<>(List.of("0", "3.384", "0", "-3.384", "0"));
    all.addAll(List.of(values));
    return ControlChart.of(fractions(all), 5);
  }

  private static List<String> lastSignals(String... values) {
    return after(values).signals(4 + values.length);
  }

  @Test
  void onlyAValueBeyondThreeSigmasIsBeyondTheLimits() {
    assertEquals(List.of(), lastSignals("9"));
    assertEquals(List.of("beyond-limits"), lastSignals("9.001"));
    assertEquals(List.of("beyond-limits"), lastSignals("-9.001"));
  }

  @Test
  void twoOfThreeBeyondTwoSigmasOnOneSideAreASignal() {
    assertEquals(List.of("two-of-three"), lastSignals("6.1", "6.1"));
    assertEquals(List.of("two-of-three"), lastSignals("6.1", "0", "6.1"));
    assertEquals(List.of("two-of-three"), lastSignals("-6.1", "0", "-6.1"));
  }

  @Test
  void twoOfFourBeyondTwoSigmasAreNone() {
    assertEquals(List.of(), lastSignals("6.1", "0", "0", "6.1"));
  }

  @Test
  void twoAtTwoSigmasOrOnTwoSidesAreNone() {
    assertEquals(List.of(), lastSignals("6", "6"));
    assertEquals(List.of(), lastSignals("6.1", "-6.1"));
  }

  @Test
  void theValueAfterTwoBeyondTwoSigmasIsNoSignalItself() {
    assertEquals(List.of(), lastSignals("6.1", "6.1", "0"));
  }

  @Test
  void fourOfFiveBeyondOneSigmaOnOneSideAreASignal() {
    assertEquals(List.of("four-of-five"), lastSignals("3.1", "3.1", "0", "3.1", "3.1"));
    assertEquals(List.of("four-of-five"), lastSignals("-3.1", "-3.1", "0", "-3.1", "-3.1"));
  }

  @Test
  void threeOfFiveOrFourOfSixBeyondOneSigmaAreNone() {
    assertEquals(List.of(), lastSignals("3.1", "0", "0", "3.1", "3.1"));
    assertEquals(List.of(), lastSignals("3.1", "3.1", "0", "0", "3.1", "3.1"));
  }

  @Test
  void fourAtOneSigmaOrOneOfThemOnTheOtherSideAreNone() {
    assertEquals(List.of(), lastSignals("3", "3", "3", "3"));
    assertEquals(List.of(), lastSignals("3.1", "3.1", "-3.1", "0", "3.1"));
  }

  @Test
  void aValueAtTheCentreEndsARunOfEight() {
    assertEquals(List.of("eight-on-one-side"), lastSignals("1", "1", "1", "1", "1", "1", "1", "1"));
    assertEquals(List.of(), lastSignals("1", "1", "1", "0", "1", "1", "1", "1"));
    assertEquals(List.of(), lastSignals("1", "1", "1", "1", "1", "1", "1"));
  }

  @Test
  void noRunReachesBackAcrossARestart() {
    var values = List.of("0", "3.384", "0", "-3.384", "0", "6.1", "6.1");
    for (int restart : List.of(5, 6)) {
      var restarts = new BitSet();
      restarts.set(restart);
      var chart = new ControlChart(fractions(values), restarts, 5);
      assertEquals(List.of(), chart.signals(6), "restart " + restart);
    }
  }
}
