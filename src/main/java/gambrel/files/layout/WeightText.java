package gambrel.files.layout;

import gambrel.files.barcode.BarcodeContent.Amount;
import gambrel.files.csv.BadCell;
import gambrel.trade.measure.WeightUnit;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads weights as scales write them: bare, with a unit, or in pounds and ounces. */
public final class WeightText {
  private static final BigDecimal OUNCES = BigDecimal.valueOf(16);
  private static final Pattern SINGLE = Pattern.compile("(?i)(.*?)\\s*(kgs?|g|lbs?|oz)\\.?");
  private static final Pattern BOTH =
      Pattern.compile("(?i)([+-]?)\\s*(\\d+)\\s*lbs?\\.?,?\\s*(.+?)\\s*oz\\.?");
  private static final Pattern BOTH_BARE = Pattern.compile("([+-]?)(\\d+)\\s*[-:]\\s*(.+)");
  private static final Pattern FRACTION =
      Pattern.compile("(?:(\\d+)(?:\\s+|-))?(\\d{1,2})\\s*/\\s*(\\d{1,2})");
  private static final String HALVES = "½¼¾⅛⅜⅝⅞";
  private static final String[] WRITTEN_OUT = {"1/2", "1/4", "3/4", "1/8", "3/8", "5/8", "7/8"};

  private final Numerals numerals;
  private final boolean poundsAndOunces;

  /**
   * Weights of one make of scale.
   *
   * @param poundsAndOunces whether its weights are pounds and ounces; they are returned in ounces
   */
  public WeightText(Numerals numerals, boolean poundsAndOunces) {
    this.numerals = numerals;
    this.poundsAndOunces = poundsAndOunces;
  }

  /**
   * The weight that a text is.
   *
   * @throws BadCell if it is none
   */
  public Amount read(String text) {
    String plain = writtenOut(text);
    var both = BOTH.matcher(plain);
    if (both.matches()) {
      return ounces(both);
    }
    var bare = BOTH_BARE.matcher(plain);
    if (poundsAndOunces && bare.matches()) {
      return ounces(bare);
    }
    var single = SINGLE.matcher(plain);
    if (single.matches()) {
      return inUnit(single.group(1), unit(single.group(2)));
    }
    if (poundsAndOunces) {
      throw new BadCell("POUNDS_OR_OUNCES");
    }
    return new Amount(numerals.read(plain), Optional.empty());
  }

  private static String writtenOut(String text) {
    var plain = new StringBuilder();
    for (char c : text.toCharArray()) {
      int at = HALVES.indexOf(c);
      plain.append(at < 0 ? Character.toString(c) : ' ' + WRITTEN_OUT[at]);
    }
    return plain.toString().strip();
  }

  private static WeightUnit unit(String word) {
    String symbol = word.toLowerCase(Locale.ROOT).replaceFirst("s$", "");
    return WeightUnit.of(symbol).orElseThrow();
  }

  private Amount inUnit(String number, WeightUnit unit) {
    var value =
        unit == WeightUnit.OZ || unit == WeightUnit.LB ? mixed(number) : numerals.read(number);
    return poundsAndOunces && unit == WeightUnit.LB
        ? new Amount(value.multiply(OUNCES), Optional.of(WeightUnit.OZ))
        : new Amount(value, Optional.of(unit));
  }

  private Amount ounces(Matcher both) {
    var pounds = numerals.read(both.group(2));
    var ounces = mixed(both.group(3));
    if (ounces.signum() < 0 || ounces.compareTo(OUNCES) >= 0) {
      throw new BadCell("SIXTEEN_OUNCES");
    }
    var sum = pounds.multiply(OUNCES).add(ounces);
    return new Amount(both.group(1).equals("-") ? sum.negate() : sum, Optional.of(WeightUnit.OZ));
  }

  /** A number that may have a common fraction: 5 1/2. */
  private BigDecimal mixed(String text) {
    var parts = FRACTION.matcher(text);
    if (!parts.matches()) {
      return numerals.read(text);
    }
    var whole = parts.group(1) == null ? BigDecimal.ZERO : numerals.read(parts.group(1));
    int above = Integer.parseInt(parts.group(2));
    int below = Integer.parseInt(parts.group(3));
    if (Integer.bitCount(below) != 1 || above >= below) {
      throw new BadCell("NOT_HALVES");
    }
    return whole.add(new BigDecimal(above).divide(new BigDecimal(below)));
  }
}
