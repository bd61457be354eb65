package gambrel.trade.balance;

import gambrel.trade.measure.WeightUnit;
import gambrel.trade.shop.Scale;
import gambrel.trade.weighing.Weighing;
import java.util.Collection;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The uncertainty of a balance from the scales' divisions and from their permitted errors.
 *
 * @param unit the shop's unit, in which the sums are
 */
public record Uncertainty(WeightUnit unit) {
  /**
   * The square of the expanded uncertainty (k = 2) of a sum or difference of {@code weighings} that
   * comes from the scales' divisions: 4 Σ d²/12 (GUM F.2.2.1: a reading in steps of d has standard
   * uncertainty d/√12).
   */
  public BigFraction resolutionSquared(Collection<Weighing> weighings) {
    Map<Scale, Integer> numbers = new IdentityHashMap<>();
    weighings.forEach(w -> numbers.merge(w.scale(), 1, Integer::sum));
    var sum = BigFraction.ZERO;
    for (var number : numbers.entrySet()) {
      var division = number.getKey().divisionIn(unit);
      sum = sum.add(division.multiply(division).multiply(number.getValue()));
    }
    return sum.divide(3);
  }

  /**
   * The square of the difference between the sums of {@code in} and {@code out} that the scales'
   * permitted errors in service allow (OIML R 76). Errors of one scale have one sign and partly
   * cancel; different scales are independent. Empty if a scale has no accuracy class.
   */
  Optional<BigFraction> permittedSquared(List<Weighing> in, List<Weighing> out) {
    boolean known =
        Stream.concat(in.stream(), out.stream()).allMatch(w -> w.scale().accuracy().isPresent());
    if (!known) {
      return Optional.empty();
    }
    Map<Scale, Integer> divisions = new IdentityHashMap<>();
    in.forEach(w -> divisions.merge(w.scale(), permitted(w), Integer::sum));
    out.forEach(w -> divisions.merge(w.scale(), -permitted(w), Integer::sum));
    var sum = BigFraction.ZERO;
    for (var scale : divisions.entrySet()) {
      var error = scale.getKey().divisionIn(unit).multiply(scale.getValue());
      sum = sum.add(error.multiply(error));
    }
    return Optional.of(sum);
  }

  /** The permitted error of a weighing, in divisions of its scale. */
  private static int permitted(Weighing weighing) {
    var accuracy = weighing.scale().accuracy().orElseThrow();
    return accuracy.inServiceDivisions(
        weighing.unit().kilograms(weighing.shown()), weighing.scale().divisionInKilograms());
  }
}
