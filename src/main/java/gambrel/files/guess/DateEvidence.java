package gambrel.files.guess;

import gambrel.files.guess.ExportSample.SampleFile;
import gambrel.files.guess.GuessTable.Row;
import gambrel.files.layout.Layout;
import gambrel.trade.cuts.Region;
import gambrel.trade.shop.IdIndex;
import gambrel.trade.shop.Shop;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.function.Predicate;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What settles which of several readings of dates is right: the day of the run, kill dates, the
 * heads of the files and their names. Where one of these says the contrary of another, nothing
 * does.
 *
 * @param shop its bodies and region
 * @param today the day of the run
 * @param rows the rows of the dates
 * @param bodies the body cell of each row; empty if there is no such column
 * @param files the exports
 */
record DateEvidence(
    Shop shop, LocalDate today, List<Row> rows, List<String> bodies, List<SampleFile> files) {
  private static final long FOREVER = Integer.MAX_VALUE;

  /** No body hangs longer, and no tag is used for longer. */
  private static final int LONGEST_HUNG = 120;

  /** A date in letters that stand for its figures, such as {@code dd/mm/yy}. */
  private static final Pattern IN_LETTERS =
      Pattern.compile(
          "(?iu)(?<!\\p{L})(\\p{L})\\1{1,3}([./-]?)(\\p{L})\\3\\2(\\p{L})\\4{1,3}(?!\\p{L})");

  /** The first letters of day, month and year in several languages, by the letter of a pattern. */
  private static final Map<Integer, String> LETTERS =
      Map.of((int) 'd', "[dtjgpд]", (int) 'M', "[mkм]", (int) 'y', "[yjaåvrг]");

  /**
   * A reading.
   *
   * @param pattern the pattern by which it is read
   * @param moments the moment of each row
   */
  record Reading(String pattern, List<LocalDateTime> moments) {
    /** Whether a date in letters has day, month and year in the order of the pattern. */
    private boolean isAs(String letters) {
      var order = pattern.replaceAll("'[^']*'", "").chars().filter(LETTERS::containsKey).distinct();
      String expression = order.mapToObj(LETTERS::get).collect(Collectors.joining());
      var found = IN_LETTERS.matcher(letters.toLowerCase(Locale.ROOT));
      return found.matches()
          && (found.group(1) + found.group(3) + found.group(4)).matches(expression);
    }

    private LocalDate date(int row) {
      return moments.get(row).toLocalDate();
    }
  }

  /**
   * The readings that are left, and why.
   *
   * @param patterns one, or all that are possible
   * @param why the end of a sentence; empty if one was not settled
   */
  record Settled(List<String> patterns, String why) {}

  /** Settles which reading is right, as far as it can be. */
  Settled settle(List<Reading> readings) {
    if (readings.size() < 2) {
      return new Settled(readings.stream().map(Reading::pattern).toList(), "");
    }
    var tests = new LinkedHashMap<String, Predicate<Reading>>();
    tests.put(
        "read otherwise some rows would be dated after today",
        reading -> fits(reading, row -> Optional.of(today), FOREVER, 1));
    var kills = kills();
    boolean early = readings.stream().anyMatch(r -> !fits(r, kills::get, 0, FOREVER));
    boolean late = readings.stream().anyMatch(r -> !fits(r, kills::get, FOREVER, LONGEST_HUNG));
    tests.put(
        "read otherwise bodies would be weighed "
            + (early ? "before they were killed" : "")
            + (early && late ? ", or " : "")
            + (late ? "more than " + LONGEST_HUNG + " days after they were killed" : ""),
        reading -> fits(reading, kills::get, 0, LONGEST_HUNG));
    var head = inHead();
    tests.put(
        "the head of the export says " + String.join(", ", head),
        reading -> head.stream().anyMatch(reading::isAs));
    tests.put(
        "the names of the files have these dates",
        reading -> fits(reading, row -> date(rows.get(row).file()), 1, 1));
    var left = readings;
    var why = new ArrayList<String>();
    for (var test : tests.entrySet()) {
      var fitting = readings.stream().filter(test.getValue()).toList();
      var both = left.stream().filter(fitting::contains).toList();
      if (both.isEmpty() && !fitting.isEmpty()) {
        // One says the contrary of another, as where the clock of the computer is wrong.
        return new Settled(readings.stream().map(Reading::pattern).toList(), "");
      }
      if (!both.isEmpty() && both.size() < left.size()) {
        left = both;
        why.add(test.getKey());
      }
    }
    var american =
        left.stream()
            .filter(r -> shop.settings().region() == Region.US && r.pattern().matches("M.*a"))
            .toList();
    if (!american.isEmpty() && american.size() < left.size()) {
      left = american;
      why.add("with AM and PM, in the United States");
    }
    return new Settled(
        left.stream().map(Reading::pattern).toList(),
        left.size() > 1 ? "" : String.join("; ", why));
  }

  /** The dates in letters above the first row. */
  private List<String> inHead() {
    return files.stream()
        .filter(file -> file.path().equals(rows.get(0).file()))
        .flatMap(file -> file.lines().stream())
        .takeWhile(line -> line.number() < rows.get(0).csv().line())
        .flatMap(line -> IN_LETTERS.matcher(line.text()).results().map(MatchResult::group))
        .distinct()
        .toList();
  }

  /**
   * Whether no row is earlier or later than a day of its own by more days than are allowed, and
   * some row has such a day.
   */
  private static boolean fits(
      Reading reading, IntFunction<Optional<LocalDate>> dayOf, long before, long after) {
    var later =
        IntStream.range(0, reading.moments().size())
            .boxed()
            .flatMap(
                row ->
                    dayOf
                        .apply(row)
                        .map(day -> ChronoUnit.DAYS.between(day, reading.date(row)))
                        .stream())
            .toList();
    return !later.isEmpty() && later.stream().allMatch(days -> days >= -before && days <= after);
  }

  /** By row the day on which its body was killed, if that is known. */
  private List<Optional<LocalDate>> kills() {
    var byName = new HashMap<String, Optional<LocalDate>>();
    for (var body : shop.bodies().values()) {
      byName.put(body.id(), body.killed());
      body.tags().forEach(tag -> byName.putIfAbsent(tag, body.killed()));
    }
    var index = new IdIndex(byName.keySet());
    return bodies.stream().map(body -> index.find(body).flatMap(byName::get)).toList();
  }

  private static Optional<LocalDate> date(String name) {
    try {
      return Layout.dateIn(name).map(LocalDate::parse);
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }
}
