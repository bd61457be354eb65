package gambrel.oracle;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** A scale of a made-up shop. */
record SimScale(
    String id,
    String unit,
    BigDecimal division,
    String accuracy,
    String capacity,
    String shopUnit) {

  private static final BigDecimal POUND = new BigDecimal("0.45359237");

  /** What it shows, in its own unit, of a weight in the shop's. */
  BigDecimal read(BigDecimal weight) {
    return inOwnUnit(weight).divide(division, 0, RoundingMode.HALF_UP).multiply(division);
  }

  BigDecimal inOwnUnit(BigDecimal weight) {
    if (unit.equals(shopUnit)) {
      return weight;
    }
    return unit.equals("lb") ? weight.divide(POUND, MathContext.DECIMAL64) : weight.multiply(POUND);
  }

  String csv() {
    var ownUnit = unit.equals(shopUnit) ? "" : unit;
    return String.join(",", id, "", "", ownUnit, division.toPlainString(), capacity, accuracy);
  }
}
