package gambrel.files.layout;

import gambrel.files.csv.BadCell;
import gambrel.trade.measure.GivenWeight;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.notice.Phrase;
import gambrel.trade.rows.DecimalText;
import java.math.BigDecimal;
import java.text.Normalizer;
import java.text.Normalizer.Form;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads numbers and weights as the scales of one make write them: weights are bare, with a unit, or
 * in pounds and ounces. Marks of decimals and thousands other than theirs are refused: {@code
 * 1,250} is no number unless the layout says what its comma is.
 */
public final class WeightText {
  private static final BigDecimal OUNCES = BigDecimal.valueOf(16);

  /** A letter behind the unit, by which some scales say that a weight is gross, tare or net. */
  public static final String KIND = "(?:\\h+(?:[gnt]|gs|nt|pt))?";

  private static final Pattern SINGLE = Pattern.compile("(?i)(.*?)\\h*(kgs?|g|lbs?|oz)\\.?" + KIND);
  private static final Pattern BOTH =
      Pattern.compile("(?i)([+-]?)\\s*(\\d+)\\s*lbs?\\.?,?\\s*(.+?)\\s*oz\\.?");
  private static final Pattern BOTH_BARE = Pattern.compile("([+-]?)(\\d+)\\s*[-:]\\s*(.+)");
  private static final Pattern FRACTION =
      Pattern.compile("(?:(\\d+)(?:\\s+|-))?(\\d{1,2})\\s*/\\s*(\\d{1,2})");
  private static final Pattern SIGN_BEHIND = Pattern.compile("^([^+-]+?)\\s*-$");
  private static final Pattern HALVES = Pattern.compile("[½¼¾⅛⅜⅝⅞]");

  private final char decimal;
  private final Pattern form;
  private final boolean poundsAndOunces;
  private final int decimals;

  /**
   * Weights of one make of scale.
   *
   * @param decimal the mark before the decimals
   * @param thousands the mark between groups of three digits, if the scale writes one
   * @param poundsAndOunces whether its weights are pounds and ounces; they are returned in ounces
   * @param decimals the number of last digits of weights without a mark that are decimals
   */
  public WeightText(
      char decimal, Optional<Character> thousands, boolean poundsAndOunces, int decimals) {
    this.decimal = decimal;
    this.decimals = decimals;
    this.poundsAndOunces = poundsAndOunces;
    String grouped = thousands.map(mark -> "\\d{1,3}(?:" + group(mark) + "\\d{3})+|").orElse("");
    this.form =
        Pattern.compile(
            "([+-]?)\\s*(?=.*\\d)(" + grouped + "\\d*)(?:" + quoted(decimal) + "(\\d*))?");
  }

  /** A blank is any blank of typography, an apostrophe any apostrophe. */
  private static String group(char mark) {
    return switch (mark) {
      case ' ' -> "[ \u00A0\u2009\u202F]";
      case '\'' -> "['\u2019]";
      default -> quoted(mark);
    };
  }

  private static String quoted(char mark) {
    return Pattern.quote(Character.toString(mark));
  }

  /**
   * The weight that a text is.
   *
   * @throws BadCell if it is none
   */
  public GivenWeight read(String text) {
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
    return new GivenWeight(weight(plain), Optional.empty());
  }

  private BigDecimal weight(String text) {
    var number = number(text);
    return text.indexOf(decimal) < 0 ? number.movePointLeft(decimals) : number;
  }

  /** The text with {@code 1/2} for ½; Unicode has a fraction slash of its own in that place. */
  private static String writtenOut(String text) {
    return HALVES
        .matcher(text)
        .replaceAll(
            half -> ' ' + Normalizer.normalize(half.group(), Form.NFKC).replace('\u2044', '/'))
        .strip();
  }

  private static WeightUnit unit(String word) {
    String symbol = word.toLowerCase(Locale.ROOT).replaceFirst("s$", "");
    return WeightUnit.of(symbol).orElseThrow();
  }

  private GivenWeight inUnit(String number, WeightUnit unit) {
    var value = unit == WeightUnit.OZ || unit == WeightUnit.LB ? mixed(number) : weight(number);
    return poundsAndOunces && unit == WeightUnit.LB
        ? new GivenWeight(value.multiply(OUNCES), Optional.of(WeightUnit.OZ))
        : new GivenWeight(value, Optional.of(unit));
  }

  private GivenWeight ounces(Matcher both) {
    var pounds = number(both.group(2));
    var ounces = mixed(both.group(3));
    if (ounces.signum() < 0 || ounces.compareTo(OUNCES) >= 0) {
      throw new BadCell("SIXTEEN_OUNCES");
    }
    var sum = pounds.multiply(OUNCES).add(ounces);
    return new GivenWeight(
        both.group(1).equals("-") ? sum.negate() : sum, Optional.of(WeightUnit.OZ));
  }

  /** A number that may have a common fraction: 5 1/2. */
  private BigDecimal mixed(String text) {
    var parts = FRACTION.matcher(text);
    if (!parts.matches()) {
      return number(text);
    }
    var whole = parts.group(1) == null ? BigDecimal.ZERO : number(parts.group(1));
    int above = Integer.parseInt(parts.group(2));
    int below = Integer.parseInt(parts.group(3));
    if (Integer.bitCount(below) != 1 || above >= below) {
      throw new BadCell("NOT_HALVES");
    }
    return whole.add(new BigDecimal(above).divide(new BigDecimal(below)));
  }

  /**
   * The number that a text is, without a unit.
   *
   * @throws BadCell if it is none, or has more than 12 digits before or after the decimal mark
   */
  BigDecimal number(String text) {
    var parts = form.matcher(SIGN_BEHIND.matcher(text).replaceFirst("-$1"));
    if (!parts.matches()) {
      throw new BadCell(Phrase.of("CELL.NO_NUMBER").with("mark", "" + decimal));
    }
    String whole = parts.group(1) + parts.group(2).replaceAll("\\D", "");
    return DecimalText.of(parts.group(3) == null ? whole : whole + '.' + parts.group(3))
        .orElseThrow(() -> new BadCell("DIGITS"));
  }
}
