package gambrel.insight.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.insight.FalseAlarms;
import gambrel.insight.statistics.DayValues.Effect;
import gambrel.insight.statistics.DayValues.Value;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class DayValuesTest {
  private static final LocalDate FIRST = LocalDate.of(2026, 1, 5);
  private static final double CLOSE = 1e-9;

  private static Value value(String kind, int day, double value) {
    return new Value(List.of(kind), FIRST.plusDays(day), value, 0);
  }

  private static double[] last(int of, int number) {
    return IntStream.range(0, of).mapToDouble(i -> i < of - number ? 0 : 1).toArray();
  }

  /** Four pairs of 1 and 3 on a day each: mean 2. Two days of 2 and 4: one more. */
  @Test
  void effectOfADayOnIsTheMeanLessTheMeanBefore() {
    var values = new ArrayList<Value>();
    for (int day = 0; day < 6; day++) {
      values.add(value("steer", day, day < 4 ? 1 : 2));
      values.add(value("steer", day, day < 4 ? 3 : 4));
    }
    var effect = new DayValues(values, 8).effect(last(12, 4)).orElseThrow();
    assertEquals(1, effect.mean(), CLOSE);
    // Within days 8 over 4 degrees of freedom, between them less than nothing: 2 · (1/4 + 1/8).
    assertEquals(0.75, effect.variance(), CLOSE);
    assertEquals(4, effect.degrees());
  }

  /** Lambs lose 5 more than steers; after the change only the mix is another. */
  @Test
  void anotherMixOfKindsIsNoChange() {
    var values = new ArrayList<Value>();
    for (int day = 0; day < 8; day++) {
      values.add(value("steer", day, 1));
      values.add(value("steer", day, 2));
      values.add(value("lamb", day, 6));
      values.add(value("lamb", day, 7));
    }
    values.add(value("lamb", 9, 6));
    values.add(value("lamb", 9, 7));
    assertEquals(0, new DayValues(values, 32).effect(last(34, 2)).orElseThrow().mean(), CLOSE);
  }

  @Test
  void whatTheCovariateExplainsIsNoChange() {
    var values = new ArrayList<Value>();
    for (int day = 0; day < 12; day++) {
      int hung = day < 10 ? day % 5 : 9;
      values.add(new Value(List.of("steer"), FIRST.plusDays(day), 0.7 + 0.2 * hung, hung));
    }
    assertEquals(0, new DayValues(values, 10).effect(last(12, 2)).orElseThrow().mean(), CLOSE);
  }

  @Test
  void oneSlipMovesNoMean() {
    var values = new ArrayList<Value>();
    for (int day = 0; day < 20; day++) {
      values.add(value("steer", day, day % 2 == 0 ? 1 : 1.2));
    }
    values.add(value("steer", 20, 1.2));
    values.add(value("steer", 21, 80));
    assertTrue(new DayValues(values, 20).effect(last(22, 2)).orElseThrow().strength() < 3);
  }

  @Test
  void whatDoesNotVaryWithinAKindHasNoEffect() {
    var values = List.of(value("a", 0, 1), value("a", 1, 2), value("b", 2, 3), value("b", 3, 4));
    assertTrue(new DayValues(values, 4).effect(new double[] {0, 0, 1, 1}).isEmpty());
  }

  /** 1 with variance 1 and 4 with variance 2: (1/1 + 4/2) / (1/1 + 1/2) = 2, variance 2/3. */
  @Test
  void effectsAreAddedByTheirPrecision() {
    var both = Effect.of(List.of(new Effect(1, 1, 1, 1, 1, 9), new Effect(4, 4, 2, 4, 2, 5)));
    assertEquals(2, both.size(), CLOSE);
    assertEquals(2.0 / 3, both.variance(), CLOSE);
    assertEquals(14, both.degrees());
  }

  /**
   * Days differ by 0.1, bodies of a day by 0.2; nothing changes in 4,000 months. At a rate of one
   * in a hundred 40 may seem to.
   */
  @Test
  void unchangedMonthsSeemToChangeNoMoreOftenThanPromised() {
    var dice = new SplittableRandom(20_260_302);
    int found = 0;
    for (int month = 0; month < 4000; month++) {
      var values = new ArrayList<Value>();
      for (int day = 0; day < 34; day++) {
        double ofDay = 1.8 + 0.1 * dice.nextGaussian();
        for (int body = 0; body < 3; body++) {
          values.add(value("steer", day, ofDay + 0.2 * dice.nextGaussian()));
        }
      }
      var effect = new DayValues(values, 75).effect(last(102, 27)).orElseThrow();
      found += effect.strength() > Moments.studentsAbove(effect.degrees(), 0.005) ? 1 : 0;
    }
    new FalseAlarms(4000, 0.01).check("changes", found);
  }

  /**
   * The median of 1 to 9 is 5, the median distance from it 2; of one kind, nine values: 1.4826 · 2
   * · √(9/8).
   */
  @Test
  void usualIsTheMedianAndTheMedianDistanceFromIt() {
    var values = IntStream.rangeClosed(1, 9).mapToObj(i -> value("steer", i, i)).toList();
    var usual = UsualValue.of(values);
    assertEquals(5, usual.expected(value("steer", 20, 0)).orElseThrow(), CLOSE);
    assertEquals(1.4826 * 2 * Math.sqrt(9.0 / 8), usual.spread(), CLOSE);
    assertEquals(2, usual.degrees());
    assertTrue(usual.expected(value("lamb", 20, 0)).isEmpty());
  }
}
