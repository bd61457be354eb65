package gambrel.insight.month.bodies;

import gambrel.trade.cuts.CutTree;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What a body's take-home is worth at the shop's values: its packs, and its part of its batches at
 * the mean value of their packs. Offal and bins are left out.
 *
 * @param value money in the major unit for the part that has a value
 * @param valued weight of the take-home that has a value, in the shop's unit
 * @param takeHome weight of all take-home, in the shop's unit
 */
public record BodyValue(BigFraction value, BigFraction valued, BigFraction takeHome) {
  private static final BodyValue ZERO = of(BigFraction.ZERO, Optional.empty());

  /** The least share of the take-home that must have a value before the body's worth is used. */
  private static final BigFraction ENOUGH = BigFraction.of(9, 10);

  /** The value of {@code body}. */
  public static BodyValue of(MonthBody body, ItemValues values) {
    var weighings = body.balance().weighings();
    var tree = weighings.tree();
    var own =
        weighings.of(Step.PACK).stream()
            .filter(w -> !w.inBatch() && !weighings.isOffal(w))
            .toList();
    var total = ofPacks(own, tree, values);
    for (var batch : body.balance().batches()) {
      var mean = ofPacks(batch.weighings(), tree, values).mean();
      total = total.plus(of(batch.partOf(body.id()).fraction(), mean));
    }
    return total;
  }

  private static BodyValue ofPacks(List<Weighing> weighings, CutTree tree, ItemValues values) {
    var byItem = new HashMap<String, Weight>();
    weighings.stream()
        .filter(w -> w.step() == Step.PACK)
        .forEach(w -> byItem.merge(w.item(), w.net(), Weight::plus));
    return byItem.entrySet().stream()
        .map(pack -> of(pack.getValue().fraction(), values.of(tree, pack.getKey())))
        .reduce(ZERO, BodyValue::plus);
  }

  private static BodyValue of(BigFraction net, Optional<BigFraction> rate) {
    var valued = rate.isPresent() ? net : BigFraction.ZERO;
    return new BodyValue(valued.multiply(rate.orElse(BigFraction.ZERO)), valued, net);
  }

  /** Money for a unit of weight of what has a value; empty where too little has one. */
  private Optional<BigFraction> mean() {
    return isEnough() ? Optional.of(value.divide(valued)) : Optional.empty();
  }

  /** The value of two bodies together. */
  public BodyValue plus(BodyValue other) {
    return new BodyValue(
        value.add(other.value), valued.add(other.valued), takeHome.add(other.takeHome));
  }

  /** Whether at least nine tenths of the take-home have a value. */
  public boolean isEnough() {
    return takeHome.signum() > 0 && valued.compareTo(takeHome.multiply(ENOUGH)) >= 0;
  }
}
