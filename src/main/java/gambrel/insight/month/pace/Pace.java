package gambrel.insight.month.pace;

import gambrel.insight.month.bodies.Spread;
import gambrel.trade.measure.Weight;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How fast pieces were boned.
 *
 * @param pieces how many pieces
 * @param weight their weight
 * @param minutes the minutes for all of them
 * @param each the spread of the minutes for one piece
 */
public record Pace(int pieces, Weight weight, BigFraction minutes, Spread each) {
  private static final int MINUTES_AN_HOUR = 60;

  /** The pace of some intervals; empty without any. */
  static Optional<Pace> of(List<BoningInterval> all) {
    var pieces = all.stream().mapToInt(BoningInterval::pieces).sum();
    var weight = Weight.sum(all.stream().map(BoningInterval::weight).toList());
    var minutes =
        all.stream().map(BoningInterval::minutes).reduce(BigFraction.ZERO, BigFraction::add);
    return Spread.of(all.stream().map(BoningInterval::minutesEach).toList())
        .map(each -> new Pace(pieces, weight, minutes, each));
  }

  /** Weight boned in an hour, in the shop's unit; empty if the pieces took no time. */
  public Optional<BigFraction> weightAnHour() {
    return minutes.signum() == 0
        ? Optional.empty()
        : Optional.of(weight.fraction().multiply(MINUTES_AN_HOUR).divide(minutes));
  }
}
