package gambrel.insight.month.loss;

import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.insight.FalseAlarms;
import gambrel.trade.measure.Exact;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Losses of made-up months: three bodies a day, 25 days before the month and nine days in it. */
class MeanShiftRatesTest {
  private static final LocalDate FIRST = LocalDate.of(2026, 1, 5);
  private static final LocalDate MONTH = LocalDate.of(2026, 3, 2);
  private static final LocalDate CHANGE = LocalDate.of(2026, 3, 10);
  private static final int DAYS_BEFORE = 25;
  private static final int DAYS = 9;

  private final SplittableRandom dice = new SplittableRandom(20_260_302);

  /** Days differ by 0.1, bodies of a day by 0.2; from {@link #CHANGE} on more is lost. */
  private List<LossChart.Point> points(LocalDate first, int days, double more) {
    var points = new ArrayList<LossChart.Point>();
    for (int i = 0; i < days; i++) {
      var day = first.plusDays(2L * i);
      double ofDay = 1.8 + 0.1 * dice.nextGaussian() + (day.isBefore(CHANGE) ? 0 : more);
      for (int body = 0; body < 3; body++) {
        var percent = Exact.ofStatistic(ofDay + 0.2 * dice.nextGaussian());
        points.add(new LossChart.Point(null, day, percent, Optional.empty(), List.of()));
      }
    }
    return points;
  }

  private int shifts(int months, double more) {
    int found = 0;
    for (int i = 0; i < months; i++) {
      var shift = MeanShift.of(points(FIRST, DAYS_BEFORE, 0), points(MONTH, DAYS, more));
      found += shift.isPresent() ? 1 : 0;
    }
    return found;
  }

  /**
   * One false alarm in a hundred months is promised: 26 in 2,600, and at most 42 pass. At twice the
   * rate 52 are expected, and this test fails with probability 0.91. The days tried overlap, and a
   * change must hold without its farthest body: so the method keeps below its promise, and twice
   * the constant in the code is not yet twice the promised rate.
   */
  @Test
  void unchangedLossIsToldNoMoreOftenThanPromised() {
    int found = shifts(2600, 0);
    System.out.printf("%d shifts in 2600 unchanged months%n", found);
    new FalseAlarms(2600, 0.01).check("shifts", found);
  }

  /**
   * The mean of 15 bodies on five days has a standard error of √(0.1² / 5 + 0.2² / 15) = 0.07, that
   * of the baseline 0.03: 0.5 more is 6.6 errors, and the limit for 24 degrees of freedom and nine
   * days is 3.7. So more than nine in ten are found.
   */
  @Test
  void lossThatRisesByHalfAPointIsTold() {
    int found = shifts(200, 0.5);
    assertTrue(found > 180, found + " of 200 told");
  }
}
