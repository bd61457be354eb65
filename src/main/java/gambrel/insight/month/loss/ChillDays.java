package gambrel.insight.month.loss;

import gambrel.insight.month.bodies.Spread;
import gambrel.trade.cuts.Species;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Chill shrink by day, like with like: bodies of one species that were weighed cold within a window
 * of hours after the last hot weighing.
 *
 * @param chart the chart of all bodies
 * @param hours middle of the window: the median of the baseline's bodies
 * @param baseline the baseline's bodies within the window
 * @param month the month's bodies within it
 * @param apart the month's bodies outside it, or of which the hours are not known
 * @param shift where the month left the baseline
 */
public record ChillDays(
    LossChart chart,
    BigFraction hours,
    List<LossChart.Point> baseline,
    List<LossChart.Point> month,
    List<LossChart.Point> apart,
    Optional<MeanShift> shift) {
  /** Hours on either side of the median. */
  public static final int WINDOW = 6;

  /** The days of a chart of chill shrink; empty where no hours are known in the baseline. */
  public static Optional<ChillDays> of(LossChart chart) {
    var before = chart.before();
    var hours =
        Spread.of(
            before.stream().flatMap(p -> p.account().balance().hoursChilled().stream()).toList());
    return hours.map(spread -> of(chart, before, spread.median()));
  }

  /** The species. */
  public Species species() {
    return chart.species();
  }

  private static ChillDays of(LossChart chart, List<LossChart.Point> before, BigFraction hours) {
    var like = before.stream().filter(p -> isLike(p, hours)).toList();
    var month = chart.ofMonth().stream().filter(p -> isLike(p, hours)).toList();
    var apart = chart.ofMonth().stream().filter(p -> !isLike(p, hours)).toList();
    return new ChillDays(chart, hours, like, month, apart, MeanShift.of(like, month));
  }

  private static boolean isLike(LossChart.Point point, BigFraction hours) {
    return point
        .account()
        .balance()
        .hoursChilled()
        .filter(h -> h.subtract(hours).abs().compareTo(BigFraction.of(WINDOW)) <= 0)
        .isPresent();
  }
}
