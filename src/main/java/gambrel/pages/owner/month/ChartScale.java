package gambrel.pages.owner.month;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;

/** The left axis of a chart: the heights of values. It begins and ends at round values. */
final class ChartScale {
  private static final int MOST_STEPS = 6;

  private final int top;
  private final int bottom;
  private final BigDecimal low;
  private final BigDecimal high;
  private final BigDecimal step;

  /**
   * A scale that includes {@code values}, at least one.
   *
   * @param top of the plot
   * @param bottom of the plot, greater than {@code top}
   */
  ChartScale(int top, int bottom, Collection<BigDecimal> values) {
    this.top = top;
    this.bottom = bottom;
    var least = Collections.min(values);
    var most = Collections.max(values);
    this.step = step(least, most);
    // Values that hardly differ are drawn in the middle.
    var margin = most.subtract(least).compareTo(step) < 0 ? step : BigDecimal.ZERO;
    this.low = least.divide(step, 0, RoundingMode.FLOOR).multiply(step).subtract(margin);
    this.high = most.divide(step, 0, RoundingMode.CEILING).multiply(step).add(margin);
  }

  /** The smallest of 0.1, 0.2, 0.5, 1, 2, 5 and so on that divides the range into few steps. */
  private static BigDecimal step(BigDecimal least, BigDecimal most) {
    int[] leads = {1, 2, 5};
    for (int power = 1; ; power--) {
      for (int lead : leads) {
        var step = BigDecimal.valueOf(lead, power);
        if (step.multiply(BigDecimal.valueOf(MOST_STEPS)).compareTo(most.subtract(least)) >= 0) {
          return step.setScale(Math.max(0, power));
        }
      }
    }
  }

  /** The value, or the end of the scale that it lies beyond. */
  BigDecimal within(BigDecimal value) {
    return value.max(low).min(high);
  }

  /** The height of a value of the scale. */
  int y(BigDecimal value) {
    var height = value.subtract(low).multiply(BigDecimal.valueOf(bottom - top));
    return bottom - height.divide(high.subtract(low), 0, RoundingMode.HALF_UP).intValueExact();
  }

  /** The round values from the lowest to the highest. */
  List<BigDecimal> ticks() {
    var ticks = new ArrayList<BigDecimal>();
    for (var tick = low; tick.compareTo(high) <= 0; tick = tick.add(step)) {
      ticks.add(tick);
    }
    return ticks;
  }
}
