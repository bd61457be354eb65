package gambrel.insight.month.yields;

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

/** What came of each primal of a body. */
public final class Primals {
  private Primals() {}

  /**
   * What went home or into tubs of each primal, as a share of the weight into the boning room, by
   * the primal's id. The primal is the first part below side and quarter; an item without a quarter
   * is of no primal.
   */
  public static Map<String, Share> sharesOf(BodyBalance body) {
    var weights = new HashMap<String, Weight>();
    var tree = body.weighings().tree();
    body.cuts().stream()
        .filter(Primals::leaves)
        .forEach(
            w ->
                primal(tree, w.item())
                    .ifPresent(p -> weights.merge(p.id(), w.net(), Weight::plus)));
    var shares = new HashMap<String, Share>();
    weights.forEach(
        (primal, weight) ->
            Share.of(Optional.of(weight).filter(w -> !w.isZero()), body.boning())
                .ifPresent(share -> shares.put(primal, share)));
    return shares;
  }

  /** The first part on the way down that does not hang, if a hung part of the body is above it. */
  private static Optional<Item> primal(CutTree tree, String item) {
    if (tree.find(item).isEmpty()) {
      return Optional.empty();
    }
    return tree.path(item).stream()
        .filter(part -> part.kind() != Kind.CARCASE)
        .findFirst()
        .filter(part -> !part.parent().equals(CutTree.ROOT));
  }

  /** Whether a weighing is of what leaves the bench for people to eat. */
  static boolean leaves(Weighing weighing) {
    return weighing.step() == Step.PACK || weighing.step() == Step.TUB && weighing.inBatch();
  }
}
