package gambrel.outside;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.outside.FaultyMonths.Tally;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/**
 * Findings of months held against rooms with one fault that is known, and against sound ones. Eight
 * of ten faults must be named in their first or second month, one room in twenty may hear of
 * something else, and six of 240 sound months. A short run holds all faults together to that, a run
 * of 20 rooms each fault. The settings are those of {@link DamagedRoomsTest}.
 */
class FaultyMonthsTest {
  private static final int SHOPS = Integer.getInteger("outside.shops", 1);
  private static final long SEED = Long.getLong("outside.seed", 1);
  private static final Binomial ASKED = new Binomial(true);

  /** The true culprit is named soon, and nobody else. */
  @Test
  void faultsAreNamed() {
    var only = System.getProperty("outside.only");
    var kinds =
        only == null
            ? List.of(Fault.values())
            : Stream.of(only.split(",")).map(Fault::valueOf).toList();
    var tallies = new EnumMap<Fault, Tally>(Fault.class);
    kinds.parallelStream()
        .map(fault -> Map.entry(fault, FaultyMonths.of(fault, SHOPS, SEED)))
        .toList()
        .forEach(entry -> tallies.put(entry.getKey(), entry.getValue()));
    print(tallies);
    var rates = new ArrayList<Executable>();
    if (SHOPS >= 20) {
      tallies.forEach(
          (fault, tally) -> hold(rates, fault.name(), tally.rooms, tally.named, tally.other));
    } else {
      int rooms = tallies.values().stream().mapToInt(t -> t.rooms).sum();
      int named = tallies.values().stream().mapToInt(t -> t.named).sum();
      int other = tallies.values().stream().mapToInt(t -> t.other).sum();
      hold(rates, "all faults", rooms, named, other);
    }
    assertAll(rates);
  }

  private static void hold(List<Executable> rates, String what, int rooms, int named, int other) {
    rates.add(() -> assertTrue(named >= ASKED.least(rooms, 0.8), what + " named " + named));
    rates.add(() -> assertTrue(other <= ASKED.most(rooms, 0.05), what + " others " + other));
  }

  private static void print(Map<Fault, Tally> tallies) {
    System.out.printf(
        "%n%-12s %6s %6s %6s %6s  %s%n",
        "fault", "rooms", "named", "first", "other", "other findings (rooms)");
    tallies.forEach(
        (fault, t) ->
            System.out.printf(
                "%-12s %6d %6d %6d %6d  %s%n",
                fault, t.rooms, t.named, t.first, t.other, t.others));
    var early = new TreeMap<String, Integer>();
    tallies.values().forEach(t -> t.early.forEach((id, n) -> early.merge(id, n, Integer::sum)));
    int months = tallies.values().stream().mapToInt(t -> t.soundMonths).sum();
    System.out.printf("in %d months before the faults: %s%n", months, early);
    if (Boolean.getBoolean("outside.show")) {
      tallies.values().forEach(t -> t.told.forEach(System.out::println));
    }
  }

  /** In 240 months of sound rooms six findings are chance. */
  @Test
  void soundMonthsFindLittle() {
    var sound = FaultyMonths.sound(SHOPS * 10, SEED);
    System.out.printf("%nsound months %d, findings %d%n", sound.months, sound.found.size());
    sound.found.forEach(System.out::println);
    int most = ASKED.most(sound.months, 6.0 / 240);
    assertTrue(sound.found.size() <= most, "found " + sound.found);
  }
}
