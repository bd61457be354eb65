package gambrel.insight.month;

import gambrel.insight.month.figures.Finding;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SeasonShopTest {
  private static final int SHOPS = Integer.getInteger("month.shops", 2);
  private static final long SEED = Long.getLong("month.seed", 1);

  @TempDir Path folder;

  @Test
  void print() {
    for (var wrong : SeasonShop.Wrong.values()) {
      if (!System.getProperty("month.wrong", wrong.name()).contains(wrong.name())) {
        continue;
      }
      Map<String, Integer> told = new TreeMap<>();
      for (long seed = SEED; seed < SEED + SHOPS; seed++) {
        var night = SeasonShop.night(folder.resolve(wrong + "-" + seed), seed, wrong);
        var from = wrong == SeasonShop.Wrong.NOTHING ? SeasonShop.FIRST.plusMonths(1) : SeasonShop.CHANGED;
        var ofShop = new TreeMap<String, Integer>();
        for (var m = from; !m.isAfter(SeasonShop.LAST); m = m.plusMonths(1)) {
          for (var f : SeasonShop.report(night, m).findings()) {
            if (Boolean.getBoolean("month.print")) {
              System.out.printf("%s %s %s %s t=%s loss=%s usual=%s%n", seed, m, f.kind(), f.variant(), num(f, "t"), num(f, "loss"), num(f, "usual"));
            }
            String key = f.kind().id() + "." + f.variant() + " " + label(f);
            if (wrong == SeasonShop.Wrong.NOTHING) {
              told.merge(key, 1, Integer::sum);
            } else {
              ofShop.put(key, 1);
            }
          }
        }
        ofShop.keySet().forEach(k -> told.merge(k, 1, Integer::sum));
      }
      System.out.printf("%s (%d): %s%n", wrong, SHOPS, told);
    }
  }

  private static String num(Finding f, String name) {
    var e = f.evidence().get(name);
    return e instanceof gambrel.insight.month.figures.Evidence.Percent p
        ? "" + (float) p.value().doubleValue()
        : e instanceof gambrel.insight.month.figures.Evidence.Number n
            ? "" + (float) n.value().doubleValue()
            : "" + e;
  }

  private static String label(Finding f) {
    return switch (f.kind()) {
      case CHILLED_BODIES, BENCH_BODIES, HANGING, BATCH, STOCK -> f.sureness().id();
      default -> f.accused().toString() + f.species();
    };
  }
}
