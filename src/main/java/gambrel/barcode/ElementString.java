package gambrel.barcode;

import gambrel.measure.WeightUnit;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The element strings of one GS1 barcode: values by application identifier. */
public final class ElementString {
  private final Map<String, String> values;

  private ElementString(Map<String, String> values) {
    this.values = values;
  }

  /**
   * Net weight.
   *
   * @param value exact, with the decimals that the barcode implies
   * @param unit kilogram or pound
   */
  public record Net(BigDecimal value, WeightUnit unit) {}

  /**
   * Reads element strings as a scanner transmits them (ASCII 29 for FNC1; after a symbology
   * identifier such as {@code ]C1}, or none) or as people print them, {@code (01)...}. Lengths,
   * characters, check digits and dates are held to the syntax dictionary; which identifiers belong
   * together is not, since a scale's own label need not be one for trade.
   *
   * @throws BadBarcode if they are none
   */
  public static ElementString parse(String text) throws BadBarcode {
    var values = new ElementScanner(text).values();
    var read = new ElementString(values);
    if (values.isEmpty()) {
      throw new BadBarcode("is empty");
    }
    read.checkOnce("310");
    read.checkOnce("320");
    return read;
  }

  private void checkOnce(String weight) throws BadBarcode {
    if (values.keySet().stream().filter(ai -> isMeasure(ai, weight)).count() > 1) {
      throw new BadBarcode("gives two net weights");
    }
  }

  /** The value of an identifier, such as 01 (GTIN), 21 (serial) or 251 (source). */
  public Optional<String> get(String ai) {
    return Optional.ofNullable(values.get(ai));
  }

  /** The lot (10): in a boning room, the body. */
  public Optional<String> lot() {
    return get("10");
  }

  /** The cut after UN/ECE (7002). */
  public Optional<String> cut() {
    return get("7002");
  }

  /** Pieces in a pack of varying number (30), else in a container (37). */
  public Optional<BigInteger> count() {
    return get("30").or(() -> get("37")).map(BigInteger::new);
  }

  /** The net weight (310n in kilograms, else 320n in pounds). */
  public Optional<Net> net() {
    return measure("310", WeightUnit.KG).or(() -> measure("320", WeightUnit.LB));
  }

  /** Whether a gross weight (330n, 340n) stands there: never a yield. */
  public boolean hasGross() {
    return values.keySet().stream().anyMatch(ai -> isMeasure(ai, "330") || isMeasure(ai, "340"));
  }

  /**
   * When it was packed (13), else produced (11); empty too where only the month is given.
   *
   * @param thisYear decides the century of the two-digit year
   */
  public Optional<LocalDate> date(int thisYear) {
    return get("13").or(() -> get("11")).flatMap(digits -> ShortDate.read(digits, thisYear));
  }

  private Optional<Net> measure(String begin, WeightUnit unit) {
    return values.entrySet().stream()
        .filter(entry -> isMeasure(entry.getKey(), begin))
        .map(entry -> new Net(decimal(entry.getKey(), entry.getValue()), unit))
        .findFirst();
  }

  private static boolean isMeasure(String ai, String begin) {
    return ai.length() == 4 && ai.startsWith(begin);
  }

  private static BigDecimal decimal(String ai, String digits) {
    return new BigDecimal(new BigInteger(digits), ai.charAt(3) - '0');
  }

  /** The values by identifier, for people to read. */
  @Override
  public String toString() {
    return new TreeMap<>(values).toString();
  }
}
