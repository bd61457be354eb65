package gambrel.weighing;

import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.chrono.IsoChronology;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.time.temporal.ChronoField;
import java.time.temporal.TemporalAccessor;
import java.util.Locale;
import java.util.Optional;

/**
 * Reads ISO 8601 times with a year of four digits from 1900 to 2199; a time without an offset is
 * local to the shop.
 */
final class Times {
  private static final int FIRST_YEAR = 1900;
  private static final int LAST_YEAR = 2199;

  private static final DateTimeFormatter ISO =
      new DateTimeFormatterBuilder()
          .append(DateTimeFormatter.ISO_LOCAL_DATE)
          .appendLiteral('T')
          .append(DateTimeFormatter.ISO_LOCAL_TIME)
          .optionalStart()
          .appendOffsetId()
          .toFormatter(Locale.ROOT)
          .withChronology(IsoChronology.INSTANCE)
          .withResolverStyle(ResolverStyle.STRICT);

  private final ZoneId zone;

  Times(ZoneId zone) {
    this.zone = zone;
  }

  ZoneId zone() {
    return zone;
  }

  /**
   * The moment that {@code text} means. In the hour that the end of summer time repeats it is the
   * first pass; in the hour that its beginning skips it is the moment that a clock shows which was
   * not put forward.
   */
  Optional<OffsetDateTime> read(String text) {
    return parse(text)
        .map(
            parsed ->
                parsed instanceof OffsetDateTime exact
                    ? exact.atZoneSameInstant(zone).toOffsetDateTime()
                    : ((LocalDateTime) parsed).atZone(zone).toOffsetDateTime());
  }

  /** The local time that {@code text} gives, if it gives no offset with it. */
  Optional<LocalDateTime> local(String text) {
    return parse(text).filter(LocalDateTime.class::isInstance).map(LocalDateTime.class::cast);
  }

  private static Optional<TemporalAccessor> parse(String text) {
    var plain = PlainTime.read(text);
    if (plain.isPresent()) {
      return plain.filter(time -> isInRange(time.getYear())).map(time -> time);
    }
    try {
      String iso = text.indexOf(' ') == 10 ? text.replaceFirst(" ", "T") : text;
      var parsed = ISO.parseBest(iso, OffsetDateTime::from, LocalDateTime::from);
      return isInRange(parsed.get(ChronoField.YEAR)) ? Optional.of(parsed) : Optional.empty();
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  private static boolean isInRange(int year) {
    return FIRST_YEAR <= year && year <= LAST_YEAR;
  }
}
