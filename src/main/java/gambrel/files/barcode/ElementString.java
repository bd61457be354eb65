package gambrel.files.barcode;

import gambrel.files.csv.BadCell;
import gambrel.trade.measure.GivenWeight;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.notice.Phrase;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.ResolverStyle;
import java.time.temporal.ChronoField;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;

/** The element strings of one GS1 barcode: values by application identifier. */
public final class ElementString {
  /** The character that scanners transmit for FNC1. */
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

  /** The values by identifier. */
  final SortedMap<String, String> values = new TreeMap<>();

  private ElementString() {}

  /**
   * Reads element strings as a scanner transmits them (ASCII 29 for FNC1, with or without a
   * symbology identifier such as {@code ]C1}) or as people print them, {@code (01)...}. Lengths,
   * characters, check digits and dates of the fields below and of predefined lengths are checked.
   * Whether identifiers belong together is not checked, since a scale's own label need not be one
   * for trade. An assigned identifier that no field is read from is skipped. A barcode is refused
   * if the first two digits of an identifier are not assigned: its length is then unknown.
   *
   * @throws BadCell if the text holds none
   */
  public static ElementString parse(String text) {
    refuse(text.length() > LONGEST, "TOO_LONG");
    boolean named = text.startsWith("]");
    refuse(named && GS1_SYMBOLOGIES.stream().noneMatch(text::startsWith), "NOT_GS1");
    String bare = named ? text.substring(3) : text;
    var read = new ElementString();
    if (bare.startsWith("(")) {
      read.readBracketed(bare);
    } else {
      read.readTransmitted(bare);
    }
    refuse(read.values.isEmpty(), "EMPTY");
    return read;
  }

  private static void refuse(boolean when, String why) {
    if (when) {
      throw new BadCell(Phrase.of("BARCODE." + why));
    }
  }

  private void readBracketed(String text) {
    var brackets = BRACKETED.matcher(text);
    refuse(!brackets.lookingAt(), "NO_BRACKET");
    boolean more = true;
    while (more) {
      String ai = brackets.group(1);
      var unknown = Phrase.of("BARCODE.UNKNOWN").with("ai", ai);
      var group =
          IdentifierGroup.startOf(ai)
              .filter(found -> found.ai().matcher(ai).matches())
              .orElseThrow(() -> new BadCell(unknown));
      int start = brackets.end();
      more = brackets.find();
      put(group, ai, text.substring(start, more ? brackets.start() : text.length()));
    }
  }

  private void readTransmitted(String text) {
    for (int at = 0; at < text.length(); ) {
      if (text.charAt(at) == SEPARATOR) {
        at++;
        continue;
      }
      var unknown = Phrase.of("BARCODE.NO_IDENTIFIER").with("at", at + 1);
      var group =
          IdentifierGroup.startOf(text.substring(at)).orElseThrow(() -> new BadCell(unknown));
      var ai = group.ai().matcher(text).region(at, text.length());
      ai.lookingAt();
      int separator = text.indexOf(SEPARATOR, ai.end());
      int end = separator < 0 ? text.length() : separator;
      at = group.predefined() ? Math.min(end, ai.end() + group.most()) : end;
      put(group, ai.group(), text.substring(ai.end(), at));
    }
  }

  private void put(IdentifierGroup group, String ai, String value) {
    String before = values.put(ai, group.checked(ai, value));
    if (before != null && !before.equals(value)) {
      throw new BadCell(Phrase.of("BARCODE.TWICE").with("ai", ai));
    }
  }

  private Optional<String> get(String ai) {
    return Optional.ofNullable(values.get(ai));
  }

  /**
   * What it holds: the body is the lot (10), the code the cut after UN/ECE (7002), the pieces are
   * the number in a pack of varying number (30), else in a container (37). A gross weight without a
   * net one is a fault, since it is never a yield. The date is that of packing (13), else of
   * production (11); empty if only the month is given (day 00) or the year has no such day.
   *
   * @param thisYear a two-digit year is the one from 49 years before it to 50 years after it (GS1
   *     General Specifications, section 7.12)
   */
  BarcodeContent content(int thisYear) {
    var nets = nets();
    boolean gross = values.keySet().stream().anyMatch(GROSS.asMatchPredicate());
    return new BarcodeContent(
        get("10").orElse(""),
        get("7002").orElse(""),
        get("30").or(() -> get("37")).map(count -> new BigInteger(count).toString()).orElse(""),
        nets,
        get("13").or(() -> get("11")).flatMap(date -> IdentifierGroup.date(date, thisYear)),
        nets.isEmpty() && gross ? Optional.of(Phrase.of("BARCODE.GROSS")) : Optional.empty());
  }

  /** The net weights: 310n in kilograms, then 320n in pounds. */
  private List<GivenWeight> nets() {
    return values.keySet().stream()
        .filter(NET.asMatchPredicate())
        .map(
            ai ->
                new GivenWeight(
                    new BigDecimal(new BigInteger(values.get(ai)), ai.charAt(3) - '0'),
                    Optional.of(ai.charAt(1) == '1' ? WeightUnit.KG : WeightUnit.LB)))
        .toList();
  }

  /**
   * Application identifiers of GS1 that are alike, and the form of the values after them.
   *
   * @param ai their digits
   * @param fewest the fewest characters of a value
   * @param most the most characters of a value
   * @param content the kind of characters of a value
   */
  private record IdentifierGroup(Pattern ai, int fewest, int most, Content content) {
    /** What a value consists of. */
    enum Content {
      TEXT,
      DIGITS,
      CHECKED_DIGITS,
      DATE
    }

    /**
     * The identifiers after the GS1 General Specifications (tables of identifiers and of predefined
     * lengths) and the GS1 Barcode Syntax Dictionary. The last digit of a measure is its number of
     * decimals, at most five. Identifiers that no field is read from share a group with the
     * greatest length that one of them has.
     */
    private static final List<IdentifierGroup> ALL =
        List.of(
            of("00", 18, 18, Content.CHECKED_DIGITS),
            of("0[1-3]", 14, 14, Content.CHECKED_DIGITS),
            of("10", 1, 20, Content.TEXT),
            of("1[1-3]", 6, 6, Content.DATE),
            of("1[5-7]", 6, 6, Content.DATE),
            of("20", 2, 2, Content.DIGITS),
            of("2[12]", 1, 20, Content.TEXT),
            of("2[3-5]\\d", 1, 30, Content.TEXT),
            of("30", 1, 8, Content.DIGITS),
            of("3[1-6]\\d[0-5]", 6, 6, Content.DIGITS),
            of("37", 1, 8, Content.DIGITS),
            of("39\\d\\d", 1, 18, Content.DIGITS),
            of("40\\d", 1, 30, Content.TEXT),
            of("41\\d", 13, 13, Content.CHECKED_DIGITS),
            of("42\\d", 1, 15, Content.TEXT),
            of("43\\d\\d", 1, 70, Content.TEXT),
            of("70\\d\\d", 1, 30, Content.TEXT),
            of("71\\d", 1, 20, Content.TEXT),
            of("72\\d\\d", 1, 30, Content.TEXT),
            of("8[0-2]\\d\\d", 1, 90, Content.TEXT),
            of("9\\d", 1, 90, Content.TEXT));

    /** The characters of a GS1 text: character set 82 of the General Specifications. */
    private static final Pattern TEXT = Pattern.compile("[!\"%&'()*+,\\-./0-9:;<=>?A-Z_a-z]*");

    private static final Pattern DIGITS = Pattern.compile("\\d*");

    private static IdentifierGroup of(String ai, int fewest, int most, Content content) {
      return new IdentifierGroup(Pattern.compile(ai), fewest, most, content);
    }

    /** Whether the length of a value is predefined, so that no separator ends it. */
    boolean predefined() {
      return fewest == most;
    }

    /** The group of the identifier at the beginning of {@code text}; empty if it is not known. */
    static Optional<IdentifierGroup> startOf(String text) {
      return ALL.stream().filter(group -> group.ai.matcher(text).lookingAt()).findFirst();
    }

    /**
     * Returns {@code value} if it may follow the identifier {@code ai} of this group.
     *
     * @throws BadCell if not
     */
    String checked(String ai, String value) {
      if (value.length() < fewest || value.length() > most) {
        throw new BadCell(
            fault(predefined() ? "LENGTH" : "LENGTHS", ai)
                .with("found", value.length())
                .with("fewest", fewest)
                .with("most", most));
      }
      if (!(content == Content.TEXT ? TEXT : DIGITS).matcher(value).matches()) {
        throw new BadCell(fault("CHARACTERS", ai));
      }
      if (content == Content.CHECKED_DIGITS && !CheckDigits.endsRight(value)) {
        int digit = CheckDigits.mod10(value.substring(0, value.length() - 1));
        throw new BadCell(fault("CHECK_AFTER", ai).with("expected", digit));
      }
      // Day 00 means the whole month. The year 2000 has a 29 February, so no valid date is refused.
      if (content == Content.DATE && date(value.replaceFirst("00$", "01"), 2000).isEmpty()) {
        throw new BadCell(fault("NO_DATE", ai));
      }
      return value;
    }

    private static Phrase fault(String key, String ai) {
      return Phrase.of("BARCODE." + key).with("ai", ai);
    }

    /** The date {@code YYMMDD}, from 49 years before {@code thisYear} to 50 after; else empty. */
    static Optional<LocalDate> date(String digits, int thisYear) {
      try {
        var format =
            new DateTimeFormatterBuilder()
                .appendValueReduced(ChronoField.YEAR, 2, 2, thisYear - 49)
                .appendPattern("MMdd")
                .toFormatter()
                .withResolverStyle(ResolverStyle.STRICT);
        return Optional.of(LocalDate.parse(digits, format));
      } catch (DateTimeException e) {
        return Optional.empty();
      }
    }
  }
}
