package gambrel.files.layout;

import gambrel.files.barcode.InStorePlan;
import gambrel.files.csv.BadCell;
import gambrel.files.csv.Dates;
import gambrel.files.csv.TextForm;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.notice.Phrase;
import java.nio.charset.Charset;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.Temporal;
import java.time.temporal.TemporalQuery;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.regex.PatternSyntaxException;

/** The kinds of value that a layout holds. */
final class LayoutTypes {
  private static final Map<String, Character> WORDS =
      Map.of(
          "tab",
          '\t',
          "comma",
          ',',
          "semicolon",
          ';',
          "pipe",
          '|',
          "point",
          '.',
          "space",
          ' ',
          "apostrophe",
          '\'',
          "none",
          TextForm.NO_QUOTE);

  private static final int LONGEST_EXPRESSION = 500;

  private static final LocalDateTime SAMPLE = LocalDateTime.of(2026, 11, 23, 21, 5);

  private LayoutTypes() {}

  /** What stands between cells. */
  static char delimiter(String text) {
    return character(
        text,
        c -> !Character.isLetterOrDigit(c) && c != TextForm.NO_QUOTE && "\"\n\r".indexOf(c) < 0,
        "NOT_DELIMITER");
  }

  /** What encloses cells. */
  static char quote(String text) {
    return character(
        text, c -> !Character.isLetterOrDigit(c) && !Character.isWhitespace(c), "NOT_QUOTE");
  }

  /** The decimal mark. */
  static char decimal(String text) {
    return character(text, c -> c == '.' || c == ',', "NOT_DECIMAL_MARK");
  }

  /** What stands between thousands. */
  static char thousands(String text) {
    return character(
        text, c -> !Character.isLetterOrDigit(c) && c != TextForm.NO_QUOTE, "NOT_MARK");
  }

  private static char character(String text, Predicate<Character> fits, String misfit) {
    var word = WORDS.get(text.toLowerCase(Locale.ROOT));
    if (word == null && text.length() != 1) {
      throw new BadCell("NOT_CHARACTER");
    }
    char c = word == null ? text.charAt(0) : word;
    if (!fits.test(c)) {
      throw new BadCell(misfit);
    }
    return c;
  }

  /** A character set. */
  static Charset charset(String text) {
    try {
      return Charset.forName(text);
    } catch (IllegalArgumentException e) {
      throw new BadCell("NOT_CHARSET");
    }
  }

  /** A regular expression; one that is very long could nest deeper than the machine's stack. */
  static Pattern expression(String text) {
    if (text.length() > LONGEST_EXPRESSION) {
      throw new BadCell(Phrase.of("CELL.TOO_LONG").with("most", LONGEST_EXPRESSION));
    }
    try {
      return Pattern.compile(text);
    } catch (PatternSyntaxException e) {
      throw new BadCell("NOT_EXPRESSION");
    }
  }

  /** A unit of weight; empty for pounds and ounces together. */
  static Optional<WeightUnit> unit(String text) {
    if (text.equalsIgnoreCase("lb-oz")) {
      return Optional.empty();
    }
    return Optional.of(WeightUnit.of(text).orElseThrow(() -> new BadCell("NOT_LAYOUT_UNIT")));
  }

  /** A pattern of date and time, which may carry an offset. */
  static List<DateTimeFormatter> time(String pattern, Locale locale) {
    return formatters(pattern, locale, SAMPLE, LocalDateTime::from, "NOT_TIME_PATTERN");
  }

  /** A pattern of dates. */
  static List<DateTimeFormatter> date(String pattern, Locale locale) {
    return formatters(
        pattern, locale, SAMPLE.toLocalDate(), LocalDate::from, "NOT_WHOLE_DATE_PATTERN");
  }

  /** A pattern of clock times. */
  static List<DateTimeFormatter> clock(String pattern, Locale locale) {
    return formatters(pattern, locale, SAMPLE.toLocalTime(), LocalTime::from, "NOT_CLOCK_PATTERN");
  }

  /** Scales print months and markers in English wherever they stand. */
  private static <T extends Temporal> List<DateTimeFormatter> formatters(
      String pattern, Locale locale, T sample, TemporalQuery<T> query, String what) {
    try {
      var own = Dates.formatter(pattern, locale);
      String text = own.format(SAMPLE.atOffset(ZoneOffset.UTC));
      if (own.parse(text, query).equals(sample)) {
        return List.of(own, Dates.formatter(pattern, Locale.ENGLISH));
      }
    } catch (IllegalArgumentException | DateTimeException e) {
      // Told below, as for a pattern that leaves something out.
    }
    throw new BadCell(what);
  }

  /** A plan of in-store numbers. */
  static InStorePlan inStore(String plan, int decimals) {
    try {
      return InStorePlan.of(plan, decimals);
    } catch (IllegalArgumentException e) {
      throw new BadCell(Phrase.of("CELL.NOT_PLAN").with("decimals", decimals));
    }
  }

  /** Columns between commas or blanks. */
  static List<String> columns(String text) {
    return List.of(text.split("[,;\\s]+")).stream().map(LayoutTypes::column).distinct().toList();
  }

  /** A column that a layout may name. */
  static String column(String text) {
    String id = text.toLowerCase(Locale.ROOT);
    if (!LayoutColumns.all().contains(id)) {
      throw new BadCell(Phrase.of("CELL.NO_COLUMN").with("named", text));
    }
    return id;
  }
}
