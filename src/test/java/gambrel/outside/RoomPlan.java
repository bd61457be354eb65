package gambrel.outside;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What kind of room a room is.
 *
 * @param start a Monday
 * @param weeks in which there is a kill
 * @param killDays of a week
 * @param fewest bodies of a species on a day of kill
 * @param most bodies of a species on a day of kill
 * @param pounds whether the shop works in pounds
 * @param tares whether its scales write gross and tare
 * @param lugs whether the office wrote down what a lug weighs
 * @param hotOnly whether the rail has no cold weight
 * @param aged whether cattle are weighed again before they are cut
 * @param sides whether pigs hang as sides
 * @param alike whether all bodies of a species are cut alike
 * @param coarse how many small packs go on the scale at once
 * @param chillers where bodies hang
 * @param boners who bones; empty if the shop does not write it down
 * @param suppliers who sells bodies to the shop
 * @param own the share of own bodies
 * @param lines packing scales, each of which takes whole bodies; one: bins have their own scale
 * @param coldScale the scale of the cold weight
 * @param scales all scales
 */
record RoomPlan(
    LocalDate start,
    int weeks,
    List<DayOfWeek> killDays,
    Map<Species, Integer> fewest,
    Map<Species, Integer> most,
    boolean pounds,
    boolean tares,
    boolean lugs,
    boolean hotOnly,
    boolean aged,
    boolean sides,
    boolean alike,
    int coarse,
    List<String> chillers,
    List<String> boners,
    List<String> suppliers,
    double own,
    List<String> lines,
    String coldScale,
    Map<String, Scale> scales) {

  /** A room as small as many are, for some weeks; no two are alike. */
  static RoomPlan drawn(Chance chance, boolean hotOnly) {
    boolean pounds = chance.happens(0.15);
    var fewest = new TreeMap<Species, Integer>();
    var most = new TreeMap<Species, Integer>();
    fewest.put(Species.LAMB, chance.whole(2, 4));
    most.put(Species.LAMB, fewest.get(Species.LAMB) + chance.whole(1, 4));
    fewest.put(Species.PORK, chance.whole(0, 2));
    most.put(Species.PORK, fewest.get(Species.PORK) + chance.whole(0, 2));
    fewest.put(Species.GOAT, 0);
    most.put(Species.GOAT, !hotOnly && chance.happens(0.3) ? 2 : 0);
    fewest.put(Species.BEEF, chance.whole(0, 1));
    most.put(Species.BEEF, fewest.get(Species.BEEF) + 1);
    var days =
        chance.happens(0.6)
            ? List.of(DayOfWeek.MONDAY, DayOfWeek.WEDNESDAY)
            : List.of(DayOfWeek.TUESDAY);
    return new RoomPlan(
        LocalDate.of(2026, chance.whole(1, 9), 1)
            .with(TemporalAdjusters.nextOrSame(DayOfWeek.MONDAY)),
        days.size() == 1 ? chance.whole(6, 9) : chance.whole(3, 5),
        days,
        fewest,
        most,
        pounds,
        chance.happens(0.3),
        chance.happens(0.7),
        hotOnly,
        chance.happens(0.4),
        chance.happens(0.6),
        false,
        1,
        List.of(),
        List.of(),
        List.of(),
        0.15,
        List.of("bench1"),
        "rail",
        scales(
            chance, pounds, List.of("rail", "bench1", "bench2"), chance.happens(0.7) ? "III" : ""));
  }

  /** A room that kills twice a week for some months, about 45 bodies a month. */
  static RoomPlan ofMonths(Chance chance, int months, List<String> lines, String coldScale) {
    var start =
        LocalDate.of(2026, chance.whole(1, 4), 1)
            .with(TemporalAdjusters.nextOrSame(DayOfWeek.MONDAY));
    var end = start.withDayOfMonth(1).plusMonths(months);
    var names = new ArrayList<>(List.of("rail", "bench2"));
    names.addAll(lines);
    if (!names.contains(coldScale)) {
      names.add(coldScale);
    }
    return new RoomPlan(
        start,
        (int) ((end.toEpochDay() - start.toEpochDay()) / 7),
        List.of(DayOfWeek.MONDAY, DayOfWeek.WEDNESDAY),
        new TreeMap<>(Map.of(Species.LAMB, 2, Species.BEEF, 1, Species.PORK, 0)),
        new TreeMap<>(Map.of(Species.LAMB, 4, Species.BEEF, 2, Species.PORK, 2)),
        false,
        false,
        false,
        false,
        true,
        false,
        true,
        4,
        List.of("K1", "K2"),
        List.of("Ana", "Ben", "Col"),
        List.of("Hill Farm", "Lower Farm", "Mill Farm"),
        0.4,
        lines,
        coldScale,
        scales(chance, false, names, "III"));
  }

  private static Map<String, Scale> scales(
      Chance chance, boolean pounds, List<String> names, String accuracy) {
    var scales = new TreeMap<String, Scale>();
    boolean finely = chance.happens(0.5);
    for (var name : names) {
      boolean rail = name.startsWith("rail");
      boolean packs = name.equals("bench1") && !names.contains("bench3");
      long division =
          pounds ? (rail ? 200 : packs ? 10 : 50) : rail ? (finely ? 50 : 100) : packs ? 5 : 20;
      long capacity = rail ? 600_000 : packs ? 15_000 : 60_000;
      scales.put(name, new Scale(name, division, pounds ? capacity * 2 : capacity, accuracy));
    }
    return scales;
  }

  /** The scale for tubs and bins of a body that is packed on a line. */
  String binScale(String line) {
    return lines.size() > 1 ? line : "bench2";
  }

  /** Thousandths of the shop's unit in a gram. */
  double inUnit(double grams) {
    return pounds ? grams / 0.45359237 : grams;
  }
}
