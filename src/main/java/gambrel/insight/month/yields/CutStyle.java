package gambrel.insight.month.yields;

import gambrel.trade.balance.BodyBalance;
import gambrel.trade.measure.Weight;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Which way a body was cut, so far as bone goes: what it has in its packs on the bone. Bodies are
 * comparable in bone and meat only where that is the same.
 */
public final class CutStyle {
  /** An item that makes up less of the body than this is no way of cutting. */
  private static final BigFraction LEAST = BigFraction.of(1, 100);

  private CutStyle() {}

  /** The items packed on the bone, joined by blanks; empty for a body boned out. */
  public static String of(BodyBalance body) {
    var packed = new TreeMap<String, Weight>();
    for (var weighing : body.weighings().all()) {
      if (Primals.leaves(weighing) && body.weighings().tree().facts(weighing.item()).isOnBone()) {
        packed.merge(weighing.item(), weighing.net(), Weight::plus);
      }
    }
    var least = body.boning().map(w -> w.fraction().multiply(LEAST)).orElse(BigFraction.ZERO);
    packed.values().removeIf(weight -> weight.fraction().compareTo(least) < 0);
    return String.join(" ", packed.keySet());
  }
}
