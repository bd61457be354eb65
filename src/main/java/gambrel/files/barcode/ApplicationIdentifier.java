package gambrel.files.barcode;

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
 * An application identifier of GS1, and what may follow it.
 *
 * @param ai its digits
 * @param content what the characters after it are
 * @param predefined whether its first two digits fix its length, so that no separator ends it
 * @param fewest characters after it
 * @param most characters after it
 */
record ApplicationIdentifier(String ai, Content content, boolean predefined, int fewest, int most) {
  /**
   * What the first two digits of an identifier say, after the GS1 General Specifications (tables of
   * identifiers and of predefined lengths) and the GS1 Barcode Syntax Dictionary. A line: range of
   * first two digits; number of digits of the identifier; length of what follows, with a star where
   * it is predefined; content. Identifiers that no field is read from share a line, with the
   * greatest length that one of them has.
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

  /** The line of each two first digits. */
  private static final Map<String, MatchResult> LINES =
      LINE.matcher(TABLE)
          .results()
          .flatMap(line -> firstDigits(line).map(first -> Map.entry(first, line)))
          .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));

  /** Identifiers of a measure end in its number of decimals, at most five. */
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

  /**
   * The identifier with which {@code text} begins.
   *
   * @param why the end of the message if it is not known
   * @throws BadBarcode if it is not known
   */
  static ApplicationIdentifier startOf(String text, String why) throws BadBarcode {
    var line = LINES.get(text.substring(0, Math.min(2, text.length())));
    int digits = line == null ? 0 : Integer.parseInt(line.group(3));
    String ai = text.substring(0, Math.min(digits, text.length()));
    if (line == null
        || ai.length() < digits
        || !DIGITS.matcher(ai).matches()
        || NO_MEASURE.matcher(ai).matches()) {
      throw new BadBarcode(why);
    }
    boolean predefined = !line.group(6).isEmpty();
    int most = Integer.parseInt(line.group(5));
    int fewest = predefined ? most : Integer.parseInt(line.group(4));
    return new ApplicationIdentifier(ai, Content.valueOf(line.group(7)), predefined, fewest, most);
  }

  /**
   * Returns {@code value} if it may follow.
   *
   * @throws BadBarcode if not
   */
  String checked(String value) throws BadBarcode {
    if (value.length() < fewest || value.length() > most) {
      String length = fewest == most ? "" + most : fewest + " to " + most;
      throw new BadBarcode(
          "has " + value.length() + " characters after (" + ai + "), which takes " + length);
    }
    if (!(content == Content.TEXT ? TEXT : DIGITS).matcher(value).matches()) {
      throw new BadBarcode("has characters after (" + ai + ") that may not stand there");
    }
    if (content == Content.CHECKED_DIGITS && !CheckDigits.endsRight(value)) {
      int digit = CheckDigits.mod10(value.substring(0, value.length() - 1));
      throw new BadBarcode("has a wrong check digit after (" + ai + "): it should be " + digit);
    }
    if (content == Content.DATE && !isDate(value)) {
      throw new BadBarcode("has no date after (" + ai + ")");
    }
    return value;
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
