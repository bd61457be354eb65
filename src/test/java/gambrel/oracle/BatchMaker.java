package gambrel.oracle;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Fills out batches, packs them, and lists them. */
final class BatchMaker {
  final Map<String, List<SimBatch>> bySpecies = new LinkedHashMap<>();
  final StringBuilder csv = new StringBuilder("batch,product,made,gain,due,added,note\n");

  private final Weigher weigher;
  private final ShopPlan plan;
  private final Dice dice;

  BatchMaker(Weigher weigher) {
    this.weigher = weigher;
    plan = weigher.plan();
    dice = plan.dice;
    for (var species : plan.species) {
      var batches = bySpecies.computeIfAbsent(species, s -> new ArrayList<>());
      for (int i = dice.between(0, 2); i > 0; i--) {
        batches.add(new SimBatch("S" + species.charAt(0) + i));
      }
    }
  }

  void finish(List<String> bodies) {
    for (var batches : bySpecies.values()) {
      for (var batch : batches) {
        if (batch.last() != null) {
          finish(batch, bodies);
        } else if (dice.chance(5)) {
          lonelyPack(batch);
        }
      }
    }
  }

  private void lonelyPack(SimBatch batch) {
    weigher.goTo(plan.firstDay.plusDays(5), 12);
    weigher
        .weigh(plan.packScale, "", "pack", "sausages", new BigDecimal(3))
        .set("batch", batch.id());
  }

  private void finish(SimBatch batch, List<String> bodies) {
    weigher.goTo(batch.last().toLocalDate().plusDays(dice.between(0, 2)), 16);
    boolean gain = dice.chance(25);
    list(batch, gain);
    var in = batch.meat();
    if (dice.chance(15)) {
      var own = weigher.part(in, 100, 300);
      weigher.weigh(plan.benchScale, "", "tub", "trim", own).set("batch", batch.id());
      in = in.add(own);
    }
    if (dice.chance(60)) {
      var added = weigher.part(in, 40, 180);
      weigher.weigh(plan.benchScale, "", "added", "trim", added).set("batch", batch.id());
      in = in.add(added);
    }
    if (dice.chance(12)) {
      return;
    }
    var out = in.multiply(gain ? dice.thousandths(980, 1100) : loss());
    int count = dice.between(1, 5);
    boolean wrapped = dice.chance(30);
    var each = out.divide(new BigDecimal(count), MathContext.DECIMAL64);
    for (int i = 0; i < count; i++) {
      var scale = wrapped ? plan.wrapScale : plan.packScale;
      var named = dice.chance(10) ? dice.pick(bodies) : "";
      weigher.weigh(scale, named, "pack", "sausages", each).set("batch", batch.id());
    }
  }

  private BigDecimal loss() {
    return dice.chance(85) ? dice.thousandths(940, 1000) : dice.thousandths(850, 1020);
  }

  private void list(SimBatch batch, boolean gain) {
    if (!gain && dice.chance(15)) {
      return;
    }
    var day = batch.last().toLocalDate();
    var due = dice.chance(60) ? plan.date(day.plusDays(dice.between(1, 12))) : "";
    csv.append(String.join(",", batch.id(), "Sausages", "", gain ? "yes" : "", due, "", ""));
    csv.append('\n');
  }
}
