package gambrel.trade.rows;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.chrono.IsoChronology;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.ResolverStyle;
import java.time.temporal.ChronoField;
import java.time.temporal.TemporalAccessor;
import java.util.Locale;
import java.util.Optional;

/**
 * Reads ISO 8601 times with a year of four digits from 1900 to 2199; a time without an offset is
 * local to the shop.
 */
record ExportTimes(ZoneId zone) {
  private static final int FIRST_YEAR = 1900;
  private static final int LAST_YEAR = 2199;

  /** The form that nearly every scale writes; the JDK's formatter takes several times as long. */
  private static final String USUAL = "0000-00-00T00:00:00";

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

  /**
   * The moment that {@code text} means; empty if it is no such time. In the hour that comes twice
   * at the end of summer time it is in the first pass. A time in the hour that is skipped at the
   * beginning of summer time is read with the offset before the change.
   */
  Optional<OffsetDateTime> read(String text) {
    return parse(text)
        .map(
            parsed ->
                parsed instanceof OffsetDateTime exact
                    ? exact.atZoneSameInstant(zone).toOffsetDateTime()
                    : ((LocalDateTime) parsed).atZone(zone).toOffsetDateTime());
  }

  /** The local time that {@code text} gives; empty if it gives an offset or cannot be read. */
  Optional<LocalDateTime> local(String text) {
    return parse(text).filter(LocalDateTime.class::isInstance).map(LocalDateTime.class::cast);
  }

  private static Optional<TemporalAccessor> parse(String text) {
    try {
      var parsed =
          isUsual(text)
              ? usual(text)
              : ISO.parseBest(iso(text), OffsetDateTime::from, LocalDateTime::from);
      int year = parsed.get(ChronoField.YEAR);
      return FIRST_YEAR <= year && year <= LAST_YEAR ? Optional.of(parsed) : Optional.empty();
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private static String iso(String text) {
    return text.indexOf(' ') == 10 ? text.replaceFirst(" ", "T") : text;
  }

  /** Whether a text has the usual form, with or without seconds, or with a blank for the T. */
  private static boolean isUsual(String text) {
    boolean usual = text.length() == USUAL.length() || text.length() == USUAL.lastIndexOf(':');
    for (int i = 0; usual && i < text.length(); i++) {
      char form = USUAL.charAt(i);
      usual =
          form == '0'
              ? DecimalText.isDigits(text, i, i + 1)
              : text.charAt(i) == form || form == 'T' && text.charAt(i) == ' ';
    }
    return usual;
  }

  private static LocalDateTime usual(String text) {
    return LocalDateTime.of(
        number(text, 0, 4),
        number(text, 5, 7),
        number(text, 8, 10),
        number(text, 11, 13),
        number(text, 14, 16),
        text.length() == USUAL.length() ? number(text, 17, 19) : 0);
  }

  private static int number(String text, int from, int to) {
    return Integer.parseInt(text, from, to, 10);
  }
}
