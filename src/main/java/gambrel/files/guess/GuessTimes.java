package gambrel.files.guess;

import gambrel.files.csv.Dates;
import gambrel.files.layout.TimePattern;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.temporal.TemporalAccessor;
import java.time.temporal.TemporalQueries;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Finds the patterns of the dates and times in a column. The longest value is taken apart into
 * digits, letters and what stands between them. Every way in which its digits may be a date and a
 * clock time makes a pattern, and those by which all values can be read are returned.
 */
final class GuessTimes {
  private static final Pattern ISO =
      Pattern.compile(
          "\\d{4}-\\d{2}-\\d{2}[T ]\\d{2}:\\d{2}(:\\d{2}([.]\\d{1,9})?)?(Z|[+-]\\d{2}:\\d{2})?");
  private static final Pattern EPOCH = Pattern.compile("1\\d{9}([.]\\d{1,9})?|1\\d{12}");

  /** Days since 1900 from 2009 on, with decimals: no other number of that size has so many. */
  private static final Pattern DAYS = Pattern.compile("[45]\\d{4}[.,]\\d{4,}");

  private static final Pattern PART = Pattern.compile("\\d+|[\\p{L}\\p{M}]+|[^\\p{L}\\p{M}\\d]+");
  private static final Pattern OFFSET = Pattern.compile("(?<=\\d)(\\h?)(Z|[+-]\\d{2}(:?)\\d{2})$");
  private static final Pattern BEFORE_DIGITS = Pattern.compile("(\\D*)\\d+");
  private static final String HALF_DAY = "(?i)[ap]m";

  /** The parts of dates in the orders in which they stand; {@code N} is a month by its name. */
  private static final List<String> DATES = List.of("yMd", "dMy", "Mdy", "dNy", "Ndy", "yNd", "c");

  private static final List<String> CLOCKS = List.of("Hms", "Hm", "HmsS", "k");

  /** Patterns of dates, of clocks, and of both, whose parts have no mark between them. */
  private static final Map<Character, List<String>> COMPACT =
      Map.of(
          'c',
          List.of(
              "yyyyMMdd", "ddMMyyyy", "MMddyyyy", "yyMMdd", "ddMMyy", "MMddyy", "yyyyDDD", "yyDDD"),
          'k',
          List.of("HHmmss", "HHmm", "Hmmss", "Hmm"),
          'b',
          List.of(
              "yyyyMMddHHmmss", "yyyyMMddHHmm", "ddMMyyyyHHmmss", "yyMMddHHmmss", "yyMMddHHmm"));

  private final Locale locale;
  private final Map<String, TimePattern> read = new HashMap<>();

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
    if (field.equals("time")) {
      var whole = Map.of("", ISO, "epoch", EPOCH, "days", DAYS);
      var word =
          whole.keySet().stream()
              .filter(w -> values.stream().allMatch(v -> whole.get(w).matcher(v).matches()))
              .findFirst();
      if (word.isPresent()) {
        return List.of(word.get());
      }
    }
    String longest =
        values.stream()
            .map(Dates::withHalfDays)
            .max(Comparator.comparing(String::length))
            .orElseThrow();
    var byReading = new LinkedHashMap<List<LocalDateTime>, String>();
    new Value(longest)
        .patterns(field)
        .forEach(
            pattern ->
                readings(pattern, values).ifPresent(read -> byReading.putIfAbsent(read, pattern)));
    return List.copyOf(byReading.values());
  }

  /**
   * The moments that values mean by a pattern; a date is its first, a clock one of 1970. Empty if
   * one of the values is not by the pattern.
   */
  Optional<List<LocalDateTime>> readings(String pattern, List<String> values) {
    var type = read.computeIfAbsent(pattern, p -> TimePattern.of(p, locale));
    var moments = new ArrayList<LocalDateTime>();
    for (String value : values) {
      var moment = type.read(value, GuessTimes::moment);
      if (moment.isEmpty()) {
        return Optional.empty();
      }
      moments.add(moment.get());
    }
    return Optional.of(moments);
  }

  private static LocalDateTime moment(TemporalAccessor parsed) {
    return LocalDateTime.of(
        Objects.requireNonNullElse(parsed.query(TemporalQueries.localDate()), LocalDate.EPOCH),
        Objects.requireNonNullElse(parsed.query(TemporalQueries.localTime()), LocalTime.MIN));
  }

  /** A value taken apart. */
  private static final class Value {
    private final List<String> parts;
    private final String offset;

    /** What stands before each run of digits. */
    private final List<String> marks;

    private final boolean halfDay;

    Value(String text) {
      var end = OFFSET.matcher(text);
      boolean hasOffset = text.indexOf(':') >= 0 && end.find();
      String zone = hasOffset && end.group(3) != null && end.group(3).isEmpty() ? "XX" : "XXX";
      this.offset = hasOffset ? end.group(1) + zone : "";
      String rest = hasOffset ? text.substring(0, end.start()) : text;
      this.parts = PART.matcher(rest).results().map(MatchResult::group).toList();
      this.marks = BEFORE_DIGITS.matcher(rest).results().map(mark -> mark.group(1)).toList();
      this.halfDay = parts.stream().anyMatch(part -> part.matches(HALF_DAY));
    }

    private static boolean isDigits(String part) {
      return Character.isDigit(part.charAt(0));
    }

    /** All patterns that may fit, the more usual first. */
    Stream<String> patterns(String field) {
      var orders =
          switch (field) {
            case "date" -> DATES.stream();
            case "clock" -> CLOCKS.stream();
            default ->
                Stream.concat(
                    Stream.of("b"),
                    DATES.stream()
                        .flatMap(
                            date ->
                                CLOCKS.stream()
                                    .flatMap(clock -> Stream.of(date + clock, clock + date))));
          };
      return orders
          .filter(this::isMarked)
          .flatMap(order -> written(order, 0, 0, ""))
          .map(pattern -> pattern + offset)
          .flatMap(
              pattern ->
                  pattern.endsWith(":mm:ss")
                      ? Stream.of(pattern, pattern.replace(":mm:ss", ":mm[:ss]"))
                      : Stream.of(pattern));
    }

    /**
     * The patterns of the parts from {@code at} on.
     *
     * @param order the meaning of the digits, and of the name of a month, in order
     * @param next the index of the next meaning
     * @param before the pattern of the parts so far
     */
    private Stream<String> written(String order, int at, int next, String before) {
      if (at == parts.size()) {
        return next == order.length() ? Stream.of(before) : Stream.of();
      }
      String part = parts.get(at);
      if (isDigits(part)) {
        return next < order.length()
            ? letters(order.charAt(next), part)
                .flatMap(as -> written(order, at + 1, next + 1, before + as))
            : Stream.of();
      }
      if (part.matches(HALF_DAY)) {
        return written(order, at + 1, next, before + 'a');
      }
      var names = Stream.<String>of();
      boolean named = Character.isLetter(part.charAt(0)) && part.length() > 2;
      if (named && next < order.length() && order.charAt(next) == 'N') {
        names = Stream.of("MMM", "MMMM").flatMap(as -> name(order, at, next + 1, before + as));
      } else if (named && order.matches(".*[dMN].*")) {
        names = Stream.of("EEE", "EEEE").flatMap(as -> name(order, at, next, before + as));
      }
      return Stream.concat(names, written(order, at + 1, next, before + literal(part)));
    }

    /** A name, after which a point may belong to it. */
    private Stream<String> name(String order, int at, int next, String before) {
      var plain = written(order, at + 1, next, before);
      boolean point = at + 1 < parts.size() && parts.get(at + 1).startsWith(".");
      String rest = point ? parts.get(at + 1).substring(1) : "";
      return point
          ? Stream.concat(plain, written(order, at + 2, next, before + literal(rest)))
          : plain;
    }

    /**
     * Whether the marks between the digits go with an order: a clock has no blanks in it, the marks
     * of a date in figures are alike, and a clock that stands first is set off by a blank or word.
     */
    private boolean isMarked(String order) {
      String meanings = order.replace("N", "");
      if (meanings.length() != marks.size()) {
        return false;
      }
      boolean named = order.length() > meanings.length();
      for (int i = 1; i < meanings.length(); i++) {
        boolean clock = isOfClock(meanings.charAt(i));
        String mark = marks.get(i);
        if (clock != isOfClock(meanings.charAt(i - 1))) {
          if (!clock && !mark.matches(".*[\\h\\p{L}].*")) {
            return false;
          }
        } else if (clock
            ? !isOfClock(mark, meanings.indexOf('s') < 0)
            : i > 1
                && !named
                && !isOfClock(meanings.charAt(i - 2))
                && isUnlike(mark, marks.get(i - 1))) {
          return false;
        }
      }
      return true;
    }

    /** Whether two marks between the parts of a date are not the same, and no words either. */
    private static boolean isUnlike(String mark, String other) {
      boolean danish = other.equals("/") && mark.equals("-");
      return !mark.equals(other) && !danish && !mark.matches(".*\\p{L}.*");
    }

    /** Whether a mark may stand in a clock; one without seconds has no other marks than these. */
    private static boolean isOfClock(String mark, boolean withoutSeconds) {
      return !mark.isBlank()
          && (mark.matches(".*[:.\\p{L}].*") || !withoutSeconds && !mark.isEmpty());
    }

    private static boolean isOfClock(char meaning) {
      return "HmsSk".indexOf(meaning) >= 0;
    }

    /** The letters by which digits are read; none if they have too many or too few. */
    private Stream<String> letters(char meaning, String part) {
      int length = part.length();
      return switch (meaning) {
        case 'y' -> length == 4 || length == 2 ? Stream.of("y".repeat(length)) : Stream.of();
        case 'M', 'd' -> length < 3 ? Stream.of("" + meaning) : Stream.of();
        case 'H' -> length < 3 ? Stream.of(halfDay ? "h" : "H") : Stream.of();
        case 'm', 's' -> length == 2 ? Stream.of(("" + meaning).repeat(2)) : Stream.of();
        case 'S' -> length < 10 ? Stream.of("S".repeat(length)) : Stream.of();
        case 'N' -> Stream.of();
        default ->
            COMPACT.get(meaning).stream()
                .filter(
                    p -> p.length() == length || p.startsWith("Hm") && p.length() == length - 1);
      };
    }

    private static String literal(String part) {
      return part.isEmpty() || part.matches("[\\h.,:/+-]+")
          ? part
          : '\'' + part.replace("'", "''") + '\'';
    }
  }
}
