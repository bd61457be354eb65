package gambrel.insight.month.bodies;

import gambrel.trade.balance.BodyBalance;
import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Kind;
import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/** How a body was cut: which items were packed on the bone, and what came of each primal. */
public final class CutStyle {
  /** A smaller share of the weight into the boning room does not make a style. */
  private static final BigFraction LEAST = BigFraction.of(1, 100);

  private CutStyle() {}

  /** The ids of the items packed on the bone, joined by blanks; empty for a body boned out. */
  public static String of(BodyBalance body) {
    var packed = new TreeMap<String, Weight>();
    for (var weighing : body.weighings().all()) {
      if (isTakenHome(weighing) && body.weighings().tree().facts(weighing.item()).isOnBone()) {
        packed.merge(weighing.item(), weighing.net(), Weight::plus);
      }
    }
    var least = body.boning().map(w -> w.fraction().multiply(LEAST)).orElse(BigFraction.ZERO);
    packed.values().removeIf(weight -> weight.fraction().compareTo(least) < 0);
    return String.join(" ", packed.keySet());
  }

  /**
   * What went home or into tubs of each primal, as a share of the weight into the boning room, by
   * the primal's id. The primal of an item is the first part below side and quarter; items that
   * belong to no side or quarter are left out.
   */
  static Map<String, Share> primals(BodyBalance body) {
    var weights = new HashMap<String, Weight>();
    for (var weighing : body.cuts()) {
      if (isTakenHome(weighing)) {
        primal(body.weighings().tree(), weighing.item())
            .ifPresent(p -> weights.merge(p.id(), weighing.net(), Weight::plus));
      }
    }
    weights.values().removeIf(Weight::isZero);
    var shares = new HashMap<String, Share>();
    weights.forEach(
        (primal, weight) ->
            Share.of(Optional.of(weight), body.boning()).ifPresent(s -> shares.put(primal, s)));
    return shares;
  }

  /** The first part on the way down that is no side or quarter, if there is one above it. */
  private static Optional<Item> primal(CutTree tree, String item) {
    return tree.find(item).stream()
        .flatMap(known -> tree.path(known.id()).stream())
        .filter(part -> part.kind() != Kind.CARCASE)
        .findFirst()
        .filter(part -> !part.parent().equals(CutTree.ROOT));
  }

  private static boolean isTakenHome(Weighing weighing) {
    return weighing.step() == Step.PACK || weighing.step() == Step.TUB && weighing.inBatch();
  }
}
