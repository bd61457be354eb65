package gambrel.pages.owner.month;

import gambrel.trade.measure.Exact;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;

/**
 * Where values stand between the bottom and the top of a plot. The scale begins and ends at round
 * values.
 */
final class ChartScale {
  private static final int MOST_STEPS = 6;

  private final int top;
  private final int bottom;
  private final BigDecimal low;
  private final BigDecimal high;
  private final BigDecimal step;

  /**
   * A scale that holds {@code values}, of which there is at least one.
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
    // Values that hardly differ stand in the middle.
    var margin = most.subtract(least).compareTo(step) < 0 ? step : BigDecimal.ZERO;
    this.low = steps(least, false).multiply(step).subtract(margin);
    this.high = steps(most, true).multiply(step).add(margin);
  }

  /** The smallest of 0.1, 0.2, 0.5, 1, 2, 5 and so on of which few enough lie in the range. */
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

  private BigDecimal steps(BigDecimal value, boolean up) {
    var whole = Exact.fraction(value).divide(Exact.fraction(step));
    BigInteger[] parts = whole.getNumerator().divideAndRemainder(whole.getDenominator());
    int correction = parts[1].signum() > 0 && up ? 1 : parts[1].signum() < 0 && !up ? -1 : 0;
    return new BigDecimal(parts[0].add(BigInteger.valueOf(correction)));
  }

  /** The height at which a value stands. */
  int y(BigDecimal value) {
    var part = Exact.fraction(value.subtract(low)).divide(Exact.fraction(high.subtract(low)));
    return bottom - Math.toIntExact(Exact.units(part.multiply(bottom - top), 0));
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
