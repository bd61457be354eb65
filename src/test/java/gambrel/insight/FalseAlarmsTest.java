package gambrel.insight;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FalseAlarmsTest {
  /** 0.99^12 = 0.88638, 12 · 0.01 · 0.99^11 = 0.10744, 66 · 0.01² · 0.99^10 = 0.00597. */
  @Test
  void boundIsTheLeastCountThatChanceSeldomExceeds() {
    var twelve = new FalseAlarms(12, 0.01);
    assertEquals(2, twelve.most());
    assertDoesNotThrow(() -> twelve.check("two", 2));
    assertThrows(AssertionError.class, () -> twelve.check("three", 3));
  }

  @Test
  void nothingMayComeUpWhereNothingIsPromisedToBeFalse() {
    assertEquals(0, new FalseAlarms(12, 0).most());
  }

  /** The sizes at which an alarm test fails in nine of ten runs if its rate is twice as high. */
  @ParameterizedTest
  @CsvSource({
    "a test at one in a hundred, 2600, 0.01",
    "a test at one in two thousand, 52000, 0.0005",
    "a test at one in fifty, 1300, 0.02",
    "bodies beyond limits from 48 bodies, 4320, 0.006",
    "bodies beyond limits from 300 bodies, 8600, 0.003",
    "pairs of signals, 1530, 0.017"
  })
  void enoughTrialsTellTwiceTheRateFromTheRate(String what, int trials, double rate) {
    assertTrue(new FalseAlarms(trials, rate).power() > 0.9, what);
  }

  /** Made-up counts: a program at its rate passes, one at twice its rate fails by the power. */
  @Test
  void madeUpCountsFailAsOftenAsThePowerSays() {
    var alarms = new FalseAlarms(2600, 0.01);
    int runs = 1000;
    double deviation = Math.sqrt(runs * alarms.power() * (1 - alarms.power()));
    assertEquals(runs * alarms.power(), failures(alarms, 0.02, runs), 4 * deviation);
    assertTrue(failures(alarms, 0.01, runs) <= new FalseAlarms(runs, 0.002).most());
  }

  private static int failures(FalseAlarms alarms, double rate, int runs) {
    var dice = new SplittableRandom(20_261_129);
    int most = alarms.most();
    int failures = 0;
    for (int run = 0; run < runs; run++) {
      int found = 0;
      for (int trial = 0; trial < alarms.trials(); trial++) {
        found += dice.nextDouble() < rate ? 1 : 0;
      }
      failures += found > most ? 1 : 0;
    }
    return failures;
  }
}
