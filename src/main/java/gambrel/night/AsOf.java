package gambrel.night;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoField;
import java.time.temporal.ChronoUnit;
import java.time.temporal.ValueRange;

/** The moment of a run. Only this class reads the machine's clock. */
public final class AsOf {
  /** Years in which a shop may weigh; others are mistyped. */
  private static final ValueRange YEARS = ValueRange.of(1900, 2999);

  private AsOf() {}

  /**
   * Reads a moment, with or without seconds. Without an offset it is in the shop's zone.
   *
   * @throws RefusedException if it cannot be read, or is centuries away
   */
  public static OffsetDateTime read(String text, ZoneId zone) throws RefusedException {
    try {
      var parsed =
          DateTimeFormatter.ISO_DATE_TIME.parseBest(
              text.strip(), OffsetDateTime::from, LocalDateTime::from);
      YEARS.checkValidValue(parsed.get(ChronoField.YEAR), ChronoField.YEAR);
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
