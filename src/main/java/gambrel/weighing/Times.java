package gambrel.weighing;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.chrono.IsoChronology;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.ResolverStyle;
import java.time.temporal.TemporalAccessor;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Reads ISO 8601 times. A time without an offset is local; in the hour that the end of summer time
 * repeats, the first pass is meant until a scale's own clock is seen to go back within one file.
 */
final class Times {
  /** Clocks that were reset show years of their own, but all with four digits. */
  private static final int FIRST_YEAR = 1000;

  private static final int LAST_YEAR = 9998;

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
  private final Map<String, Repeat> repeats = new HashMap<>();

  Times(ZoneId zone) {
    this.zone = zone;
  }

  /** The moment that {@code text} means in a row of {@code scale} in {@code file}. */
  Optional<OffsetDateTime> read(String text, String file, String scale) {
    try {
      String iso = text.indexOf(' ') == 10 ? text.replaceFirst(" ", "T") : text;
      TemporalAccessor parsed = ISO.parseBest(iso, OffsetDateTime::from, LocalDateTime::from);
      var time =
          parsed instanceof OffsetDateTime exact
              ? exact.atZoneSameInstant(zone).toOffsetDateTime()
              : local((LocalDateTime) parsed, file + '\n' + scale);
      return Optional.of(time).filter(t -> t.getYear() >= FIRST_YEAR && t.getYear() <= LAST_YEAR);
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private OffsetDateTime local(LocalDateTime time, String clock) {
    var offsets = zone.getRules().getValidOffsets(time);
    if (offsets.size() < 2) {
      return time.atZone(zone).toOffsetDateTime();
    }
    var repeat = repeats.computeIfAbsent(clock, c -> new Repeat());
    return time.atOffset(repeat.offset(time, offsets.get(0), offsets.get(1)));
  }

  /** What one clock has shown of a repeated hour. */
  private static final class Repeat {
    private LocalDateTime latest = LocalDateTime.MIN;
    private boolean second;

    ZoneOffset offset(LocalDateTime time, ZoneOffset summer, ZoneOffset winter) {
      if (!time.toLocalDate().equals(latest.toLocalDate())) {
        second = false;
      } else if (time.isBefore(latest)) {
        second = true;
      }
      latest = time;
      return second ? winter : summer;
    }
  }
}
