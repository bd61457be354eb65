package gambrel.insight.usual;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.insight.month.figures.BodyFigure;
import gambrel.insight.usual.SteadyRoom.Fault;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Sound bodies are seldom told that something is not as usual, and no body with a planted fault is
 * told that what the fault concerns is. {@code -Drooms=N} takes as many rooms, 1 by default.
 */
class SoundAndFaultyBodiesTest {
  private static final int ROOMS = Integer.getInteger("rooms", 1);
  private static final int BODIES = 500;
  private static final int FAULTS = 100;
  private static final int CLASSES = 25;
  private static final int BEFORE = 24;

  @TempDir private Path folder;

  /** Steers and heifers, boned out or not: 500 bodies with enough like ones before them. */
  @Test
  void ofSoundBodiesSixInAHundredAtMostHaveAFigureOutside() {
    for (int seed = 1; seed <= ROOMS; seed++) {
      var room = new SteadyRoom(folder.resolve("sound" + seed), seed);
      var dice = new SplittableRandom(seed);
      for (int i = 0; i < BODIES + 4 * LikeBodies.FEWEST + 8; i++) {
        if (i % 3 == 0) {
          room.nextDay();
        }
        room.body(dice.nextBoolean() ? "steer" : "heifer", dice.nextBoolean(), Fault.NONE);
      }
      var night = room.night();
      var like = LikeBodies.of(night);
      var compared =
          night.bodies().keySet().stream()
              .flatMap(id -> like.compare(id).stream())
              .limit(BODIES)
              .toList();
      long outside = compared.stream().filter(Comparison::isOutside).count();
      long usual = compared.stream().filter(of -> !of.usual().isEmpty()).count();
      System.out.println(outside + " of " + BODIES + " outside, " + usual + " with a yes");
      assertEquals(BODIES, compared.size());
      assertTrue(outside <= BODIES * 6 / 100, outside + " outside");
      assertTrue(usual >= BODIES * 8 / 10, "only " + usual + " have a figure that is usual");
    }
  }

  /**
   * The yields that a fault changes, and the loss. A hook in the hot weight changes the dressing
   * percentage too; a tub that is missing changes take-home.
   */
  private static List<BodyFigure> concerned(Fault fault) {
    return switch (fault) {
      case NONE -> List.of();
      case TUB_MISSING, TUB_SPILT -> List.of(BodyFigure.BENCH, BodyFigure.TAKE_HOME);
      case HOOK_LEFT_IN -> List.of(BodyFigure.CHILL, BodyFigure.DRESSING);
    };
  }

  /** Each class has 24 sound bodies, and then four with each fault at the same moment. */
  @Test
  void noFaultIsCalledUsualInWhatItConcerns() {
    for (int seed = 1; seed <= ROOMS; seed++) {
      var room = new SteadyRoom(folder.resolve("faulty" + seed), seed);
      var faulty = new EnumMap<Fault, List<String>>(Fault.class);
      for (int i = 0; i < BEFORE * CLASSES; i++) {
        if (i % CLASSES == 0) {
          room.nextDay();
        }
        room.body("class" + i % CLASSES, false, Fault.NONE);
      }
      for (int i = 0; i < FAULTS; i++) {
        if (i % (FAULTS / CLASSES) == 0) {
          room.nextDay();
        }
        for (var fault : Fault.values()) {
          String id = room.body("class" + i / (FAULTS / CLASSES), false, fault);
          faulty.computeIfAbsent(fault, f -> new ArrayList<>()).add(id);
        }
      }
      var like = LikeBodies.of(room.night());
      faulty.forEach((fault, ids) -> check(fault, ids, like));
    }
  }

  private static void check(Fault fault, List<String> ids, LikeBodies like) {
    var verdicts = ids.stream().flatMap(id -> like.compare(id).stream()).toList();
    long outside = verdicts.stream().filter(Comparison::isOutside).count();
    var usual = new EnumMap<BodyFigure, Integer>(BodyFigure.class);
    verdicts.forEach(of -> of.usual().forEach(figure -> usual.merge(figure, 1, Integer::sum)));
    System.out.println(
        fault + ": " + verdicts.size() + " compared, " + outside + " outside, usual " + usual);
    if (fault == Fault.NONE) {
      assertEquals(FAULTS, verdicts.size());
      assertTrue(usual.get(BodyFigure.BENCH) > FAULTS / 2, "sound bodies may be usual");
      return;
    }
    assertEquals(fault == Fault.TUB_SPILT ? 0 : FAULTS, verdicts.size(), fault::name);
    assertEquals(
        Map.of(),
        concerned(fault).stream()
            .filter(usual::containsKey)
            .collect(Collectors.toMap(figure -> figure, usual::get)),
        fault::name);
  }
}
