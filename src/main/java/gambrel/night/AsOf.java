package gambrel.night;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.chrono.IsoChronology;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.ResolverStyle;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/** The moment of a run. Only this class reads the machine's clock. */
public final class AsOf {
  private static final DateTimeFormatter FORMAT =
      new DateTimeFormatterBuilder()
          .append(DateTimeFormatter.ISO_LOCAL_DATE_TIME)
          .optionalStart()
          .appendOffsetId()
          .toFormatter(Locale.ROOT)
          .withChronology(IsoChronology.INSTANCE)
          .withResolverStyle(ResolverStyle.STRICT);

  private AsOf() {}

  /**
   * Reads a moment, with or without seconds. Without an offset it is in the shop's zone.
   *
   * @throws RefusedException if it cannot be read
   */
  public static OffsetDateTime read(String text, ZoneId zone) throws RefusedException {
    try {
      var parsed = FORMAT.parseBest(text.strip(), OffsetDateTime::from, LocalDateTime::from);
      return parsed instanceof OffsetDateTime moment
          ? moment.atZoneSameInstant(zone).toOffsetDateTime()
          : ((LocalDateTime) parsed).atZone(zone).toOffsetDateTime();
    } catch (DateTimeException e) {
      throw new RefusedException("\"" + text + "\" is no moment like 2026-07-31T02:00");
    }
  }

  /** The machine's time in the shop's zone, to the second. */
  public static OffsetDateTime machine(ZoneId zone) {
    return OffsetDateTime.now(zone).truncatedTo(ChronoUnit.SECONDS);
  }
}
