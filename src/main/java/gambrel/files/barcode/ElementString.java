package gambrel.files.barcode;

import gambrel.trade.measure.WeightUnit;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;

/** The element strings of one GS1 barcode: values by application identifier. */
public final class ElementString {
  /** What FNC1 is transmitted as. */
  private static final char SEPARATOR = '\u001D';

  private static final int LONGEST = 500;

  /**
   * GS1-128, DataBar and composites, DataMatrix, QR as in the GS1 Syntax Engine (GS1 AISBL); and
   * DotCode, of which no published source is at hand.
   */
  private static final Set<String> GS1_SYMBOLOGIES = Set.of("]C1", "]e0", "]d2", "]Q3", "]J1");

  private static final Pattern BRACKETED = Pattern.compile("\\((\\d{2,4})\\)");
  private static final Pattern NET = Pattern.compile("3[12]0\\d");
  private static final Pattern GROSS = Pattern.compile("3[34]0\\d");

  private final Map<String, String> values = new LinkedHashMap<>();

  private ElementString() {}

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
   * characters, check digits and dates of the fields below and of predefined lengths are checked;
   * which identifiers belong together is not, since a scale's own label need not be one for trade.
   * An assigned identifier that no field is read from is skipped. If the first two digits of an
   * identifier are not assigned, its length is not known and what follows cannot be split, so that
   * the whole barcode is refused.
   *
   * @throws BadBarcode if they are none
   */
  public static ElementString parse(String text) throws BadBarcode {
    if (text.length() > LONGEST) {
      throw new BadBarcode("is too long");
    }
    String bare = withoutSymbology(text);
    var read = new ElementString();
    if (bare.startsWith("(")) {
      read.readBracketed(bare);
    } else {
      read.readTransmitted(bare);
    }
    if (read.values.isEmpty()) {
      throw new BadBarcode("is empty");
    }
    var weights = read.values.keySet().stream().filter(NET.asMatchPredicate()).toList();
    if (weights.stream().map(ai -> ai.substring(0, 3)).distinct().count() < weights.size()) {
      throw new BadBarcode("gives two net weights");
    }
    return read;
  }

  private static String withoutSymbology(String text) throws BadBarcode {
    if (!text.startsWith("]")) {
      return text;
    }
    if (GS1_SYMBOLOGIES.stream().noneMatch(text::startsWith)) {
      throw new BadBarcode("is none of GS1 element strings");
    }
    return text.substring(3);
  }

  private void readBracketed(String text) throws BadBarcode {
    var brackets = BRACKETED.matcher(text);
    if (!brackets.lookingAt()) {
      throw new BadBarcode("has no identifier in its first brackets");
    }
    boolean more = true;
    while (more) {
      String ai = brackets.group(1);
      String why = "has the identifier (" + ai + "), which is not known";
      var identifier = ApplicationIdentifier.startOf(ai, why);
      if (identifier.ai().length() != ai.length()) {
        throw new BadBarcode(why);
      }
      int start = brackets.end();
      more = brackets.find();
      put(identifier, text.substring(start, more ? brackets.start() : text.length()));
    }
  }

  private void readTransmitted(String text) throws BadBarcode {
    for (int at = 0; at < text.length(); ) {
      if (text.charAt(at) == SEPARATOR) {
        at++;
        continue;
      }
      var identifier =
          ApplicationIdentifier.startOf(
              text.substring(at), "has no known identifier at character " + (at + 1));
      int start = at + identifier.ai().length();
      int separator = text.indexOf(SEPARATOR, start);
      int end = separator < 0 ? text.length() : separator;
      at = identifier.predefined() ? Math.min(end, start + identifier.most()) : end;
      put(identifier, text.substring(start, at));
    }
  }

  private void put(ApplicationIdentifier identifier, String value) throws BadBarcode {
    String before = values.put(identifier.ai(), identifier.checked(value));
    if (before != null && !before.equals(value)) {
      throw new BadBarcode("gives (" + identifier.ai() + ") twice");
    }
  }

  private Optional<String> get(String ai) {
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
    return new TreeMap<>(values)
        .entrySet().stream()
            .filter(entry -> NET.matcher(entry.getKey()).matches())
            .map(entry -> net(entry.getKey(), entry.getValue()))
            .findFirst();
  }

  private static Net net(String ai, String digits) {
    var value = new BigDecimal(new BigInteger(digits), ai.charAt(3) - '0');
    return new Net(value, ai.charAt(1) == '1' ? WeightUnit.KG : WeightUnit.LB);
  }

  /** Whether there is a gross weight (330n, 340n): never a yield. */
  public boolean hasGross() {
    return values.keySet().stream().anyMatch(ai -> GROSS.matcher(ai).matches());
  }

  /**
   * When it was packed (13), else produced (11); empty too if only the month is given (day 00) or
   * the year has no such day. The two-digit year is the one from 49 years before to 50 years after
   * {@code thisYear} (GS1 General Specifications, section 7.12).
   */
  public Optional<LocalDate> date(int thisYear) {
    return get("13")
        .or(() -> get("11"))
        .flatMap(digits -> ApplicationIdentifier.date(digits, thisYear));
  }

  /** The values by identifier, for people to read. */
  @Override
  public String toString() {
    return new TreeMap<>(values).toString();
  }
}
