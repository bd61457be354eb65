package gambrel.outside;

import gambrel.scenes.Found;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Rooms with one damage each, and how far the program's suggestions are true of them. */
final class DamagedRooms {
  /** Percentage points that a body may be moved from its true loss without being worse off. */
  private static final double NOT_WORSE = 0.3;

  /** Reasons that a damage of this kind may give. */
  private static final Set<String> EXPECTED =
      Set.of("loss-high", "loss-negative", "batch-out", "parts-missing");

  /** What came of the rooms of a kind. */
  static final class Tally {
    /** Rooms of the kind. */
    int rooms;

    /** Rooms in which a body was held, or something suggested. */
    int held;

    /** Rooms in which the rail weights of the damaged body are marked. */
    int marked;

    /** Of those that are held, rooms with a suggestion. */
    int any;

    /** Of those with a suggestion, rooms whose first suggestions are all true. */
    int first;

    /** Rooms with suggestions none of which is true. */
    int untrue;

    /** Bodies that are over the limit by nature and are held. */
    int natural;

    /** Bodies over the limit by nature with a suggestion. */
    int naturalTold;

    /** Suggestions. */
    int suggestions;

    /** Suggestions that are not true. */
    int wrong;

    /** Suggestions that move another body further out. */
    int further;

    /** What went wrong, in words. */
    final List<String> faults = new ArrayList<>();
  }

  private DamagedRooms() {}

  /** Rooms of a kind; the seeds of two kinds and of two rooms are apart. */
  static Tally of(Damage damage, int rooms, long seed) {
    var tally = new Tally();
    var seeds = new Chance(seed * 1_000_003 + damage.ordinal());
    while (tally.rooms < rooms) {
      one(damage, new Chance(seeds.seed()), tally);
    }
    return tally;
  }

  private static void one(Damage damage, Chance chance, Tally tally) {
    var plan = RoomPlan.drawn(chance, damage.needsHotOnly(chance));
    var room = RoomWork.of(plan, Nature.SOUND, chance);
    var sound = Room.lossPercent(room.tickets);
    var soundBatches = Room.batchPercent(room.tickets);
    var drawn = damage.doTo(room, chance);
    if (drawn.isEmpty()) {
      return;
    }
    tally.rooms++;
    var truth = drawn.get();
    var found = RoomNight.in(room, night -> kept(night.at(room.finished())));
    check(truth, found);
    if (truth.bodies().stream().anyMatch(found.marked()::contains)) {
      tally.marked++;
    }
    if (found.held().isEmpty() && found.suggestions().isEmpty()) {
      return;
    }
    tally.held++;
    judge(damage, truth, found, tally);
    for (var suggestion : found.suggestions()) {
      boolean worse =
          isWorse(
                  sound,
                  Room.lossPercent(room.tickets),
                  Room.lossPercent(suggestion.laidOver(room)),
                  suggestion.body())
              || isWorse(
                  soundBatches,
                  Room.batchPercent(room.tickets),
                  Room.batchPercent(suggestion.laidOver(room)),
                  "");
      if (worse) {
        tally.further++;
        tally.faults.add(damage + " further: " + truth.what() + " | " + suggestion);
      }
    }
  }

  /**
   * What is kept of a night.
   *
   * @param held the reasons of the bodies that are held
   * @param suggestions what is suggested
   * @param marked bodies whose weights on the rail are marked
   */
  record Kept(Map<String, String> held, List<Suggestion> suggestions, Set<String> marked) {}

  private static Kept kept(Found found) {
    var held = new LinkedHashMap<String, String>();
    found
        .rows("bodies", "state=held")
        .forEach(row -> held.put(row.get("body"), row.get("reasons")));
    var marked = new TreeSet<String>();
    found.rows("notices").stream()
        .filter(row -> Set.of("chill-unusual", "cold-above-hot").contains(row.get("code")))
        .forEach(row -> marked.add(row.get("body")));
    return new Kept(held, Suggestion.of(found), marked);
  }

  /** A damage holds bodies for what it does to them and for nothing else. */
  private static void check(Truth truth, Kept found) {
    found
        .held()
        .forEach(
            (body, reasons) -> {
              boolean expected = EXPECTED.containsAll(Set.of(reasons.split(";")));
              boolean concerned = truth.bodies().contains(body) || reasons.contains("batch-out");
              if (!expected || !concerned) {
                throw new AssertionError(truth.what() + ": " + body + " is held for " + reasons);
              }
            });
  }

  private static void judge(Damage damage, Truth truth, Kept found, Tally tally) {
    var suggestions = found.suggestions();
    if (damage.isNatural()) {
      tally.natural += found.held().size();
      var told = new TreeSet<String>();
      suggestions.forEach(suggestion -> told.add(suggestion.body()));
      tally.naturalTold += told.size();
    }
    tally.suggestions += suggestions.size();
    tally.wrong += (int) suggestions.stream().filter(s -> !truth.isToldBy(s)).count();
    if (suggestions.isEmpty()) {
      if (!damage.isNatural()) {
        tally.faults.add(damage + " nothing: " + truth.what() + " held " + found.held());
      }
      return;
    }
    tally.any++;
    if (suggestions.stream().filter(s -> s.rank() == 1).allMatch(truth::isToldBy)) {
      tally.first++;
    } else {
      tally.faults.add(damage + " first: " + truth.what() + " | " + suggestions);
    }
    if (suggestions.stream().noneMatch(truth::isToldBy)) {
      tally.untrue++;
    }
  }

  /** Whether something else than what is corrected ends further from where it truly lies. */
  private static boolean isWorse(
      Map<String, Double> truly,
      Map<String, Double> before,
      Map<String, Double> after,
      String own) {
    return after.keySet().stream()
        .filter(id -> !id.equals(own) && truly.containsKey(id) && before.containsKey(id))
        .anyMatch(
            id ->
                Math.abs(after.get(id) - truly.get(id))
                    > Math.abs(before.get(id) - truly.get(id)) + NOT_WORSE);
  }
}
