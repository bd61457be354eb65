package gambrel.insight.month.bodies;

import gambrel.trade.balance.BatchBalance;
import gambrel.trade.balance.BodyBalance;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Step;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What a body's take-home is worth at the shop's values: its packs, and its part of its batches at
 * the mean value of their packs. Offal and bins are left out.
 *
 * @param value money in the major unit of what has a value
 * @param valued take-home that has a value
 * @param takeHome all take-home
 */
public record BodyValue(BigFraction value, BigFraction valued, BigFraction takeHome) {
  /** So much of the take-home must have a value before anything is said of the body. */
  private static final BigFraction ENOUGH = BigFraction.of(9, 10);

  /** The value of {@code body}; weights without a value are counted as such. */
  public static BodyValue of(MonthBody body, ItemValues values) {
    var total = of(body.packs(), body.balance(), values);
    for (var batch : body.balance().batches()) {
      total = total.plus(of(batch, body.balance(), values));
    }
    return total;
  }

  private static BodyValue of(Map<String, Weight> packs, BodyBalance body, ItemValues values) {
    var worth = BigFraction.ZERO;
    var valued = Weight.ZERO;
    for (var item : packs.entrySet()) {
      var value = values.of(body.weighings().tree(), item.getKey());
      if (value.isPresent()) {
        worth = worth.add(value.get().multiply(item.getValue().fraction()));
        valued = valued.plus(item.getValue());
      }
    }
    return new BodyValue(worth, valued.fraction(), Weight.sum(packs.values()).fraction());
  }

  private static BodyValue of(BatchBalance batch, BodyBalance body, ItemValues values) {
    var part = batch.partOf(body.body().id());
    var packs = MonthBody.byItem(batch.weighings().stream().filter(w -> w.step() == Step.PACK));
    return of(part, mean(packs, body, values));
  }

  private static Optional<BigFraction> mean(
      Map<String, Weight> packs, BodyBalance body, ItemValues values) {
    var all = of(packs, body, values);
    return all.valued.signum() > 0 && all.isEnough()
        ? Optional.of(all.value.divide(all.valued))
        : Optional.empty();
  }

  private static BodyValue of(Weight weight, Optional<BigFraction> value) {
    var net = weight.fraction();
    return value
        .map(v -> new BodyValue(net.multiply(v), net, net))
        .orElseGet(() -> new BodyValue(BigFraction.ZERO, BigFraction.ZERO, net));
  }

  /** Two bodies together. */
  public BodyValue plus(BodyValue other) {
    return new BodyValue(
        value.add(other.value), valued.add(other.valued), takeHome.add(other.takeHome));
  }

  /** Whether nine tenths of the take-home, and so the value, are known. */
  public boolean isEnough() {
    return takeHome.signum() > 0 && valued.compareTo(takeHome.multiply(ENOUGH)) >= 0;
  }
}
