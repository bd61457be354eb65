package gambrel.insight.cause;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.trade.decision.State;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Clean shops are damaged in one place each; the finder must name what was done. {@code
 * -Dcause.shops=100} damages so many of each kind, {@code -Dcause.seed=N} takes other shops.
 */
class DamagedShopsTest {
  private static final int SHOPS = Integer.getInteger("cause.shops", 4);
  private static final long SEED = Long.getLong("cause.seed", 1L);
  private static final int TRIES = 12;

  @TempDir private Path folder;

  @Test
  void nothingIsSuggestedWhereNothingWasDamaged() {
    var trials = new Trials(folder);
    for (long seed = SEED; seed < SEED + 3L * SHOPS; seed++) {
      var found = trials.look(new CleanShop(seed));
      assertEquals(Map.of(), found.causes().byBody(), "seed " + seed);
      assertTrue(
          found.night().bodies().values().stream()
              .allMatch(a -> a.decision().state() == State.ISSUED),
          "seed " + seed);
    }
  }

  @Test
  void theTrueCauseIsTheFirstSuggestionInNineOfTenDamagedShops() {
    var scores = new EnumMap<Damage, Trials.Score>(Damage.class);
    var all = new Trials.Score();
    var trials = new Trials(folder);
    for (var damage : Damage.values()) {
      var score = new Trials.Score();
      for (long seed = SEED; score.failing < SHOPS && seed < SEED + 10L * SHOPS; seed++) {
        trials.damage(damage, seed, TRIES, score);
      }
      scores.put(damage, score);
      all.add(score);
    }
    var table = new StringBuilder();
    scores.forEach((damage, score) -> table.append(score.line(damage.name())).append('\n'));
    table.append(all.line("all")).append('\n');
    if (Integer.getInteger("cause.shops") != null) {
      System.out.print(table);
    }
    assertTrue(all.first * 10 >= all.failing * 9, table::toString);
  }
}
