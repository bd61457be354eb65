package gambrel.insight.cause;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.insight.FalseAlarms;
import gambrel.trade.decision.State;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Clean shops are damaged in one place each; the finder must name what was done. {@code
 * -Dcause.shops=100} damages so many of each kind, {@code -Dcause.seed=N} takes other shops.
 */
class DamagedShopsTest {
  private static final int SHOPS = Integer.getInteger("cause.shops", 2);
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
  void theTrueCauseIsTheFirstSuggestionInNineOfTenDamagedShopsAndNoBodyIsPutOut() {
    var scores = new EnumMap<Damage, Trials.Score>(Damage.class);
    var all = new Trials.Score();
    for (var damage : EnumSet.complementOf(EnumSet.of(Damage.NATURAL))) {
      scores.put(damage, scored(damage, SHOPS));
      all.add(scores.get(damage));
    }
    var table = new StringBuilder();
    scores.forEach((damage, score) -> table.append(score.line(damage.name())).append('\n'));
    table.append(all.line("all")).append('\n');
    if (Integer.getInteger("cause.shops") != null) {
      System.out.print(table);
    }
    assertTrue(all.first * 10 >= all.suggested() * 9, table::toString);
    assertTrue(all.suggested() * 10 >= all.failing * 7, table::toString);
    assertEquals(0, all.harming, table::toString);
  }

  /** Of 180 such bodies at most 3 may have a suggestion. */
  @Test
  void bodiesThatLostTooMuchByNatureHaveHardlyAnySuggestion() {
    var score = scored(Damage.NATURAL, 4 * SHOPS);
    new FalseAlarms(score.failing, 1 / 60.0)
        .check("bodies naturally over the limit", score.suggested());
    assertEquals(0, score.harming);
  }

  private Trials.Score scored(Damage damage, int shops) {
    var trials = new Trials(folder);
    var score = new Trials.Score();
    for (long seed = SEED; score.failing < shops && seed < SEED + 10L * shops; seed++) {
      trials.damage(damage, seed, TRIES, score);
    }
    return score;
  }
}
