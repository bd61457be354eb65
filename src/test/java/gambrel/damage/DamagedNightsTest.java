package gambrel.damage;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import gambrel.laws.ForeignExports;
import gambrel.laws.LawShop;
import gambrel.night.Inputs;
import gambrel.night.NightlyRun;
import gambrel.night.PlainDocuments;
import gambrel.night.RefusedException;
import gambrel.trade.reckoning.Progress;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whatever happens to the files of a shop folder, the night is done or refused, every row of the
 * exports is accounted for, and once the files are whole again nothing is left of it.
 */
class DamagedNightsTest {
  private static final int SEEDS = Integer.getInteger("seeds", 4);

  @TempDir private Path temporary;

  static IntStream seeds() {
    return IntStream.range(0, SEEDS);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  @Timeout(value = 300, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
  void noDamageBreaksANight(int seed) {
    var shop = new LawShop(temporary.resolve("shop"), seed);
    ForeignExports.write(shop, new SplittableRandom(seed));
    var whole = FolderCopy.of(shop.folder());
    var before = night(whole, "before", shop.asOf(), "whole");
    var random = new SplittableRandom(seed);
    for (var damage : Damage.values()) {
      var path = pick(whole, random);
      var damaged = whole.with(path, damage.to(whole.files().get(path), random));
      night(damaged, "damaged", shop.asOf(), damage + " of " + path + ", seed " + seed);
    }
    assertTrue(before.isSameAs(night(whole, "after", shop.asOf(), "whole")));
  }

  /** An export in one of two cases, else any file. */
  private static String pick(FolderCopy whole, SplittableRandom random) {
    var paths = new ArrayList<>(whole.files().keySet());
    var exports = paths.stream().filter(p -> p.startsWith("exports/")).toList();
    var from = random.nextBoolean() ? exports : paths;
    return from.get(random.nextInt(from.size()));
  }

  private FolderCopy night(FolderCopy shop, String name, OffsetDateTime asOf, String what) {
    var folder = shop.writeTo(temporary.resolve("folder"));
    var out = new FolderCopy(new TreeMap<>()).writeTo(temporary.resolve(name));
    try {
      var inputs = Inputs.read(folder, Progress.NONE);
      var outcome = new NightlyRun(inputs, new PlainDocuments()).run(out, asOf, List.of());
      NightRules.check(inputs, outcome, out);
    } catch (RefusedException e) {
      assertTrue(!what.contains("exports/"), what);
    } catch (RuntimeException | StackOverflowError | AssertionError e) {
      fail(what, e);
    }
    return FolderCopy.of(out);
  }
}
