package gambrel.month.pace;

import gambrel.measure.Weight;
import gambrel.month.Spread;
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
  static Optional<Pace> of(List<Stint> stints) {
    return Spread.of(stints.stream().map(Stint::minutesEach).toList())
        .map(
            each ->
                new Pace(
                    stints.stream().mapToInt(Stint::pieces).sum(),
                    Weight.sum(stints.stream().map(Stint::weight).toList()),
                    stints.stream().map(Stint::minutes).reduce(BigFraction.ZERO, BigFraction::add),
                    each));
  }

  /** Weight boned in an hour, in the shop's unit; empty where no time passed. */
  public Optional<BigFraction> weightAnHour() {
    return minutes.signum() == 0
        ? Optional.empty()
        : Optional.of(weight.fraction().multiply(MINUTES_AN_HOUR).divide(minutes));
  }
}
