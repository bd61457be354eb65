package gambrel.files.layout;

import gambrel.files.csv.Dates;
import gambrel.trade.rows.DecimalText;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.chrono.ThaiBuddhistChronology;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.temporal.ChronoField;
import java.time.temporal.TemporalAccessor;
import java.time.temporal.TemporalQuery;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * How a layout says that times, dates or clock times are written: by a pattern of {@link
 * DateTimeFormatter}, or by one of the words {@code epoch} and {@code days}.
 *
 * @param formatters one for each language that the pattern is read in
 * @param days whether they are days since 1900 as spreadsheets count them, with decimals for the
 *     clock
 */
public record TimePattern(List<DateTimeFormatter> formatters, boolean days) {
  /** ISO 8601 dates. */
  static final TimePattern ISO_DATE = of(DateTimeFormatter.ISO_LOCAL_DATE);

  /** Clock times with or without seconds. */
  static final TimePattern ANY_CLOCK = of(DateTimeFormatter.ofPattern("H:mm[:ss]"));

  private static final String EPOCH_WORD = "epoch";
  private static final String DAYS_WORD = "days";
  private static final int SECONDS_DIGITS = 10;

  /** Seconds since 1970 in UTC, or milliseconds, of which there are 13 digits. */
  private static final TimePattern EPOCH =
      new TimePattern(
          List.of(
              new DateTimeFormatterBuilder()
                  .appendValue(ChronoField.INSTANT_SECONDS, SECONDS_DIGITS)
                  .appendFraction(ChronoField.NANO_OF_SECOND, 0, 9, true)
                  .toFormatter(Locale.ROOT)
                  .withZone(ZoneOffset.UTC),
              new DateTimeFormatterBuilder()
                  .appendValue(ChronoField.INSTANT_SECONDS, SECONDS_DIGITS)
                  .appendValue(ChronoField.MILLI_OF_SECOND, 3)
                  .toFormatter(Locale.ROOT)
                  .withZone(ZoneOffset.UTC)),
          false);

  private static final TimePattern DAYS = new TimePattern(List.of(), true);

  /** The day with number 0 for every spreadsheet date since March 1900. */
  private static final LocalDateTime DAY_ZERO = LocalDate.of(1899, 12, 30).atStartOfDay();

  private static final BigDecimal SECONDS_A_DAY =
      BigDecimal.valueOf(Duration.ofDays(1).toSeconds());
  private static final BigDecimal MOST_DAYS = BigDecimal.valueOf(110_000);

  private static TimePattern of(DateTimeFormatter formatter) {
    return new TimePattern(List.of(formatter), false);
  }

  /**
   * A pattern as a layout writes it.
   *
   * @param locale the language of months and markers, beside English
   * @throws IllegalArgumentException if it is not understood
   */
  public static TimePattern of(String pattern, Locale locale) {
    return switch (pattern.toLowerCase(Locale.ROOT)) {
      case EPOCH_WORD -> EPOCH;
      case DAYS_WORD -> DAYS;
      default -> new TimePattern(Dates.formatters(pattern, locale), false);
    };
  }

  /** The same with the years of the Thai calendar, of which 2569 is 2026. */
  TimePattern inThaiYears() {
    var thai = formatters.stream().map(f -> f.withChronology(ThaiBuddhistChronology.INSTANCE));
    return new TimePattern(thai.toList(), days);
  }

  /** Whether the layout gives a word in place of a pattern. */
  static boolean isWord(String pattern) {
    return pattern.equalsIgnoreCase(EPOCH_WORD) || pattern.equalsIgnoreCase(DAYS_WORD);
  }

  /** What a text means; empty if it is not by the pattern in any language. */
  public <T> Optional<T> read(String text, TemporalQuery<T> query) {
    if (days) {
      return day(text).map(query::queryFrom);
    }
    String plain = Dates.withHalfDays(text);
    for (var formatter : formatters) {
      try {
        return Optional.of(formatter.parse(plain, query));
      } catch (DateTimeException e) {
        // The next format is tried: the same pattern in another language.
      }
    }
    return Optional.empty();
  }

  private static Optional<TemporalAccessor> day(String text) {
    return DecimalText.of(text.replace(',', '.'))
        .filter(days -> days.signum() >= 0 && days.compareTo(MOST_DAYS) < 0)
        .map(days -> days.multiply(SECONDS_A_DAY).setScale(0, RoundingMode.HALF_UP))
        .map(seconds -> DAY_ZERO.plusSeconds(seconds.longValueExact()));
  }
}
