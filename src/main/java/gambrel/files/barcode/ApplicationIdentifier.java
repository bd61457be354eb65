package gambrel.files.barcode;

import gambrel.files.csv.BadCell;
import gambrel.trade.notice.Phrase;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.ResolverStyle;
import java.time.temporal.ChronoField;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * An application identifier of GS1, and the form of the value after it.
 *
 * @param ai its digits
 * @param content the kind of characters after it
 * @param predefined whether its first two digits fix its length, so that no separator ends it
 * @param fewest characters after it
 * @param most characters after it
 */
record ApplicationIdentifier(String ai, Content content, boolean predefined, int fewest, int most) {
  /**
   * Identifiers by their first two digits, after the GS1 General Specifications (tables of
   * identifiers and of predefined lengths) and the GS1 Barcode Syntax Dictionary. A line holds the
   * range of the first two digits, the number of digits of the identifier, the length of its value
   * (with a star if it is predefined) and the content. Identifiers that no field is read from share
   * a line with the greatest length that one of them has.
   */
  private static final String TABLE =
      """
      00-00 2 18* CHECKED_DIGITS
      01-03 2 14* CHECKED_DIGITS
      10-10 2 1-20 TEXT
      11-13 2 6* DATE
      15-17 2 6* DATE
      20-20 2 2* DIGITS
      21-22 2 1-20 TEXT
      23-25 3 1-30 TEXT
      30-30 2 1-8 DIGITS
      31-36 4 6* DIGITS
      37-37 2 1-8 DIGITS
      39-39 4 1-18 DIGITS
      40-40 3 1-30 TEXT
      41-41 3 13* CHECKED_DIGITS
      42-42 3 1-15 TEXT
      43-43 4 1-70 TEXT
      70-70 4 1-30 TEXT
      71-71 3 1-20 TEXT
      72-72 4 1-30 TEXT
      80-82 4 1-90 TEXT
      90-99 2 1-90 TEXT
      """;

  private static final Pattern LINE =
      Pattern.compile("(\\d\\d)-(\\d\\d) (\\d) (?:(\\d+)-)?(\\d+)(\\*?) (\\w+)");

  /** The lines of the table by the first two digits. */
  private static final Map<String, MatchResult> LINES =
      LINE.matcher(TABLE)
          .results()
          .flatMap(line -> firstDigits(line).map(first -> Map.entry(first, line)))
          .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));

  /** Not an identifier: the last digit of a measure is its number of decimals, at most five. */
  private static final Pattern NO_MEASURE = Pattern.compile("3[1-6].[6-9]");

  /** The characters of a GS1 text: character set 82 of the General Specifications. */
  private static final Pattern TEXT = Pattern.compile("[!\"%&'()*+,\\-./0-9:;<=>?A-Z_a-z]*");

  private static final Pattern DIGITS = Pattern.compile("\\d*");

  enum Content {
    TEXT,
    DIGITS,
    CHECKED_DIGITS,
    DATE
  }

  private static Stream<String> firstDigits(MatchResult line) {
    int first = Integer.parseInt(line.group(1));
    int last = Integer.parseInt(line.group(2));
    return IntStream.rangeClosed(first, last).mapToObj("%02d"::formatted);
  }

  /** The identifier at the beginning of {@code text}; empty if it is not known. */
  static Optional<ApplicationIdentifier> startOf(String text) {
    var line = LINES.get(text.substring(0, Math.min(2, text.length())));
    int digits = line == null ? 0 : Integer.parseInt(line.group(3));
    String ai = text.substring(0, Math.min(digits, text.length()));
    if (line == null
        || ai.length() < digits
        || !DIGITS.matcher(ai).matches()
        || NO_MEASURE.matcher(ai).matches()) {
      return Optional.empty();
    }
    boolean predefined = !line.group(6).isEmpty();
    int most = Integer.parseInt(line.group(5));
    int fewest = predefined ? most : Integer.parseInt(line.group(4));
    return Optional.of(
        new ApplicationIdentifier(ai, Content.valueOf(line.group(7)), predefined, fewest, most));
  }

  /**
   * Returns {@code value} if it may follow the identifier.
   *
   * @throws BadCell if not
   */
  String checked(String value) {
    if (value.length() < fewest || value.length() > most) {
      throw new BadCell(
          fault(fewest == most ? "LENGTH" : "LENGTHS")
              .with("found", value.length())
              .with("fewest", fewest)
              .with("most", most));
    }
    if (!(content == Content.TEXT ? TEXT : DIGITS).matcher(value).matches()) {
      throw new BadCell(fault("CHARACTERS"));
    }
    if (content == Content.CHECKED_DIGITS && !CheckDigits.endsRight(value)) {
      int digit = CheckDigits.mod10(value.substring(0, value.length() - 1));
      throw new BadCell(fault("CHECK_AFTER").with("expected", digit));
    }
    if (content == Content.DATE && !isDate(value)) {
      throw new BadCell(fault("NO_DATE"));
    }
    return value;
  }

  private Phrase fault(String key) {
    return Phrase.of("BARCODE." + key).with("ai", ai);
  }

  /** Whether {@code YYMMDD} is a day in some century, or a month with the day 00. */
  private static boolean isDate(String digits) {
    // Of the years 1951 to 2050; 2000 is a leap year, whatever century the reader then takes.
    return date(digits.replaceFirst("00$", "01"), 2000).isPresent();
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
