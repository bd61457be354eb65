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
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * Reads ISO 8601 times with a year of four digits from 1900 to 2199; a time without an offset is
 * local to the shop.
 */
record ExportTimes(ZoneId zone) {
  private static final int FIRST_YEAR = 1900;
  private static final int LAST_YEAR = 2199;

  /** The form that nearly every scale writes; the JDK's formatter takes several times as long. */
  private static final Pattern USUAL =
      Pattern.compile("(\\d{4})-(\\d\\d)-(\\d\\d)[T ](\\d\\d):(\\d\\d)(?::(\\d\\d))?");

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
      var usual = USUAL.matcher(text);
      var parsed =
          usual.matches()
              ? time(usual)
              : ISO.parseBest(
                  text.indexOf(' ') == 10 ? text.replaceFirst(" ", "T") : text,
                  OffsetDateTime::from,
                  LocalDateTime::from);
      int year = parsed.get(ChronoField.YEAR);
      return FIRST_YEAR <= year && year <= LAST_YEAR ? Optional.of(parsed) : Optional.empty();
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private static LocalDateTime time(MatchResult usual) {
    return LocalDateTime.of(
        number(usual, 1),
        number(usual, 2),
        number(usual, 3),
        number(usual, 4),
        number(usual, 5),
        usual.group(6) == null ? 0 : number(usual, 6));
  }

  private static int number(MatchResult usual, int group) {
    return Integer.parseInt(usual.group(group));
  }
}
