package gambrel.insight.month;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.insight.FalseAlarms;
import gambrel.insight.month.figures.AlarmRates;
import gambrel.insight.month.figures.Evidence;
import gambrel.insight.month.figures.Finding;
import gambrel.insight.month.figures.MonthRecords;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * {@code -Dmonth.shops=N} takes as many shops of each kind, 12 by default; the number is printed on
 * failure.
 */
class SeededShopsTest {
  private static final int SHOPS = Integer.getInteger("month.shops", 12);

  @TempDir Path folder;

  /** The findings of every shop that are of a kind. */
  private List<List<Finding>> findings(
      BiFunction<Path, Long, MonthRecords> shop, Predicate<Finding> kind) {
    var all = new ArrayList<List<Finding>>();
    for (long seed = 1; seed <= SHOPS; seed++) {
      var records = shop.apply(folder.resolve("shop" + seed), seed);
      all.add(MonthReport.of(records).findings().stream().filter(kind).toList());
    }
    return all;
  }

  private static boolean isComparison(Finding finding) {
    return switch (finding.kind()) {
      case BONER, CUT_CHOICE, YIELD, PACE, CHARGES, SUPPLIER, CLASS -> true;
      default -> false;
    };
  }

  /**
   * Three comparisons a shop can fire: boners, suppliers, ways to cut a loin. Each is promised to
   * be false once in a hundred. 36 trials allow 3 alarms; a rate of one in eight exceeds that with
   * probability 0.67, twice the rate with only 0.006. In 870 shops twice the rate fails with
   * probability 0.91 ({@link FalseAlarms#power}); {@code GroupComparisonTest} tries as many
   * comparisons in every run.
   */
  @Test
  void whereNothingDiffersNobodyIsSingledOutMoreOftenThanPromised() {
    var found = findings(BoningShop::clean, SeededShopsTest::isComparison);
    long alarms = found.stream().mapToLong(List::size).sum();
    new FalseAlarms(3 * SHOPS, AlarmRates.COMPARISON).check("comparisons " + found, alarms);
  }

  @Test
  void bonerWhoLeavesTwoPerCentMoreOnTheBoneIsNamed() {
    var found = findings(BoningShop::wynLeavesMeatOnTheBone, f -> f.kind() == Finding.Kind.BONER);
    for (var ofShop : found) {
      assertEquals(
          List.of(new Evidence.Name("Wyn")),
          ofShop.stream().map(f -> f.evidence().get("boner")).toList());
      assertTrue(ofShop.get(0).money().isPresent());
    }
  }

  /** Chance gives Moor fewer than eight bodies now and then, which tell nothing. */
  @Test
  void supplierWhoseBodiesLeaveLessIsNamed() {
    var found = findings(BoningShop::moorsBodiesAreFat, f -> f.kind() == Finding.Kind.SUPPLIER);
    long named =
        found.stream().filter(fs -> fs.stream().anyMatch(f -> name(f).equals("Moor"))).count();
    assertTrue(named * 10 >= SHOPS * 9L, named + " named in " + SHOPS);
  }

  @Test
  void poorerWayToCutALoinIsNamed() {
    var found =
        findings(BoningShop::loinOnTheBoneIsCheap, f -> f.kind() == Finding.Kind.CUT_CHOICE);
    for (var ofShop : found) {
      assertEquals(1, ofShop.size());
      var cuts = (Evidence.Cuts) ofShop.get(0).evidence().get("way");
      assertEquals("T-bone steak", cuts.items().get(0).name());
    }
  }

  private static String name(Finding finding) {
    return ((Evidence.Name) finding.evidence().get("supplier")).value();
  }
}
