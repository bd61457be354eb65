package gambrel.files.barcode;

import gambrel.files.csv.BadCell;
import gambrel.trade.notice.Phrase;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.ResolverStyle;
import java.time.temporal.ChronoField;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Application identifiers of GS1 that are alike, and the form of the values after them.
 *
 * @param ai their digits
 * @param fewest the fewest characters of a value
 * @param most the most characters of a value
 * @param content the kind of characters of a value
 */
record IdentifierGroup(Pattern ai, int fewest, int most, Content content) {
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
   * decimals, at most five. Identifiers that no field is read from share a group with the greatest
   * length that one of them has.
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
