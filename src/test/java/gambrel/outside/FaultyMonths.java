package gambrel.outside;

import gambrel.scenes.Found;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Rooms of six to eight months with one fault in the last two, and what their months find. */
final class FaultyMonths {
  private static final Map<String, Double> VALUES =
      Map.ofEntries(
          Map.entry("leg", 16.0),
          Map.entry("leg-boneless", 18.0),
          Map.entry("leg-roast", 15.5),
          Map.entry("chump-chop", 20.0),
          Map.entry("loin-chop", 24.0),
          Map.entry("loin-steak", 20.0),
          Map.entry("cutlet", 34.0),
          Map.entry("shoulder", 15.0),
          Map.entry("shoulder-boneless", 17.0),
          Map.entry("shoulder-roast", 15.5),
          Map.entry("shoulder-dice", 16.0),
          Map.entry("neck-chop", 15.0),
          Map.entry("breast-and-flap", 15.0),
          Map.entry("shank", 15.0),
          Map.entry("hock", 15.0),
          Map.entry("belly", 16.0),
          Map.entry("belly-slices", 17.0),
          Map.entry("collar-butt", 16.0),
          Map.entry("collar-butt-steak", 18.0),
          Map.entry("topside-roast", 19.0),
          Map.entry("silverside-roast", 18.0),
          Map.entry("thick-flank-steak", 18.5),
          Map.entry("rump-steak", 28.0),
          Map.entry("striploin-steak", 38.0),
          Map.entry("tenderloin", 52.0),
          Map.entry("cube-roll-steak", 42.0),
          Map.entry("chuck-steak", 17.5),
          Map.entry("chuck-roast", 17.5),
          Map.entry("blade-steak", 17.5),
          Map.entry("brisket", 18.0),
          Map.entry("osso-bucco", 16.0),
          Map.entry("short-ribs", 19.5),
          Map.entry("mince", 14.0),
          Map.entry("sausages", 13.5),
          Map.entry("trim", 9.0),
          Map.entry("bone", 0.2),
          Map.entry("fat", 0.1));

  private FaultyMonths() {}

  /** What came of the rooms of a fault. */
  static final class Tally {
    /** Rooms with the fault. */
    int rooms;

    /** Rooms in which it is named in its first or second month. */
    int named;

    /** Rooms in which the dearest finding of these months names it. */
    int first;

    /** Rooms in which one of these months finds something else. */
    int other;

    /** What else was found, and in how many rows. */
    final Map<String, Integer> others = new TreeMap<>();

    /** Months before the fault, but for each room's first. */
    int soundMonths;

    /** What was found in months before the fault, and in how many rows. */
    final Map<String, Integer> early = new TreeMap<>();

    /** What happened, in words. */
    final List<String> told = new ArrayList<>();
  }

  /** What came of sound rooms. */
  static final class Sound {
    /** Months, but for each room's first. */
    int months;

    /** What was found. */
    final List<String> found = new ArrayList<>();
  }

  /** Rooms with a fault. */
  static Tally of(Fault fault, int rooms, long seed) {
    var tally = new Tally();
    var seeds = new Chance(seed * 1_000_003 + 100 + fault.ordinal());
    while (tally.rooms < rooms) {
      one(fault, new Chance(seeds.seed()), tally);
    }
    return tally;
  }

  /** Rooms without a fault, until there are so many months. */
  static Sound sound(int months, long seed) {
    var sound = new Sound();
    var seeds = new Chance(seed * 1_000_003 + 99);
    while (sound.months < months) {
      var chance = new Chance(seeds.seed());
      int length = chance.whole(6, 8);
      boolean twoLines = chance.happens(0.25);
      var lines = twoLines ? List.of("bench1", "bench3") : List.of("bench1");
      var plan = RoomPlan.ofMonths(chance, length, lines, chance.happens(0.25) ? "rail2" : "rail");
      var room = RoomWork.of(plan, Nature.SOUND, chance);
      values(room, null);
      sound.months += length - 1;
      for (var row : RoomNight.in(room, night -> findings(night.at(room.finished())))) {
        sound.found.add(row.toString());
      }
    }
    return sound;
  }

  /** The findings; a batch beyond the shop's limit, and nothing else, holds the bodies in it. */
  private static List<Map<String, String>> findings(Found found) {
    var held = found.rows("bodies", "state=held");
    if (held.stream().anyMatch(row -> !row.get("reasons").equals("batch-out"))) {
      throw new AssertionError("a body is held: " + held);
    }
    return found.rows("findings");
  }

  private static void one(Fault fault, Chance chance, Tally tally) {
    int length = chance.whole(6, 8);
    var plan = RoomPlan.ofMonths(chance, length, fault.lines(), fault.coldScale());
    var month = YearMonth.from(plan.start()).plusMonths(length - 2);
    var from = month.atDay(1);
    var nature = fault.from(from);
    var room = RoomWork.of(plan, nature, chance);
    values(room, fault == Fault.BELOW_TRIM ? from : null);
    var concerned =
        room.carcases.stream()
            .filter(c -> nature.chill(c) != 0 || nature.hanging(c) != 0)
            .map(Carcase::id)
            .collect(Collectors.toSet());
    var rows =
        RoomNight.in(
            room,
            night ->
                fault == Fault.UNPAID
                    ? unpaid(room, night, month)
                    : Optional.of(findings(night.at(room.finished()))));
    if (rows.isEmpty()) {
      return;
    }
    tally.rooms++;
    tally.soundMonths += length - 3;
    judge(fault, month, concerned, rows.get(), tally);
  }

  private static void judge(
      Fault fault,
      YearMonth month,
      Set<String> concerned,
      List<Map<String, String>> rows,
      Tally tally) {
    boolean named = false;
    boolean first = false;
    var others = new HashSet<String>();
    var told = new ArrayList<String>();
    for (var row : rows) {
      var at = YearMonth.parse(row.get("month"));
      boolean names = fault.isNamedBy(row, concerned);
      if (at.isBefore(month)) {
        tally.early.merge(row.get("finding"), 1, Integer::sum);
      } else if (!at.isAfter(month.plusMonths(1)) && names) {
        named = true;
        first |= row.get("rank").equals("1");
      } else if (!at.isAfter(month.plusMonths(1)) && !isOneOfSeveral(fault, row)) {
        others.add(row.get("finding"));
      }
      if (!at.isBefore(month)) {
        told.add(row.get("month") + ' ' + row.get("finding") + ' ' + row.get("group"));
      }
    }
    tally.named += named ? 1 : 0;
    tally.first += first ? 1 : 0;
    tally.other += others.isEmpty() ? 0 : 1;
    others.forEach(other -> tally.others.merge(other, 1, Integer::sum));
    tally.told.add(fault + (named ? " named " : " not named ") + told);
  }

  /** Whether a row says that one of several scales is off, and it is: true, but not yet named. */
  private static boolean isOneOfSeveral(Fault fault, Map<String, String> row) {
    return row.get("finding").equals("scale")
        && Stream.of(row.get("group").split(";"))
            .anyMatch(one -> fault.isNamedBy(Map.of("finding", "scale", "group", one), Set.of()));
  }

  /**
   * Runs nights in the middle and at the end of each month; all but one customer pay in time. Empty
   * if no statement of that one is owed for more than 30 days in the end: nothing is wrong yet.
   */
  private static Optional<List<Map<String, String>>> unpaid(
      Room room, RoomNight night, YearMonth month) {
    var nights = new ArrayList<LocalDateTime>();
    for (var at = YearMonth.from(room.plan.start());
        !at.isAfter(month.plusMonths(1));
        at = at.plusMonths(1)) {
      nights.add(at.atDay(15).atTime(2, 0));
      nights.add(at.atEndOfMonth().atTime(20, 0));
    }
    var seen = new HashSet<String>();
    var found = night.at(nights.get(0));
    for (var at : nights.subList(1, nights.size())) {
      for (var row : found.rows("statements")) {
        var issued = LocalDate.parse(row.get("issued").substring(0, 10));
        boolean owed = row.get("customer").equals("grant") && !issued.isBefore(month.atDay(1));
        if (seen.add(row.get("customer") + row.get("body")) && !owed) {
          room.payments.add(
              String.join(
                  ",",
                  row.get("customer"),
                  row.get("body"),
                  issued.plusDays(12).toString(),
                  row.get("due")));
        }
      }
      RoomFolder.payments(room, night.shop());
      found = night.at(at);
    }
    var monthAgo = nights.get(nights.size() - 1).toLocalDate().minusDays(30);
    return Optional.of(found)
        .filter(
            last ->
                last.rows("statements", "customer=grant").stream()
                    .map(row -> LocalDate.parse(row.get("issued").substring(0, 10)))
                    .anyMatch(day -> !day.isBefore(month.atDay(1)) && day.isBefore(monthAgo)))
        .map(FaultyMonths::findings);
  }

  private static void values(Room room, LocalDate cheap) {
    VALUES.forEach((item, value) -> room.values.add(item + ',' + value + ",,"));
    String until = cheap == null ? "" : cheap.minusDays(1).toString();
    room.values.add("stewing-dice,17.5,," + until);
    if (cheap != null) {
      room.values.add("stewing-dice,7.5," + cheap + ',');
    }
  }
}
