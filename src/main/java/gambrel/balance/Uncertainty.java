package gambrel.balance;

import gambrel.measure.WeightUnit;
import gambrel.shop.Scale;
import gambrel.weighing.Weighing;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** How far a balance may be off by what scales show and by what they are allowed to err. */
final class Uncertainty {
  private final WeightUnit unit;

  /**
   * For sums in {@code unit}.
   *
   * @param unit the shop's unit
   */
  Uncertainty(WeightUnit unit) {
    this.unit = unit;
  }

  /**
   * The square of the expanded uncertainty (k = 2) of a sum or difference of {@code weighings} that
   * comes from the scales' divisions: 4 Σ d²/12 (GUM F.2.2.1: a reading in steps of d has standard
   * uncertainty d/√12).
   */
  BigFraction resolutionSquared(Collection<Weighing> weighings) {
    var sum = BigFraction.ZERO;
    for (var weighing : weighings) {
      var division = division(weighing.scale());
      sum = sum.add(division.multiply(division));
    }
    return sum.divide(3);
  }

  /**
   * The square of what the scales' permitted errors in service (OIML R 76) can put between the sum
   * of {@code in} and the sum of {@code out}: errors of one scale are common and partly cancel,
   * scales are independent. Empty if a scale has no accuracy class.
   */
  Optional<BigFraction> permittedSquared(List<Weighing> in, List<Weighing> out) {
    Map<String, BigFraction> byScale = new HashMap<>();
    for (var weighing : in) {
      if (weighing.scale().accuracy().isEmpty()) {
        return Optional.empty();
      }
      byScale.merge(weighing.scale().id(), permitted(weighing), BigFraction::add);
    }
    for (var weighing : out) {
      if (weighing.scale().accuracy().isEmpty()) {
        return Optional.empty();
      }
      byScale.merge(weighing.scale().id(), permitted(weighing).negate(), BigFraction::add);
    }
    return Optional.of(
        byScale.values().stream()
            .map(error -> error.multiply(error))
            .reduce(BigFraction.ZERO, BigFraction::add));
  }

  private BigFraction permitted(Weighing weighing) {
    var scale = weighing.scale();
    var load =
        weighing
            .unit()
            .convert(weighing.shown(), scale.unit())
            .divide(scale.unit().convert(scale.division(), scale.unit()));
    return division(scale).multiply(scale.accuracy().orElseThrow().inServiceDivisions(load));
  }

  private BigFraction division(Scale scale) {
    return scale.unit().convert(scale.division(), unit);
  }
}
