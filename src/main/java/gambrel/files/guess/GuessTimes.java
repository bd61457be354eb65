package gambrel.files.guess;

import gambrel.files.csv.Dates;
import java.text.ParsePosition;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAccessor;
import java.time.temporal.TemporalQueries;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Finds the patterns of the dates and times in a column. */
final class GuessTimes {
  private static final List<String> DATES =
      Stream.of("", "EEE ", "EEE, ", "EEEE ", "EEEE, ")
          .flatMap(
              day ->
                  Stream.of(
                          ("yyyy-M-d|yyyy/M/d|yyyy.M.d|yyyy.M.d.|d.M.yyyy.|d/M/yyyy|M/d/yyyy|d.M.yyyy|M.d.yyyy"
                                  + "|d-M-yyyy|M-d-yyyy|d M yyyy|d/M/yy|M/d/yy|yy/M/d|d.M.yy|yy.M.d"
                                  + "|d-M-yy|M-d-yy|yy-M-d|d MMM yyyy|d-MMM-yyyy|d/MMM/yyyy|d.MMM.yyyy"
                                  + "|dMMMyyyy|d-MMM-yy|d MMM yy|dMMMyy|d. MMM yyyy|d MMMM yyyy"
                                  + "|d. MMMM yyyy|MMM d yyyy|MMM d, yyyy|MMMM d, yyyy|MMM-d-yyyy"
                                  + "|yyyy-MMM-d|yyyyMMdd|ddMMyyyy|MMddyyyy|yyMMdd|ddMMyy|MMddyy")
                              .split("\\|"))
                      .map(date -> day + date))
          .toList();

  /** Dates that a clock follows without any mark between them. */
  private static final List<String> COMPACT =
      List.of("yyyyMMddHHmmss", "yyyyMMddHHmm", "ddMMyyyyHHmmss", "yyMMddHHmmss", "yyMMddHHmm");

  private static final List<String> CLOCKS =
      List.of(
          ("H:mm:ss|H:mm|H:mm[:ss]|h:mm:ss a|h:mm a|h:mm:ssa|h:mma|H:mm:ss.SSS|H:mm:ss,SSS|H:mm:ss.SS"
                  + "|H:mm:ss.S|H:mm:ss.SSSSSS|H:mm:ssXXX|H:mm:ss XXX|H:mm:ssXX|H:mmXXX|H:mm:ss.SSSXXX"
                  + "|H.mm.ss|H.mm|H-mm-ss|H'h'mm|H'h'mm'm'ss|HHmmss|HHmm|h.mm a|h.mm.ss a")
              .split("\\|"));

  private static final Pattern ISO =
      Pattern.compile(
          "\\d{4}-\\d{2}-\\d{2}[T ]\\d{2}:\\d{2}(:\\d{2}([.]\\d{1,9})?)?(Z|[+-]\\d{2}:\\d{2})?");
  private static final Pattern EPOCH = Pattern.compile("1\\d{9}([.]\\d{1,9})?|1\\d{12}");

  /** What stands between a date and a clock. */
  private static final Pattern BETWEEN = Pattern.compile("[^\\p{L}\\d]*T?[^\\p{L}\\d]*");

  private final Locale locale;
  private final Map<String, List<DateTimeFormatter>> formatters = new HashMap<>();

  /** Guesses for a shop of this locale. */
  GuessTimes(Locale locale) {
    this.locale = locale;
  }

  /**
   * The patterns by which all values of a column of times, dates or clocks can be read, each with a
   * reading of its own; without any if there is none. The empty pattern is ISO 8601, which needs
   * none.
   */
  List<String> patterns(String field, List<String> values) {
    if (values.isEmpty()) {
      return List.of();
    }
    if (field.equals("time") && values.stream().allMatch(v -> ISO.matcher(v).matches())) {
      return List.of("");
    }
    if (field.equals("time") && values.stream().allMatch(v -> EPOCH.matcher(v).matches())) {
      return List.of("epoch");
    }
    var plain = values.stream().map(Dates::withHalfDays).toList();
    var candidates =
        switch (field) {
          case "date" -> DATES.stream();
          case "clock" -> CLOCKS.stream();
          default -> times(plain.get(0));
        };
    var byReading = new LinkedHashMap<List<LocalDateTime>, String>();
    candidates.forEach(
        pattern ->
            readings(pattern, values).ifPresent(read -> byReading.putIfAbsent(read, pattern)));
    return List.copyOf(byReading.values());
  }

  /** The patterns that may fit a date with a clock after it. */
  private Stream<String> times(String value) {
    var patterns = new ArrayList<>(COMPACT);
    for (String date : DATES) {
      int end = formatters(date).stream().mapToInt(f -> beginning(f, value)).max().orElse(0);
      var between = BETWEEN.matcher(value).region(end, value.length());
      if (end > 0 && between.lookingAt() && between.end() < value.length()) {
        String mark = between.group();
        String quoted = mark.isBlank() ? mark : '\'' + mark.replace("'", "''") + '\'';
        CLOCKS.forEach(clock -> patterns.add(date + quoted + clock));
      }
    }
    return patterns.stream();
  }

  /** How many characters of a value a formatter reads; 0 if it does not begin so. */
  private static int beginning(DateTimeFormatter formatter, String value) {
    var end = new ParsePosition(0);
    return formatter.parseUnresolved(value, end) == null ? 0 : end.getIndex();
  }

  /**
   * The moments that values mean by a pattern; a date is its first, a clock one of 1970. Empty if
   * one of the values is not by the pattern.
   */
  Optional<List<LocalDateTime>> readings(String pattern, List<String> values) {
    return formatters(pattern).stream()
        .map(
            formatter ->
                values.stream()
                    .map(value -> read(formatter, Dates.withHalfDays(value)))
                    .takeWhile(Optional::isPresent)
                    .flatMap(Optional::stream)
                    .toList())
        .filter(read -> read.size() == values.size())
        .findFirst();
  }

  private List<DateTimeFormatter> formatters(String pattern) {
    return formatters.computeIfAbsent(pattern, p -> Dates.formatters(p, locale));
  }

  private static Optional<LocalDateTime> read(DateTimeFormatter formatter, String value) {
    // Most patterns fail here without an exception, which is faster.
    if (beginning(formatter, value) < value.length()) {
      return Optional.empty();
    }
    try {
      TemporalAccessor parsed = formatter.parse(value);
      var date = parsed.query(TemporalQueries.localDate());
      var time = parsed.query(TemporalQueries.localTime());
      return Optional.of(
          LocalDateTime.of(
              Objects.requireNonNullElse(date, LocalDate.EPOCH),
              Objects.requireNonNullElse(time, LocalTime.MIN)));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }
}
