package gambrel.files.guess;

import gambrel.files.csv.Dates;
import java.text.ParsePosition;
import java.time.DateTimeException;
import java.time.format.DateTimeFormatter;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Finds the pattern of the dates and times in a column. */
final class GuessTimes {
  private static final List<String> DATES =
      List.of(
          ("yyyy-M-d|yyyy/M/d|yyyy.M.d|d/M/yyyy|M/d/yyyy|d.M.yyyy|d-M-yyyy|M-d-yyyy|d/M/yy|M/d/yy"
                  + "|d.M.yy|d-M-yy|M-d-yy|d MMM yyyy|d-MMM-yyyy|d-MMM-yy|MMM d yyyy|yyyyMMdd")
              .split("\\|"));
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
   * @param monthFirst whether a pattern with the month first goes before others that fit as well
   */
  GuessTimes(Locale locale, boolean monthFirst) {
    this.locale = locale;
    this.monthFirst = monthFirst;
  }

  /**
   * A pattern.
   *
   * @param text the pattern; empty for ISO 8601, which needs none
   * @param other a pattern that fits as well and gives other dates, or empty
   */
  record Found(String text, String other) {}

  /** The pattern that fits all values of a column of times, dates or clocks; else empty. */
  Optional<Found> pattern(String field, List<String> values) {
    return switch (field) {
      case "date" -> found(values, DATES);
      case "clock" -> found(values, CLOCKS);
      case "time" ->
          !values.isEmpty() && values.stream().allMatch(v -> ISO.matcher(v).matches())
              ? Optional.of(new Found("", ""))
              : found(values, times());
      default -> Optional.empty();
    };
  }

  private static List<String> times() {
    return DATES.stream()
        .flatMap(date -> BETWEEN.stream().map(between -> date + between))
        .flatMap(start -> CLOCKS.stream().map(clock -> start + clock))
        .toList();
  }

  private Optional<Found> found(List<String> values, List<String> patterns) {
    if (values.isEmpty()) {
      return Optional.empty();
    }
    var fitting = patterns.stream().filter(pattern -> fits(pattern, values)).toList();
    return fitting.stream()
        .filter(pattern -> pattern.startsWith("M") == monthFirst)
        .findFirst()
        .or(() -> fitting.stream().findFirst())
        .map(first -> new Found(first, otherOrder(first, fitting)));
  }

  /** A pattern with day and month the other way round; missing seconds make no other date. */
  private static String otherOrder(String pattern, List<String> fitting) {
    return fitting.stream().filter(p -> p.charAt(0) != pattern.charAt(0)).findFirst().orElse("");
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
    // Most patterns fail here without an exception, which is faster.
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
