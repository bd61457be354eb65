package gambrel.oracle;

import org.apache.commons.numbers.fraction.BigFraction;

/** One line of scales.csv, figures in the scale's own unit; {@code capacity} null where blank. */
record ScaleInfo(
    String id, String unit, BigFraction division, BigFraction capacity, String accuracy) {

  static ScaleInfo of(Csv.Line line, String shopUnit) {
    var unit = line.get("unit");
    return new ScaleInfo(
        line.get("scale"),
        unit.isBlank() ? shopUnit : unit,
        Num.of(line.get("division")),
        Num.ofCell(line.get("capacity")),
        line.get("class"));
  }

  /** The division in another unit. */
  BigFraction divisionIn(String other) {
    return division.multiply(Num.factor(unit, other));
  }

  boolean hasClass() {
    return !accuracy.isBlank();
  }

  /**
   * Largest error in service at a load, in divisions: OIML R 76-1, table 6 doubled for use.
   *
   * @param load in divisions
   */
  int oiml(BigFraction load) {
    int unit = Tier.of(accuracy);
    return load.compareTo(BigFraction.of(unit)) <= 0
        ? 1
        : load.compareTo(BigFraction.of(unit).multiply(4)) <= 0 ? 2 : 3;
  }

  /** Maintenance tolerance of NIST Handbook 44, table 6, in divisions (class III: retrieved). */
  int handbook44(BigFraction load) {
    boolean coarse = accuracy.equals("III") || accuracy.equals("IIII");
    int third = accuracy.equals("III") ? 4000 : 400;
    return coarse && load.compareTo(BigFraction.of(third)) > 0 ? 5 : oiml(load);
  }

  private static final class Tier {
    /** The load, in divisions, up to which the smallest error holds; four times it, the next. */
    static int of(String accuracy) {
      return switch (accuracy) {
        case "I" -> 50_000;
        case "II" -> 5_000;
        case "III" -> 500;
        case "IIII" -> 50;
        default -> throw new IllegalArgumentException("class " + accuracy);
      };
    }
  }
}
