package gambrel.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Quarters of cattle, weighed on their way to the block. They are heavier than a bench carries, so
 * the rail weighs them; from one to the next is what the boner takes.
 */
final class Blocks {
  private static final String HINDQUARTER = "201";
  private static final String FOREQUARTER = "204";

  private final Floor floor;
  private final Map<String, List<Quarter>> waiting = new HashMap<>();

  Blocks(Floor floor) {
    this.floor = floor;
  }

  private record Quarter(String code, long grams) {}

  /** A body comes off the rail; what is on no block is left to others. */
  void comes(Beast beast, long weight) {
    if (!beast.species().equals("beef") || beast.is("block")) {
      return;
    }
    var dice = new Dice("quarters" + beast.id());
    var quarters = new ArrayList<Quarter>();
    long hind = weight * dice.around(475, 490) / 1000;
    Packs.split(hind, 2, dice).forEach(g -> quarters.add(new Quarter(HINDQUARTER, g)));
    Packs.split(weight - hind, 2, dice).forEach(g -> quarters.add(new Quarter(FOREQUARTER, g)));
    waiting.put(beast.id(), quarters);
  }

  /** The quarters that a day takes: all of them, or the hindquarters where it goes on later. */
  void weigh(Beast beast, LocalDate day) {
    var quarters = waiting.getOrDefault(beast.id(), new ArrayList<>());
    boolean halves = beast.cut().size() > 1 || beast.is("partcut");
    var part = quarters.subList(0, halves ? quarters.size() / 2 : quarters.size());
    var today = List.copyOf(part);
    part.clear();
    var dice = new Dice("block" + beast.id() + day);
    for (var quarter : today) {
      var time = floor.block(day).after(0);
      floor.rail.weigh(time, quarter.code(), quarter.grams()).body(beast.id());
      boolean fore = quarter.code().equals(FOREQUARTER);
      floor.block(day).after(fore ? dice.between(520, 760) : dice.between(400, 590));
    }
  }

  /** The days on which quarters were weighed. */
  static SortedSet<LocalDate> days(ScaleBook rail) {
    var days = new TreeSet<>(rail.days(HINDQUARTER));
    days.addAll(rail.days(FOREQUARTER));
    return days;
  }
}
