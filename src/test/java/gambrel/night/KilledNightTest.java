package gambrel.night;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.files.publish.FailingDisk;
import gambrel.files.publish.FullDisk;
import gambrel.files.publish.HastyDisk;
import gambrel.files.publish.WatchedDisk;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The process dies or its disk fills at any moment of a night; yesterday's state stands or today's
 * does, and a plain rerun ends as an undisturbed one. {@code -Dkills=300} for a long campaign.
 */
@Timeout(600)
class KilledNightTest {
  private static final int USUAL_KILLS = 9;
  private static final int KILLS = Integer.getInteger("kills", USUAL_KILLS);
  private static final int PDF_EACH = 5;
  private static final Map<Boolean, Long> LASTS = new HashMap<>();
  private static final Map<Boolean, Long> PUBLISHES = new HashMap<>();

  /** Makes consecutive seeds independent. */
  private static final long SPREAD = 0x9E3779B97F4A7C15L;

  @TempDir private static Path shared;
  private static TwoNights plain;
  private static TwoNights pdf;

  @TempDir private Path folder;

  @BeforeAll
  static void runUndisturbed() {
    plain = TwoNights.of(shared.resolve("plain"), false);
    pdf = TwoNights.of(shared.resolve("pdf"), true);
  }

  private static void assertRerunEnds(TwoNights nights, Path out, boolean pdf, String when) {
    nights.run(out, pdf, new HastyDisk());
    assertEquals(nights.today(), Trees.published(out), when);
    assertEquals(
        Trees.folders(shared.resolve((pdf ? "pdf" : "plain") + "/whole")),
        Trees.folders(out),
        when);
  }

  @Test
  void theSecondNightChangesAllThatANightCanChange() {
    var changed = new ArrayList<>(plain.today().keySet());
    changed.removeAll(plain.yesterday().keySet());
    var gone = new ArrayList<>(plain.yesterday().keySet());
    gone.removeAll(plain.today().keySet());

    assertEquals(
        List.of(
            "held/bob/B5.pdf",
            "statements/ann/B1-r2.pdf",
            "statements/ann/B3-r1.pdf",
            "statements/ann/B4-r1.pdf",
            "statements/bob/B2-r2.pdf"),
        changed);
    assertEquals(List.of("held/ann/B4.pdf", "summaries/2026-02.pdf"), gone);
  }

  @Test
  void theDiskFailsAtEveryOperationInTurn() throws IOException {
    Map<TwoNights.State, Integer> found = new EnumMap<>(TwoNights.State.class);
    var disk = new FailingDisk(0);
    for (int n = 0; !disk.isWhole() || n == 0; n++) {
      var out = plain.lay(folder.resolve("n" + n));
      disk = new FailingDisk(n);
      var outcome = plain.run(out, false, disk);
      assertEquals(disk.isWhole() ? 1 : 4, outcome.exitCode());
      var state = plain.state(out);
      assertEquals(
          state == TwoNights.State.UNDER_WAY,
          outcome.toString().contains("a part was published"),
          outcome::toString);
      found.merge(state, 1, Integer::sum);
      assertRerunEnds(plain, out, false, "after " + n + " operations");
    }
    assertTrue(found.get(TwoNights.State.YESTERDAY) >= 15, found::toString);
    assertTrue(found.get(TwoNights.State.UNDER_WAY) >= 15, found::toString);
  }

  @Test
  void theRunThatFinishesADeadOnesWorkDiesAsWell() throws IOException {
    int all = operations();
    for (int n = all / 2; n < all; n += 3) {
      var out = plain.lay(folder.resolve("n" + n));
      plain.run(out, false, new FailingDisk(n));
      for (int m = 0; m < 3; m++) {
        plain.run(out, false, new FailingDisk(m));
        plain.state(out);
      }
      assertRerunEnds(plain, out, false, "after " + n + " operations and three more deaths");
    }
  }

  @Test
  void theDiskIsFullFromEveryOperationOn() throws IOException {
    var disk = new FullDisk(0);
    for (int n = 0; disk.isHit() || n == 0; n++) {
      var out = plain.lay(folder.resolve("n" + n));
      disk = new FullDisk(n);
      var outcome = plain.run(out, false, disk);
      if (disk.isHit()) {
        assertEquals(4, outcome.exitCode());
        assertTrue(outcome.toString().contains("No space left on device"), outcome::toString);
        assertEquals(plain.yesterday(), Trees.published(out), "full after " + n + " operations");
      } else {
        assertEquals(plain.today(), Trees.published(out), "full after " + n + " operations");
      }
      assertRerunEnds(plain, out, false, "full after " + n + " operations");
    }
  }

  private int operations() throws IOException {
    var disk =
        new WatchedDisk() {
          @Override
          protected void before(Kind kind, int n, Act tear) {}
        };
    plain.run(plain.lay(folder.resolve("counted")), false, disk);
    return disk.operations();
  }

  static LongStream kills() {
    return LongStream.rangeClosed(1, KILLS);
  }

  @ParameterizedTest(name = "kill {0}")
  @MethodSource("kills")
  void theProcessIsKilled(long seed) throws Exception {
    boolean asPdf = seed % PDF_EACH == 0;
    var nights = nights(asPdf);
    var dice = new SplittableRandom(seed * SPREAD);
    var out = nights.lay(folder.resolve("out"));

    var when =
        switch ((int) (seed % 3)) {
          case 0 -> killAtOperation(out, asPdf, dice);
          case 1 -> killAfter(out, asPdf, dice);
          default -> killWhilePublishing(out, asPdf, dice);
        };

    var state = nights.state(out);
    if (KILLS > USUAL_KILLS) {
      System.err.println("kill " + seed + (asPdf ? " pdf " : " plain ") + when + ": " + state);
    }
    assertRerunEnds(nights, out, asPdf, when);
  }

  private String killAtOperation(Path out, boolean asPdf, SplittableRandom dice) throws Exception {
    int n = dice.nextInt(operations());
    try (var child = NightChild.waitingAt(n, nights(asPdf).shop(), out, asPdf)) {
      child.await(NightChild.READY);
      child.letOn();
      child.await(NightChild.WAITING);
      child.kill();
    }
    return "at operation " + n;
  }

  private String killAfter(Path out, boolean asPdf, SplittableRandom dice) throws Exception {
    if (!LASTS.containsKey(asPdf)) {
      var whole = nights(asPdf).lay(shared.resolve("lasts" + asPdf));
      try (var child = NightChild.runningThrough(nights(asPdf).shop(), whole, asPdf)) {
        LASTS.put(asPdf, untilItEnds(child, NightChild.READY, true));
      }
    }
    long micros = dice.nextLong(1 + LASTS.get(asPdf));
    try (var child = NightChild.runningThrough(nights(asPdf).shop(), out, asPdf)) {
      child.await(NightChild.READY);
      child.letOn();
      boolean ended = child.endsWithin(micros);
      child.kill();
      return "after " + micros + " us" + (ended ? ", over by then" : "");
    }
  }

  /** Most of a night is reckoning, so that few kills at a random moment would hit the rest. */
  private String killWhilePublishing(Path out, boolean asPdf, SplittableRandom dice)
      throws Exception {
    if (!PUBLISHES.containsKey(asPdf)) {
      var whole = nights(asPdf).lay(shared.resolve("publishes" + asPdf));
      try (var child = NightChild.tellingWhenItPublishes(nights(asPdf).shop(), whole, asPdf)) {
        child.await(NightChild.READY);
        child.letOn();
        PUBLISHES.put(asPdf, untilItEnds(child, NightChild.PUBLISHING, false));
      }
    }
    long micros = dice.nextLong(1 + PUBLISHES.get(asPdf));
    try (var child = NightChild.tellingWhenItPublishes(nights(asPdf).shop(), out, asPdf)) {
      child.await(NightChild.READY);
      child.letOn();
      child.await(NightChild.PUBLISHING);
      boolean ended = child.endsWithin(micros);
      child.kill();
      return "publishing for " + micros + " us" + (ended ? ", over by then" : "");
    }
  }

  private static TwoNights nights(boolean asPdf) {
    return asPdf ? pdf : plain;
  }

  /** Microseconds from a word of the process to its end. */
  private static long untilItEnds(NightChild child, String said, boolean letOn) throws Exception {
    child.await(said);
    long start = System.nanoTime();
    if (letOn) {
      child.letOn();
    }
    child.exitCode();
    return (System.nanoTime() - start) / 1000;
  }
}
