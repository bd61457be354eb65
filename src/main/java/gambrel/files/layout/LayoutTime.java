package gambrel.files.layout;

import gambrel.files.csv.BadCell;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAccessor;
import java.time.temporal.TemporalQueries;
import java.util.Optional;

/**
 * Reads the times of an export, which stand in one column, or in two for date and clock.
 *
 * @param time the pattern of the one column; empty for ISO 8601
 * @param date the pattern of the column of dates
 * @param clock the pattern of the column of clock times
 * @param timed whether the export has clock times at all
 */
record LayoutTime(Optional<TimePattern> time, TimePattern date, TimePattern clock, boolean timed) {
  /**
   * The ISO time of a cell that holds date and clock.
   *
   * @throws BadCell if it is not by the layout's pattern
   */
  String ofOne(String text) {
    return time.isEmpty()
        ? text
        : time.get()
            .read(text, LayoutTime::moment)
            .orElseThrow(() -> new BadCell("NOT_BY_PATTERN"));
  }

  /**
   * The ISO time of two cells; a date of an export without clock times is the day's first moment.
   *
   * @param stamped the date of a barcode, for a blank date cell
   * @throws BadCell if one of the two is missing or not by its pattern
   */
  String ofTwo(String dateText, String clockText, Optional<LocalDate> stamped) {
    if (dateText.isEmpty() && stamped.isEmpty()) {
      throw new BadCell("NO_DATE");
    }
    var day =
        dateText.isEmpty()
            ? stamped.get()
            : date.read(dateText, LocalDate::from)
                .orElseThrow(() -> new BadCell("DATE_NOT_BY_PATTERN"));
    if (clockText.isEmpty() && timed) {
      throw new BadCell("NO_CLOCK");
    }
    return clockText.isEmpty()
        ? firstOf(day)
        : clock
            .read(clockText, LocalTime::from)
            .map(found -> day.atTime(found).toString())
            .orElseThrow(() -> new BadCell("CLOCK_NOT_BY_PATTERN"));
  }

  /** The first moment of a day. */
  static String firstOf(LocalDate day) {
    return day.atStartOfDay().toString();
  }

  private static String moment(TemporalAccessor parsed) {
    return DateTimeFormatter.ISO_LOCAL_DATE_TIME.format(parsed) + offset(parsed);
  }

  private static String offset(TemporalAccessor parsed) {
    boolean zoned = parsed.query(TemporalQueries.zone()) != null;
    return zoned ? ZonedDateTime.from(parsed).getOffset().getId() : "";
  }
}
