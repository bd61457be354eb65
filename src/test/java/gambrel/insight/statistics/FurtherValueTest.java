package gambrel.insight.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.insight.FalseAlarms;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

class FurtherValueTest {
  private static final int SAMPLES = Integer.getInteger("samples", 10_000);

  private static List<Double> values(double... values) {
    return DoubleStream.of(values).boxed().toList();
  }

  /**
   * Mean 6, s = √(40 / 4) = √10, √10 · √(1 + 1/5) = √12. Student's t of 4 degrees of freedom at
   * 0.975 is 2.776 (NIST/SEMATECH e-Handbook, table 1.3.6.7.2).
   */
  @Test
  void liesBetweenTheMeanLessAndPlusStudentsTimesTheSpread() {
    var further = FurtherValue.of(values(2, 4, 6, 8, 10), 0);
    assertEquals(6, further.mean(), 1e-12);
    assertEquals(Math.sqrt(12), further.spread(), 1e-12);
    assertEquals(2.776 * Math.sqrt(12), further.half(0.05), 0.002);
    assertEquals(0.025, further.above(2.776 * Math.sqrt(12)), 1e-4);
  }

  /**
   * The eight readings of the NIST/SEMATECH e-Handbook 1.3.5.17.1, from memory: G = 2.469. The
   * seven others have the mean 1405.9 / 7.
   */
  @Test
  void leavesOutTheOneReadingThatGrubbsTestFinds() {
    var further =
        FurtherValue.of(values(199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57), 0);
    assertEquals(7, further.number());
    assertEquals(1405.9 / 7, further.mean(), 1e-9);
  }

  @Test
  void takesEqualValuesToScatterLikeTheStepsOfTheScales() {
    var further = FurtherValue.of(values(2, 2, 2, 2, 2, 2, 2, 2), 0.3);
    assertEquals(8, further.number());
    assertEquals(0.3 * Math.sqrt(1.125), further.spread(), 1e-12);
  }

  /** Eight values, of which six would be left after two: a small sample keeps what it has. */
  @Test
  void keepsSixValues() {
    var further = FurtherValue.of(values(1, 1, 1, 1, 1, 99), 0.1);
    assertEquals(6, further.number());
  }

  @Test
  void isLeftByASoundValueNoMoreOftenThanPromised() {
    var dice = new SplittableRandom(7);
    for (int number : List.of(8, 20, 40)) {
      long outside = 0;
      for (int i = 0; i < SAMPLES; i++) {
        var values = new ArrayList<Double>();
        for (int k = 0; k < number; k++) {
          values.add(dice.nextGaussian());
        }
        var further = FurtherValue.of(values, 0);
        outside += Math.abs(dice.nextGaussian() - further.mean()) > further.half(0.05) ? 1 : 0;
      }
      new FalseAlarms(SAMPLES, 0.05).check(number + " values", outside);
      assertTrue(outside > SAMPLES / 25, "more often than once in 25");
    }
  }

  /** Of eight values, one of which is ten times the scatter off. */
  @Test
  void isAsNarrowAsWithoutAnOldOddValue() {
    var dice = new SplittableRandom(8);
    double with = 0;
    double without = 0;
    for (int i = 0; i < SAMPLES / 10; i++) {
      var values = new ArrayList<Double>();
      for (int k = 0; k < 19; k++) {
        values.add(dice.nextGaussian());
      }
      without += FurtherValue.of(values, 0).half(0.05);
      values.add(10.0);
      with += FurtherValue.of(values, 0).half(0.05);
    }
    assertEquals(1, with / without, 0.02);
  }
}
