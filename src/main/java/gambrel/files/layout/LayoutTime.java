package gambrel.files.layout;

import gambrel.files.csv.BadCell;
import gambrel.files.csv.Dates;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAccessor;
import java.time.temporal.TemporalQueries;
import java.time.temporal.TemporalQuery;
import java.util.List;
import java.util.Optional;

/**
 * Reads the times of an export, which stand in one column, or in two for date and clock.
 *
 * @param time formats of the one column; empty for ISO 8601
 * @param date formats of the column of dates
 * @param clock formats of the column of clock times
 * @param timed whether the export has clock times at all
 */
record LayoutTime(
    List<DateTimeFormatter> time,
    List<DateTimeFormatter> date,
    List<DateTimeFormatter> clock,
    boolean timed) {
  /**
   * The ISO time of a cell that holds date and clock.
   *
   * @throws BadCell if it is not by the layout's pattern
   */
  String ofOne(String text) {
    return time.isEmpty()
        ? text
        : parse(time, text, LayoutTime::moment).orElseThrow(() -> new BadCell("NOT_BY_PATTERN"));
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
            : parse(date, dateText, LocalDate::from)
                .orElseThrow(() -> new BadCell("DATE_NOT_BY_PATTERN"));
    if (clockText.isEmpty() && timed) {
      throw new BadCell("NO_CLOCK");
    }
    return clockText.isEmpty()
        ? firstOf(day)
        : parse(clock, clockText, LocalTime::from)
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

  private static <T> Optional<T> parse(
      List<DateTimeFormatter> formatters, String text, TemporalQuery<T> query) {
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
}
