package gambrel.files.guess;

import gambrel.files.csv.Dates;
import java.text.ParsePosition;
import java.time.DateTimeException;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Finds the pattern by which the dates and times of a column are written. */
final class GuessTimes {
  private static final List<String> DATES =
      List.of(
          "yyyy-M-d",
          "yyyy/M/d",
          "yyyy.M.d",
          "d/M/yyyy",
          "M/d/yyyy",
          "d.M.yyyy",
          "d-M-yyyy",
          "M-d-yyyy",
          "d/M/yy",
          "M/d/yy",
          "d.M.yy",
          "d-M-yy",
          "M-d-yy",
          "d MMM yyyy",
          "d-MMM-yyyy",
          "d-MMM-yy",
          "MMM d yyyy",
          "yyyyMMdd");
  private static final List<String> CLOCKS =
      List.of("H:mm:ss", "H:mm", "H:mm[:ss]", "h:mm:ss a", "h:mm a", "HHmmss", "HHmm");
  private static final List<String> BETWEEN = List.of(" ", "'T'", ", ", "");
  private static final Pattern ISO = Pattern.compile("\\d{4}-\\d{2}-\\d{2}[T ]\\d{2}:\\d{2}.*");

  private final Locale locale;
  private final boolean monthFirst;
  private final Map<String, List<DateTimeFormatter>> formatters = new HashMap<>();

  /**
   * Guesses for a shop.
   *
   * @param monthFirst which of two equally good patterns is meant
   */
  GuessTimes(Locale locale, boolean monthFirst) {
    this.locale = locale;
    this.monthFirst = monthFirst;
  }

  /**
   * A pattern.
   *
   * @param text of the pattern; empty for ISO 8601, which needs none
   * @param other another one that fits as well, or empty
   */
  record Found(String text, String other) {}

  /** The pattern of dates that fits all values. */
  Optional<Found> date(List<String> values) {
    return found(values, DATES);
  }

  /** The pattern of clock times that fits all values. */
  Optional<Found> clock(List<String> values) {
    return found(values, CLOCKS);
  }

  /** The pattern of date and time that fits all values. */
  Optional<Found> time(List<String> values) {
    if (!values.isEmpty() && values.stream().allMatch(v -> ISO.matcher(v).matches())) {
      return Optional.of(new Found("", ""));
    }
    var patterns = new ArrayList<String>();
    for (String date : DATES) {
      for (String between : BETWEEN) {
        CLOCKS.forEach(clock -> patterns.add(date + between + clock));
      }
    }
    return found(values, patterns);
  }

  private Optional<Found> found(List<String> values, List<String> patterns) {
    if (values.isEmpty()) {
      return Optional.empty();
    }
    var fitting = patterns.stream().filter(pattern -> fits(pattern, values)).toList();
    if (fitting.isEmpty()) {
      return Optional.empty();
    }
    String first =
        fitting.stream()
            .filter(pattern -> pattern.startsWith("M") == monthFirst)
            .findFirst()
            .orElse(fitting.get(0));
    String other = fitting.stream().filter(p -> isOtherOrder(p, first)).findFirst().orElse("");
    return Optional.of(new Found(first, other));
  }

  /** Days and months that change places make another date; seconds that may be missing do not. */
  private static boolean isOtherOrder(String pattern, String chosen) {
    return !pattern.equals(chosen) && pattern.charAt(0) != chosen.charAt(0);
  }

  private boolean fits(String pattern, List<String> values) {
    return formatters(pattern).stream()
        .anyMatch(formatter -> values.stream().allMatch(value -> parses(formatter, value)));
  }

  private List<DateTimeFormatter> formatters(String pattern) {
    return formatters.computeIfAbsent(
        pattern, p -> List.of(Dates.formatter(p, locale), Dates.formatter(p, Locale.ENGLISH)));
  }

  private static boolean parses(DateTimeFormatter formatter, String value) {
    var end = new ParsePosition(0);
    // The form is looked at first, since most patterns fail by it and without an exception.
    if (formatter.parseUnresolved(value, end) == null || end.getIndex() < value.length()) {
      return false;
    }
    try {
      formatter.parse(value);
      return true;
    } catch (DateTimeException e) {
      return false;
    }
  }
}
