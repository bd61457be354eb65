package gambrel.files.guess;

import gambrel.files.guess.GuessTable.Row;
import gambrel.files.layout.Layout;
import gambrel.trade.cuts.Region;
import gambrel.trade.shop.IdIndex;
import gambrel.trade.shop.Shop;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * What settles which of several readings of dates is right: the day of the run, kill dates, names
 * of files.
 *
 * @param shop its bodies and region
 * @param today the day of the run
 * @param rows the rows of the dates
 * @param bodies the body cell of each row; empty if there is no such column
 */
record DateEvidence(Shop shop, LocalDate today, List<Row> rows, List<String> bodies) {
  /** No body hangs longer, and no tag is used for longer. */
  private static final int LONGEST_HUNG = 120;

  /**
   * A reading.
   *
   * @param pattern the pattern by which it is read
   * @param moments the moment of each row
   */
  record Reading(String pattern, List<LocalDateTime> moments) {
    private LocalDate date(int row) {
      return moments.get(row).toLocalDate();
    }
  }

  /**
   * The readings that are left, and why.
   *
   * @param patterns one, or all that are possible
   * @param why the end of a sentence; empty if nothing had to be settled
   */
  record Settled(List<String> patterns, String why) {}

  /** Settles which reading is right, as far as it can be. */
  Settled settle(List<Reading> readings) {
    if (readings.size() < 2) {
      return new Settled(readings.stream().map(Reading::pattern).toList(), "");
    }
    var tests = new LinkedHashMap<String, Predicate<Reading>>();
    tests.put("read otherwise some rows would be dated after today", this::isPast);
    tests.put("read otherwise bodies would be weighed before they were killed", this::fitsKills);
    tests.put("the names of the files have these dates", this::fitsNames);
    tests.put(
        "with AM and PM, in the United States",
        r -> shop.settings().region() == Region.US && r.pattern().matches("M.*a"));
    var left = readings;
    for (var test : tests.entrySet()) {
      var fitting = left.stream().filter(test.getValue()).toList();
      if (fitting.size() == 1) {
        return new Settled(List.of(fitting.get(0).pattern()), test.getKey());
      }
      left = fitting.isEmpty() ? left : fitting;
    }
    return new Settled(left.stream().map(Reading::pattern).toList(), "");
  }

  private boolean isPast(Reading reading) {
    return reading.moments().stream().noneMatch(m -> m.toLocalDate().isAfter(today.plusDays(1)));
  }

  /** Whether every row of a body with a kill date is from that day on, and some row is of one. */
  private boolean fitsKills(Reading reading) {
    var kills = kills();
    return !kills.isEmpty()
        && kills.entrySet().stream()
            .allMatch(
                e -> {
                  var date = reading.date(e.getKey());
                  return !date.isBefore(e.getValue())
                      && !date.isAfter(e.getValue().plusDays(LONGEST_HUNG));
                });
  }

  /** The kill dates of bodies that rows name, by row. */
  private Map<Integer, LocalDate> kills() {
    var byName = new HashMap<String, Optional<LocalDate>>();
    for (var body : shop.bodies().values()) {
      byName.put(body.id(), body.killed());
      body.tags().forEach(tag -> byName.putIfAbsent(tag, body.killed()));
    }
    var index = new IdIndex(byName.keySet());
    var kills = new HashMap<Integer, LocalDate>();
    for (int i = 0; i < bodies.size(); i++) {
      int row = i;
      index.find(bodies.get(i)).flatMap(byName::get).ifPresent(day -> kills.put(row, day));
    }
    return kills;
  }

  /** Whether each row is within a day of a date in its file's name, and some name has one. */
  private boolean fitsNames(Reading reading) {
    boolean named = false;
    for (int i = 0; i < rows.size(); i++) {
      long day = reading.date(i).toEpochDay();
      var date = date(rows.get(i).file());
      named |= date.isPresent();
      if (date.filter(d -> Math.abs(d.toEpochDay() - day) > 1).isPresent()) {
        return false;
      }
    }
    return named;
  }

  private static Optional<LocalDate> date(String name) {
    try {
      return Layout.dateIn(name).map(LocalDate::parse);
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }
}
