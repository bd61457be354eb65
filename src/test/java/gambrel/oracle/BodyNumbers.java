package gambrel.oracle;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The exact figures of one body by name. Names are those of the columns of {@code bodies.csv}
 * without the unit; what only a page prints has a name of its own. A figure that is not known is
 * missing.
 */
final class BodyNumbers {
  private final Map<String, BigFraction> numbers = new LinkedHashMap<>();
  private final Yield yield;
  private final BodyFigures body;

  private BodyNumbers(Yield yield) {
    this.yield = yield;
    body = yield.body;
  }

  static Map<String, BigFraction> of(Yield yield) {
    var numbers = new BodyNumbers(yield);
    numbers.columns();
    numbers.rail();
    numbers.packedAndBinned();
    if (yield.takeHome != null && !yield.body.beast.uncut()) {
      numbers.boning();
    }
    return numbers.numbers;
  }

  private void put(String name, BigFraction number) {
    if (number != null) {
      numbers.put(name, number);
    }
  }

  private void columns() {
    put("live", body.beast.live());
    put("hot", body.hot);
    put("cold", body.cold);
    put("boning", body.boning);
    put("take_home", yield.takeHome);
    put("meat_home", yield.meatHome);
    put("offal", yield.offal);
    put("tub", yield.tub);
    put("bone", yield.bone);
    put("fat", yield.fat);
    put("waste", yield.waste);
    put("rail_trim", yield.railTrim);
    put("cutting_loss", yield.cuttingLoss);
    put("unweighed", yield.unweighed);
    put("batch_loss", yield.batchLoss);
    put("dressing_pct", Num.percent(body.hot, body.beast.live()));
    put("chill_shrink_pct", body.chillShrink());
    put("ageing_shrink_pct", body.ageingShrink());
    put("take_home_of_hot_pct", Num.percent(yield.takeHome, body.hot));
    put("take_home_of_cold_pct", Num.percent(yield.takeHome, body.cold));
    put("meat_of_cold_pct", Num.percent(yield.meatHome, body.cold));
    var days = yield.daysHung();
    put("days_hung", days == null ? null : BigFraction.of(days.intValue()));
    put("hours_chilled", body.hoursChilled());
    put("cutting_loss_pct", Num.percent(yield.cuttingLoss, body.boning));
  }

  private void rail() {
    if (body.hot != null && body.beast.live() != null) {
      put("dressed_off", body.beast.live().subtract(body.hot));
      put("dressed_off_pct", Num.percent(numbers.get("dressed_off"), body.beast.live()));
    }
    put("chill_loss", body.chillLoss());
    put("ageing_loss", body.ageingLoss());
    put("cold_of_aged", body.coldOfAged());
    put("trim_before_cold", body.trimBeforeCold());
    put("trim_after_cold", body.trimAfterCold());
    if (body.chillLoss() != null) {
      put("cold_of_hot_pct", Num.percent(body.cold, body.hot));
    }
  }

  /** What was weighed of a kind, rail trim included, before the first end product too. */
  private void packedAndBinned() {
    put("bone_packed", sum(r -> r.isPack() && kind(r).equals("bone")));
    put("fat_packed", sum(r -> r.isPack() && kind(r).equals("fat")));
    put("bone_binned", sum(r -> r.is("bin") && kind(r).equals("bone")));
    put("fat_binned", sum(r -> r.is("bin") && kind(r).equals("fat")));
    put("waste_binned", sum(r -> r.is("bin") && !Set.of("bone", "fat", "offal").contains(kind(r))));
    put("bone_packed_after_rail", sum(r -> cut(r) && r.isPack() && kind(r).equals("bone")));
  }

  /** What became of the weight into the boning room. */
  private void boning() {
    boolean bins = !body.setup.bins().equals("no");
    put("boning_home", sum(r -> cut(r) && r.isPack()).add(yield.batchPart()));
    put("boning_pending", inBatches(true));
    put("boning_batch_loss", inBatches(false).subtract(yield.batchPart()));
    put("boning_bone", sum(r -> bins && binned(r, Set.of("bone"))));
    put("boning_fat", sum(r -> bins && binned(r, Set.of("fat"))));
    put("boning_waste", sum(r -> bins && cut(r) && r.is("bin")).subtract(boneAndFat()));
    put("put_into_open_batches", pendingTubs());
  }

  private BigFraction boneAndFat() {
    return numbers.get("boning_bone").add(numbers.get("boning_fat"));
  }

  private boolean binned(Row row, Set<String> kinds) {
    return cut(row) && row.is("bin") && kinds.contains(kind(row));
  }

  /** Tubs after hanging of the batches that are open, or finished. */
  private BigFraction inBatches(boolean open) {
    return sum(r -> cut(r) && r.is("tub") && r.hasBatch() && isOpen(r.batch) == open);
  }

  private BigFraction pendingTubs() {
    return sum(r -> r.is("tub") && r.hasBatch() && isOpen(r.batch));
  }

  private boolean isOpen(String batch) {
    return yield.batches.stream().anyMatch(b -> b.id.equals(batch) && b.open);
  }

  private boolean cut(Row row) {
    return !body.isOffal(row) && !body.isTrim(row);
  }

  private String kind(Row row) {
    return body.tree.kind(row.item);
  }

  private BigFraction sum(Predicate<Row> which) {
    return BodyFigures.sum(body.rows.stream().filter(which).toList());
  }
}
