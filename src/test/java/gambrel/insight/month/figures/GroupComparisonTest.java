package gambrel.insight.month.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.insight.FalseAlarms;
import gambrel.insight.month.figures.GroupComparison.Sample;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class GroupComparisonTest {
  private static final double CLOSE = 1e-4;

  private static List<Sample> samples(String kind, String group, double... values) {
    var samples = new ArrayList<Sample>();
    for (double value : values) {
      samples.add(new Sample(kind, group, value));
    }
    return samples;
  }

  private static List<Sample> both(List<Sample> a, List<Sample> b) {
    var all = new ArrayList<>(a);
    all.addAll(b);
    return all;
  }

  /**
   * Eight values of 9 and 11 by halves against eight three lower: scatter 16/14, standard error
   * √(16/14 · 2/8) = 0.53452, t(14, 0.99975) = 4.49916 by integrating its density apart.
   */
  @Test
  void twoGroupsOfOneKindGetTheTwoSampleInterval() {
    var a = samples("steer", "a", 9, 11, 9, 11, 9, 11, 9, 11);
    var b = samples("steer", "b", 6, 8, 6, 8, 6, 8, 6, 8);
    var difference = GroupComparison.of(both(a, b), "a", 1).orElseThrow();
    assertEquals(3, difference.mean(), CLOSE);
    assertEquals(3 - 4.49916 * 0.53452, difference.low(), CLOSE);
    assertEquals(3 + 4.49916 * 0.53452, difference.high(), CLOSE);
    assertTrue(isSure(difference));
  }

  /** Cows give 10 more than steers; a has the cows, and is 1 above in each kind. */
  @Test
  void kindsAreComparedWithinThemselvesSoThatTheirMixTellsNothing() {
    var a = both(samples("cow", "a", 20, 22, 20, 22, 20, 22), samples("steer", "a", 10, 12));
    var b = both(samples("cow", "b", 19, 21), samples("steer", "b", 9, 11, 9, 11, 9, 11));
    assertEquals(1, GroupComparison.of(both(a, b), "a", 1).orElseThrow().mean(), CLOSE);
  }

  @Test
  void bodiesWithoutTheirLikeOnTheOtherSideDoNotCount() {
    var a = samples("steer", "a", 9, 11, 9, 11, 9, 11, 9, 11);
    var b = samples("cow", "b", 7, 9, 7, 9, 7, 9, 7, 9);
    assertTrue(GroupComparison.of(both(a, b), "a", 1).isEmpty());
  }

  @Test
  void fewerThanEightOnASideAreNotCompared() {
    var eight = samples("steer", "a", 9, 11, 9, 11, 9, 11, 9, 11);
    var seven = samples("steer", "b", 7, 9, 7, 9, 7, 9, 7);
    assertTrue(GroupComparison.eachAgainstTheRest(both(eight, seven), 1).isEmpty());
  }

  @Test
  void moreComparisonsMakeEachOfThemHarder() {
    var a = samples("steer", "a", 9, 11, 9, 11, 9, 11, 9, 11);
    var b = samples("steer", "b", 7, 9, 7, 9, 7, 9, 7, 9);
    var alone = GroupComparison.of(both(a, b), "a", 1).orElseThrow();
    var oneOfTen = GroupComparison.of(both(a, b), "a", 10).orElseThrow();
    assertTrue(oneOfTen.low() < alone.low() && oneOfTen.high() > alone.high());
  }

  @Test
  void valuesWithoutAnyScatterDivideByNothing() {
    var a = samples("steer", "a", 9, 9, 9, 9, 9, 9, 9, 9);
    var b = samples("steer", "b", 9, 9, 9, 9, 9, 9, 9, 9);
    var difference = GroupComparison.of(both(a, b), "a", 1).orElseThrow();
    assertEquals(0, difference.mean());
    assertFalse(isSure(difference));
  }

  /**
   * Three boners who do not differ, 52,000 times: with one false alarm in two thousand divided
   * among them, at most 26 are expected, and at most 42 pass. At twice the rate 52 are expected,
   * and this test fails with probability 0.91.
   */
  @Test
  void groupsThatDoNotDifferAreToldApartNoMoreOftenThanPromised() {
    var dice = new SplittableRandom(20260401);
    int alarms = 0;
    for (int shop = 0; shop < 52_000; shop++) {
      var all = new ArrayList<Sample>();
      for (int body = 0; body < 36; body++) {
        String kind = body % 2 == 0 ? "steer" : "cow";
        all.add(new Sample(kind, "boner" + body % 3, 17 + 0.8 * dice.nextGaussian()));
      }
      boolean told =
          GroupComparison.eachAgainstTheRest(all, 1).values().stream().anyMatch(d -> isSure(d));
      alarms += told ? 1 : 0;
    }
    new FalseAlarms(52_000, AlarmRates.COMPARISON).check("boners", alarms);
  }

  private static boolean isSure(GroupComparison.Difference difference) {
    return difference.low() > 0 || difference.high() < 0;
  }
}
