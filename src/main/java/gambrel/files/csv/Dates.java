package gambrel.files.csv;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.ResolverStyle;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Dates and moments as the shop writes them: ISO 8601, or by its own pattern. */
public final class Dates {
  private static final Pattern MOMENT =
      Pattern.compile(
          "(?i)(.+?)(?:(?:T| +)(\\d{1,2}:\\d{2}(?::\\d{2}(?:\\.\\d{1,9})?)?)"
              + "\\s*(Z|[+-]\\d{2}(?::?\\d{2})?)?)?");
  private static final int FIRST_YEAR = 1900;
  private static final int LAST_YEAR = 2199;

  private final Optional<DateTimeFormatter> own;
  private final ZoneId zone;

  /**
   * The shop's dates.
   *
   * @param own the formatter of its own pattern, if it has one
   * @param zone its time zone
   */
  public Dates(Optional<DateTimeFormatter> own, ZoneId zone) {
    this.own = own;
    this.zone = zone;
  }

  /**
   * A strict formatter for a pattern of {@link DateTimeFormatter}.
   *
   * @throws IllegalArgumentException if the pattern is not understood
   */
  public static DateTimeFormatter formatter(String pattern, Locale locale) {
    return new DateTimeFormatterBuilder()
        .parseCaseInsensitive()
        .appendPattern(proleptic(pattern))
        .toFormatter(locale)
        .withResolverStyle(ResolverStyle.STRICT);
  }

  /** A strict year needs an era; what a shop calls yyyy is the proleptic year. Quotes hold text. */
  private static String proleptic(String pattern) {
    var changed = new StringBuilder(pattern);
    boolean quoted = false;
    for (int i = 0; i < changed.length(); i++) {
      quoted ^= changed.charAt(i) == '\'';
      if (!quoted && changed.charAt(i) == 'y') {
        changed.setCharAt(i, 'u');
      }
    }
    return changed.toString();
  }

  /** The date that a text denotes. */
  public LocalDate date(String text) {
    return iso(text)
        .or(() -> byPattern(text))
        .filter(date -> date.getYear() >= FIRST_YEAR && date.getYear() <= LAST_YEAR)
        .orElseThrow(() -> new BadCell("NOT_DATE" + orPattern()));
  }

  /** The moment that a text denotes; a date alone means its first. */
  public OffsetDateTime moment(String text) {
    return moment(text, LocalTime.MIN).withEarlierOffsetAtOverlap().toOffsetDateTime();
  }

  /** The moment that a text denotes as the end of a time; a date alone means its last. */
  public OffsetDateTime lastMoment(String text) {
    return moment(text, LocalTime.MAX).withLaterOffsetAtOverlap().toOffsetDateTime();
  }

  private ZonedDateTime moment(String text, LocalTime otherwise) {
    var parts = MOMENT.matcher(text);
    if (!parts.matches()) {
      throw notMoment();
    }
    try {
      var local =
          LocalDateTime.of(
              date(parts.group(1).strip()),
              parts.group(2) == null ? otherwise : time(parts.group(2)));
      return parts.group(3) == null
          ? local.atZone(zone)
          : local.atZone(ZoneOffset.of(parts.group(3).toUpperCase(Locale.ROOT)));
    } catch (DateTimeException | BadCell e) {
      throw notMoment();
    }
  }

  private BadCell notMoment() {
    return new BadCell("NOT_MOMENT" + orPattern());
  }

  private static LocalTime time(String text) {
    return LocalTime.parse(text.indexOf(':') == 1 ? "0" + text : text);
  }

  private static Optional<LocalDate> iso(String text) {
    return parse(text, DateTimeFormatter.ISO_LOCAL_DATE);
  }

  private Optional<LocalDate> byPattern(String text) {
    return own.flatMap(formatter -> parse(text, formatter));
  }

  private static Optional<LocalDate> parse(String text, DateTimeFormatter formatter) {
    try {
      return Optional.of(LocalDate.parse(text, formatter));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private String orPattern() {
    return own.isPresent() ? ".OR_PATTERN" : "";
  }
}
