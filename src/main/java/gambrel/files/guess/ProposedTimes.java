package gambrel.files.guess;

import gambrel.files.guess.GuessTable.Column;
import gambrel.trade.shop.Shop;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;

/** Proposes how dates and clock times are read; asks where two readings are possible. */
final class ProposedTimes {
  /** The fields of times. */
  static final List<String> FIELDS = List.of("time", "date", "clock");

  private static final int NOON = 12;

  /** By so many years the Thai calendar is ahead. */
  private static final int THAI_YEARS = 543;

  /** A clock of twelve hours goes back by more minutes than this after a break at noon. */
  private static final int LEAST_BACK = 480;

  private final LayoutDraft draft;
  private final GuessTimes times;
  private final Shop shop;
  private final LocalDate today;

  /** The settled pattern by field. */
  private final Map<String, String> patterns = new HashMap<>();

  ProposedTimes(LayoutDraft draft, GuessTimes times, Shop shop, LocalDate today) {
    this.draft = draft;
    this.times = times;
    this.shop = shop;
    this.today = today;
  }

  /** Whether a column may have hours and minutes in bare digits, and only rises within a day. */
  boolean isClock(Column column) {
    var values = column.values();
    return values.stream().allMatch(value -> value.matches("\\d{3,6}"))
        && values.stream().distinct().count() * GuessNumbers.SOME > draft.table().rows().size()
        && (isWithinDays(column, (clock, next) -> !next.isBefore(clock))
            || values.size() > 2 && isWithinDays(column, (clock, next) -> !next.isAfter(clock)));
  }

  /** Whether a clock goes on from one hour to another one within a day. */
  boolean goesByHours(Column column) {
    return !isWithinDays(column, (clock, next) -> clock.getHour() == next.getHour());
  }

  /** Whether a column has clock times, and each two of a day that follow one another compare so. */
  private boolean isWithinDays(
      Column column, BiPredicate<LocalDateTime, LocalDateTime> comparison) {
    var rows = filled(column);
    return times.patterns("clock", column.values()).stream()
        .flatMap(pattern -> times.readings(pattern, column.values()).stream())
        .anyMatch(
            clocks ->
                IntStream.range(1, rows.size())
                    .filter(i -> draft.day(rows.get(i)).equals(draft.day(rows.get(i - 1))))
                    .allMatch(i -> comparison.test(clocks.get(i - 1), clocks.get(i))));
  }

  /** The rows in which a column is not blank. */
  private static List<Integer> filled(Column column) {
    return IntStream.range(0, column.cells().size())
        .filter(i -> !column.cells().get(i).isEmpty())
        .boxed()
        .toList();
  }

  private boolean isAbove() {
    return draft.has("date") && !draft.column("date").above().isEmpty();
  }

  /** Asks whether a date above the rows is theirs, unless it is called a date. */
  void askDayAbove() {
    if (isAbove()
        && !draft.isWithheld("date")
        && !draft.column("date").isName()
        && GuessWords.score("date", draft.column("date").header()) == 0) {
      var date = draft.column("date");
      draft.leaveOut("date");
      var lines = new ArrayList<>(List.of(date.line("date")));
      lines.addAll(line("date", date));
      draft.ask(
          "The rows have no date. Is it the one that stands above them, as "
              + date.values().get(0)
              + "?",
          List.of(lines));
    }
  }

  /** Finds the pattern of each column of times; asks where two readings are possible. */
  void settle() {
    FIELDS.stream().filter(draft::has).forEach(this::settle);
  }

  private void settle(String field) {
    var column = draft.column(field);
    var candidates = times.patterns(field, column.values());
    var filled = filled(column);
    var bodies = draft.cells("body");
    var evidence =
        new DateEvidence(
            shop,
            today,
            filled.stream().map(draft.table().rows()::get).toList(),
            filled.stream().map(i -> bodies.isEmpty() ? "" : bodies.get(i)).toList(),
            draft.sample().files());
    var readings =
        candidates.stream()
            .filter(pattern -> !pattern.isEmpty() && !pattern.equals("epoch"))
            .map(pattern -> new DateEvidence.Reading(pattern, moments(pattern, column)))
            .toList();
    var settled =
        readings.isEmpty() ? new DateEvidence.Settled(candidates, "") : evidence.settle(readings);
    if (readings.stream()
        .anyMatch(r -> isThai(times.readings(r.pattern(), column.values()).get()))) {
      draft.setting("Its years are those of the Thai calendar.", "calendar=thai");
    }
    if (settled.patterns().size() == 1) {
      String pattern = settled.patterns().get(0);
      patterns.put(field, pattern);
      if (!settled.why().isEmpty()) {
        draft.tell("Its %s is read as %s: %s.".formatted(field, pattern, settled.why()));
      }
    } else {
      draft.ask(
          field.equals("clock")
              ? "How is " + column.name() + " to be read?"
              : "Which is the day and which the month in " + column.name() + '?',
          settled.patterns().stream().map(p -> List.of(field + '=' + p)).toList());
    }
  }

  private List<LocalDateTime> moments(String pattern, Column column) {
    var moments = times.readings(pattern, column.values()).orElseThrow();
    return isThai(moments)
        ? moments.stream().map(moment -> moment.minusYears(THAI_YEARS)).toList()
        : moments;
  }

  /** Whether all dates lie so far ahead that their years are of the Thai calendar. */
  private boolean isThai(List<LocalDateTime> moments) {
    int year = today.getYear() + THAI_YEARS;
    return moments.stream().allMatch(m -> m.getYear() > year - 10 && m.getYear() <= year);
  }

  /** The line with the settled pattern of a field; empty if it needs none. */
  Optional<String> line(String field) {
    boolean iso = draft.has(field) && draft.column(field).isName() && isIso(field);
    return Optional.ofNullable(patterns.get(field))
        .filter(pattern -> !pattern.isEmpty() && !iso)
        .map(pattern -> field + '=' + pattern);
  }

  /** Whether dates are year, month and day, which the name of a file may give without a pattern. */
  private boolean isIso(String field) {
    return patterns.getOrDefault(field, "").matches("yyyy\\W?MM?\\W?dd?");
  }

  /** The line with which a column could be read as a field of times, if it needs one. */
  List<String> line(String field, Column column) {
    if (!FIELDS.contains(field)) {
      return List.of();
    }
    String settled = patterns.getOrDefault(field, "");
    var candidates = times.patterns(field, column.values());
    boolean same =
        !settled.isEmpty() && times.readings(settled, column.values()).isPresent()
            || candidates.contains(settled);
    String pattern = same ? settled : candidates.stream().findFirst().orElse("");
    return pattern.isEmpty() ? List.of() : List.of(field + '=' + pattern);
  }

  /**
   * Keeps out a clock of twelve hours without AM or PM in its cells: it goes back after noon, or
   * another column says PM.
   */
  void askHalfDays() {
    String field = draft.has("clock") ? "clock" : "time";
    String pattern = patterns.getOrDefault(field, "");
    if (!pattern.contains("H") || draft.isWithheld(field)) {
      return;
    }
    var column = draft.column(field);
    var moments = moments(pattern, column);
    var dates = draft.cells("date");
    var back =
        IntStream.range(1, moments.size())
            .filter(i -> dates.isEmpty() || dates.get(i).equals(dates.get(i - 1)))
            .mapToObj(i -> ChronoUnit.MINUTES.between(moments.get(i), moments.get(i - 1)))
            .toList();
    // Where the newest row is first, most go back.
    int way = back.stream().filter(minutes -> minutes > 0).count() * 2 > back.size() ? -1 : 1;
    boolean afternoon =
        draft.unused().stream()
            .flatMap(other -> other.values().stream())
            .anyMatch(value -> value.matches("(?i)p\\.?\\h?m\\.?"));
    boolean twelve =
        moments.size() == column.cells().size()
            && moments.stream().allMatch(m -> m.getHour() >= 1 && m.getHour() <= NOON)
            && (afternoon
                || back.stream().anyMatch(m -> m * way > LEAST_BACK && m * way < NOON * 60L));
    if (twelve) {
      draft.withhold(field);
      line(field).ifPresent(draft::add);
      draft.ask(
          column.name()
              + " seems to count twelve hours without AM or PM beside them: set the scale to 24"
              + " hours. If it is right as it stands:",
          List.of(List.of(column.line(field))));
    }
  }
}
