package gambrel.files.layout;

import gambrel.files.csv.BadCell;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAccessor;
import java.time.temporal.TemporalQuery;
import java.util.List;
import java.util.Optional;

/**
 * How an export writes times: in one column, or in two for date and clock.
 *
 * @param time what may stand in the one column; empty for ISO 8601
 * @param date what may stand in the column of dates; empty for ISO 8601
 * @param clock what may stand in the column of clock times; empty for {@code 9:05} and the like
 * @param timed whether the export has clock times at all
 */
record LayoutTime(
    List<DateTimeFormatter> time,
    List<DateTimeFormatter> date,
    List<DateTimeFormatter> clock,
    boolean timed) {
  private static final List<DateTimeFormatter> ISO_DATE = List.of(DateTimeFormatter.ISO_LOCAL_DATE);
  private static final List<DateTimeFormatter> ANY_CLOCK =
      List.of(DateTimeFormatter.ofPattern("H:mm[:ss]"));

  /** ISO 8601 in one column. */
  static final LayoutTime ISO = new LayoutTime(List.of(), List.of(), List.of(), true);

  /** The ISO time of a cell that holds date and clock. */
  String ofOne(String text) {
    if (time.isEmpty() || text.isEmpty()) {
      return text;
    }
    return parse(time, text, LayoutTime::moment)
        .orElseGet(() -> BadCell.unreadable(text, "not by the layout's pattern"));
  }

  /**
   * The ISO time of two cells; a date of an export without clock times is the day's first moment.
   *
   * @param stamped a date that a barcode gives, where the cell is blank
   */
  String ofTwo(String dateText, String clockText, Optional<LocalDate> stamped) {
    if (dateText.isEmpty() && stamped.isEmpty()) {
      return clockText.isEmpty() ? "" : BadCell.unreadable(clockText, "no date");
    }
    var day =
        dateText.isEmpty()
            ? stamped
            : parse(date.isEmpty() ? ISO_DATE : date, dateText, LocalDate::from);
    if (day.isEmpty()) {
      String both = (dateText + ' ' + clockText).strip();
      return BadCell.unreadable(both, "the date is not by the pattern");
    }
    if (clockText.isEmpty()) {
      return timed ? BadCell.unreadable(dateText, "no clock time") : firstOf(day.get());
    }
    return parse(clock.isEmpty() ? ANY_CLOCK : clock, clockText, LocalTime::from)
        .map(found -> LocalDateTime.of(day.get(), found).toString())
        .orElseGet(
            () ->
                BadCell.unreadable(day.get() + " " + clockText, "the clock is not by the pattern"));
  }

  /** The first moment of a day. */
  static String firstOf(LocalDate day) {
    return day.atStartOfDay().toString();
  }

  private static String moment(TemporalAccessor parsed) {
    return DateTimeFormatter.ISO_LOCAL_DATE_TIME.format(parsed) + offset(parsed);
  }

  private static String offset(TemporalAccessor parsed) {
    try {
      return ZonedDateTime.from(parsed).getOffset().getId();
    } catch (DateTimeException e) {
      return "";
    }
  }

  private static <T> Optional<T> parse(
      List<DateTimeFormatter> formatters, String text, TemporalQuery<T> query) {
    for (var formatter : formatters) {
      try {
        return Optional.of(formatter.parse(text, query));
      } catch (DateTimeException e) {
        // Another language of the same pattern may fit.
      }
    }
    return Optional.empty();
  }
}
