package gambrel.files.csv;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.ResolverStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Dates and moments as a shop in this zone writes them: ISO 8601, or {@code own}, the formatter of
 * its own pattern, if it has one.
 */
public record Dates(Optional<DateTimeFormatter> own, ZoneId zone) {
  private static final Pattern MOMENT =
      Pattern.compile(
          "(?i)(.+?)(?:(?:T| +)(\\d{1,2}:\\d{2}(?::\\d{2}(?:\\.\\d{1,9})?)?)"
              + "\\s*(Z|[+-]\\d{2}(?::?\\d{2})?)?)?");
  private static final Pattern HALF_DAY =
      Pattern.compile("(?i)(?<=\\d[\\s\u00A0\u202F]?)([ap])\\.[\\s\u00A0\u202F]*m\\.?$");
  private static final List<Locale> OTHERS =
      List.of(Locale.FRENCH, Locale.GERMAN, Locale.forLanguageTag("es"));
  private static final int FIRST_YEAR = 1900;
  private static final int LAST_YEAR = 2199;

  /**
   * A strict formatter for a pattern of {@link DateTimeFormatter}.
   *
   * @throws IllegalArgumentException if the pattern is not understood
   */
  public static DateTimeFormatter formatter(String pattern, Locale locale) {
    // A strict formatter accepts y only with an era, so y outside quotes becomes u.
    var parts = pattern.split("'", -1);
    for (int i = 0; i < parts.length; i += 2) {
      parts[i] = parts[i].replace('y', 'u');
    }
    return new DateTimeFormatterBuilder()
        .parseCaseInsensitive()
        .appendPattern(String.join("'", parts))
        .toFormatter(locale)
        .withResolverStyle(ResolverStyle.STRICT);
  }

  /** A text with AM for {@code a. m.} and PM for {@code p.m.}, as English formatters read them. */
  public static String withHalfDays(String text) {
    return HALF_DAY.matcher(text).replaceFirst("$1M");
  }

  /**
   * The formatters of a pattern in the language of {@code locale}, in English, which many scales
   * print wherever they are, and, for names of months and days, in the other languages of pages.
   *
   * @throws IllegalArgumentException if the pattern is not understood
   */
  public static List<DateTimeFormatter> formatters(String pattern, Locale locale) {
    var languages = Stream.of(locale, Locale.ENGLISH);
    boolean named = pattern.contains("MMM") || pattern.contains("EEE");
    return (named ? Stream.concat(languages, OTHERS.stream()) : languages)
        .map(language -> formatter(pattern, language))
        .toList();
  }

  /** The date of a text, from 1900 to 2199. */
  public LocalDate date(String text) {
    return parse(text, DateTimeFormatter.ISO_LOCAL_DATE)
        .or(() -> own.flatMap(formatter -> parse(text, formatter)))
        .filter(date -> date.getYear() >= FIRST_YEAR && date.getYear() <= LAST_YEAR)
        .orElseThrow(() -> bad("NOT_DATE"));
  }

  /** The moment of a text; a date alone means its first. */
  public OffsetDateTime moment(String text) {
    return moment(text, LocalTime.MIN).withEarlierOffsetAtOverlap().toOffsetDateTime();
  }

  /** The moment of a text that ends a period; a date alone means its last. */
  public OffsetDateTime lastMoment(String text) {
    return moment(text, LocalTime.MAX).withLaterOffsetAtOverlap().toOffsetDateTime();
  }

  private ZonedDateTime moment(String text, LocalTime otherwise) {
    var parts = MOMENT.matcher(text);
    if (!parts.matches()) {
      throw bad("NOT_MOMENT");
    }
    String clock = parts.group(2);
    String offset = parts.group(3);
    try {
      var local =
          date(parts.group(1).strip())
              .atTime(
                  clock == null
                      ? otherwise
                      : LocalTime.parse(clock.indexOf(':') == 1 ? "0" + clock : clock));
      return local.atZone(offset == null ? zone : ZoneOffset.of(offset.toUpperCase(Locale.ROOT)));
    } catch (DateTimeException | BadCell e) {
      throw bad("NOT_MOMENT");
    }
  }

  private static Optional<LocalDate> parse(String text, DateTimeFormatter formatter) {
    try {
      return Optional.of(LocalDate.parse(text, formatter));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private BadCell bad(String why) {
    return new BadCell(why + (own.isPresent() ? ".OR_PATTERN" : ""));
  }
}
