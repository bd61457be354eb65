package gambrel.insight.month.pace;

import gambrel.insight.month.bodies.Spread;
import gambrel.trade.measure.Weight;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How fast pieces were boned.
 *
 * @param pieces how many
 * @param weight their weight
 * @param minutes the time that they took
 * @param each minutes a piece
 */
public record Pace(int pieces, Weight weight, BigFraction minutes, Spread each) {
  private static final int MINUTES_AN_HOUR = 60;

  /** The pace of some stints; empty without any. */
  static Optional<Pace> of(List<BoningInterval> stints) {
    return Spread.of(stints.stream().map(BoningInterval::minutesEach).toList())
        .map(
            each ->
                new Pace(
                    stints.stream().mapToInt(BoningInterval::pieces).sum(),
                    Weight.sum(stints.stream().map(BoningInterval::weight).toList()),
                    stints.stream()
                        .map(BoningInterval::minutes)
                        .reduce(BigFraction.ZERO, BigFraction::add),
                    each));
  }

  /** Weight boned in an hour, in the shop's unit; empty where no time passed. */
  public Optional<BigFraction> weightAnHour() {
    return minutes.signum() == 0
        ? Optional.empty()
        : Optional.of(weight.fraction().multiply(MINUTES_AN_HOUR).divide(minutes));
  }
}
