package gambrel.insight.month.loss;

import gambrel.insight.month.figures.BodyFigure;
import gambrel.insight.month.figures.Spread;
import gambrel.trade.cuts.Species;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Chill shrink by day, of bodies of one species that were chilled for a similar time: their last
 * cold weighing was within a window of hours after their last hot weighing.
 *
 * @param chart the chart of all bodies
 * @param hours middle of the window: the median of the baseline's bodies
 * @param baseline the baseline's bodies within the window
 * @param month the month's bodies within the window
 * @param apart the month's bodies outside the window, or whose hours are unknown
 */
public record ChillDays(
    LossChart chart,
    BigFraction hours,
    List<LossChart.Point> baseline,
    List<LossChart.Point> month,
    List<LossChart.Point> apart) {
  /** Hours on either side of the median. */
  public static final int WINDOW = 6;

  /** The days of a chart; empty if it is not of chill shrink, or if the baseline has no hours. */
  public static Optional<ChillDays> of(LossChart chart) {
    var hours =
        chart.before().stream()
            .filter(point -> chart.loss() == BodyFigure.CHILL)
            .flatMap(point -> point.account().balance().hoursChilled().stream());
    return Spread.of(hours.toList()).map(spread -> of(chart, spread.median()));
  }

  private static ChillDays of(LossChart chart, BigFraction hours) {
    var baseline = chart.before().stream().filter(p -> isLike(p, hours)).toList();
    var month = chart.ofMonth().stream().collect(Collectors.partitioningBy(p -> isLike(p, hours)));
    return new ChillDays(chart, hours, baseline, month.get(true), month.get(false));
  }

  private static boolean isLike(LossChart.Point point, BigFraction hours) {
    var chilled = point.account().balance().hoursChilled();
    var window = BigFraction.of(WINDOW);
    return chilled.filter(h -> h.subtract(hours).abs().compareTo(window) <= 0).isPresent();
  }

  /** The species. */
  public Species species() {
    return chart.species();
  }
}
