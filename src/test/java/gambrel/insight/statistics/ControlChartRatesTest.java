package gambrel.insight.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.trade.measure.Exact;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ControlChartRatesTest {
  private final SplittableRandom dice = new SplittableRandom(20_260_301);

  /** Mean 0 and one moving range of 1.128: limits from these two are of deviation 1 exactly. */
  private static List<BigFraction> known() {
    return new ArrayList<>(List.of(Exact.ofStatistic(0.564), Exact.ofStatistic(-0.564)));
  }

  private List<BigFraction> values(int number) {
    return Stream.generate(dice::nextGaussian).limit(number).map(Exact::ofStatistic).toList();
  }

  /** The chart of the known values and of those that follow, which are not compared with them. */
  private static ControlChart chart(List<BigFraction> all) {
    var restarts = new BitSet();
    restarts.set(2);
    return new ControlChart(all, restarts, 2);
  }

  /**
   * With p the normal probability beyond 3, 2, 1 and 0 deviations on one side: 2·0.00135;
   * 2·0.02275·(1 − 0.97725²); 2·0.15866·(4·0.15866³·0.84134 + 0.15866⁴); 2·0.5⁸. Signals of runs
   * come in clusters of about two, so the variance is twice the binomial one; the count may lie
   * four such deviations off, which a sound chart exceeds once in 16,000 runs. At twice the rate
   * the least frequent rule, two of three, gives 164 signals with a deviation of 18; 133 pass, so
   * that the test fails with probability 0.95, and more often for the other rules. (Beyond limits:
   * 216 with a deviation of 15 without clusters, 167 pass.)
   */
  @ParameterizedTest
  @CsvSource({
    "beyond-limits, 0.00270",
    "two-of-three, 0.00205",
    "four-of-five, 0.00447",
    "eight-on-one-side, 0.00781"
  })
  void eachRuleSpeaksAsOftenAsItsProbability(String rule, double probability) {
    int number = 40_000;
    var all = known();
    all.addAll(values(number));
    var chart = chart(all);
    Map<String, Integer> found = new HashMap<>();
    for (int i = 2; i < all.size(); i++) {
      chart.signals(i).forEach(code -> found.merge(code, 1, Integer::sum));
    }
    double deviation = Math.sqrt(2 * number * probability);
    assertEquals(number * probability, found.get(rule), 4 * deviation);
  }

  /**
   * Champ and Woodall, Exact Results for Shewhart Control Charts with Supplementary Runs Rules,
   * Technometrics 29 (1987), as quoted in the NIST/SEMATECH e-Handbook, 6.3.2, from memory: with
   * the four rules together a false alarm in 91.75 points on average, 371 with the limits alone.
   * The number of points is about geometric, so that its deviation is its mean; the mean of 400
   * runs may lie four deviations, 18, off. At twice the rate it is 46 with a deviation of 2.3: 12
   * deviations below the least that passes.
   */
  @Test
  void firstSignalComesAfterNinetyTwoPointsOnAverage() {
    int runs = 400;
    long points = 0;
    for (int run = 0; run < runs; run++) {
      points += firstSignal();
    }
    assertEquals(91.75, (double) points / runs, 4 * 91.75 / Math.sqrt(runs));
  }

  private int firstSignal() {
    int longest = 800;
    var all = known();
    all.addAll(values(longest));
    var chart = chart(all);
    int first = 1;
    while (first < longest && chart.signals(1 + first).isEmpty()) {
      first++;
    }
    return first;
  }

  /**
   * Limits estimated from few bodies are now and then too narrow, which costs more alarms than too
   * wide ones save. Rates of a separate simulation of 400 000 charts with a month of 21. Signals of
   * one chart come in clusters, so the variance is taken three times the binomial one. With limits
   * from 300 bodies 222 signals are expected and 325 pass; at twice the rate there are 443 with a
   * deviation of 36, so that the test fails with probability 0.99.
   */
  @ParameterizedTest
  @CsvSource({"20, 0.0396", "60, 0.0231", "300, 0.0176"})
  void limitsFromFewerBodiesGiveMoreFalseAlarms(int baseline, double rate) {
    int charts = 600;
    int month = 21;
    int signals = 0;
    for (int i = 0; i < charts; i++) {
      var chart = ControlChart.of(values(baseline + month), baseline);
      for (int point = baseline; point < baseline + month; point++) {
        signals += chart.signals(point).isEmpty() ? 0 : 1;
      }
    }
    double expected = charts * month * rate;
    assertEquals(expected, signals, 4 * Math.sqrt(3 * expected));
  }
}
