package gambrel.trade.shop;

import gambrel.trade.measure.WeightUnit;
import java.math.BigDecimal;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * One weighing instrument.
 *
 * @param id the id that exports use
 * @param where the place of the scale, or empty
 * @param layout the layout of its exports, or empty
 * @param unit the unit of division and capacity, and of rows without a unit
 * @param division the smallest step that it shows, above zero
 * @param capacity the greatest load
 * @param accuracy its accuracy class
 */
public record Scale(
    String id,
    String where,
    String layout,
    WeightUnit unit,
    BigDecimal division,
    Optional<BigDecimal> capacity,
    Optional<AccuracyClass> accuracy) {
  /** The exact division in kilograms. */
  public BigDecimal divisionInKilograms() {
    return unit.kilograms(division);
  }

  /** The exact division in another unit. */
  public BigFraction divisionIn(WeightUnit other) {
    return unit.convert(division, other);
  }
}
