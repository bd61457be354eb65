package gambrel.trade.measure;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A unit of weight with its exact size. One pound is 0.45359237 kg by definition, sixteen ounces to
 * the pound (NIST SP 811, Appendix B).
 */
public enum WeightUnit {
  /** Kilogram. */
  KG("kg", "1"),
  /** Gram. */
  G("g", "0.001"),
  /** Avoirdupois pound. */
  LB("lb", "0.45359237"),
  /** Avoirdupois ounce. */
  OZ("oz", "0.028349523125");

  private final String id;
  private final BigFraction kilograms;

  WeightUnit(String id, String kilograms) {
    this.id = id;
    this.kilograms = Exact.fraction(new BigDecimal(kilograms));
  }

  /** The unit that a cell or setting names; case does not matter. */
  public static Optional<WeightUnit> of(String text) {
    String wanted = text.strip().toLowerCase(Locale.ROOT);
    for (var unit : values()) {
      if (unit.id.equals(wanted)) {
        return Optional.of(unit);
      }
    }
    return Optional.empty();
  }

  /** The unit's symbol, as files write it. */
  public String id() {
    return id;
  }

  /** {@code value} of this unit as a weight of a shop whose unit is {@code target}. */
  public Weight weight(BigDecimal value, WeightUnit target) {
    return this == target ? Weight.of(value) : Weight.of(convert(value, target));
  }

  /** {@code value} of this unit as an exact number of {@code target}. */
  public BigFraction convert(BigDecimal value, WeightUnit target) {
    var exact = Exact.fraction(value);
    return this == target ? exact : exact.multiply(kilograms).divide(target.kilograms);
  }
}
