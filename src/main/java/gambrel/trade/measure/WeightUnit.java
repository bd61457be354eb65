package gambrel.trade.measure;

import java.math.BigDecimal;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A unit of weight with its exact size. One pound is 0.45359237 kg by definition, sixteen ounces to
 * the pound (NIST SP 811, Appendix B).
 */
public enum WeightUnit implements FileWord {
  /** Kilogram. */
  KG("1"),
  /** Gram. */
  G("0.001"),
  /** Avoirdupois pound. */
  LB("0.45359237"),
  /** Avoirdupois ounce. */
  OZ("0.028349523125");

  private final BigDecimal size;
  private final BigFraction kilograms;

  WeightUnit(String kilograms) {
    this.size = new BigDecimal(kilograms);
    this.kilograms = Exact.fraction(size);
  }

  /** The unit that a cell or setting names; case does not matter. */
  public static Optional<WeightUnit> of(String text) {
    return FileWord.find(WeightUnit.class, text);
  }

  /** {@code value} of this unit as a weight of a shop whose unit is {@code target}. */
  public Weight weight(BigDecimal value, WeightUnit target) {
    return this == target ? Weight.of(value) : Weight.of(convert(value, target));
  }

  /** {@code value} of this unit in kilograms, exactly. */
  public BigDecimal kilograms(BigDecimal value) {
    return value.multiply(size);
  }

  /** {@code value} of this unit as an exact number of {@code target}. */
  public BigFraction convert(BigDecimal value, WeightUnit target) {
    var exact = Exact.fraction(value);
    return this == target ? exact : exact.multiply(kilograms).divide(target.kilograms);
  }
}
