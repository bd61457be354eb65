package gambrel.month.yields;

import gambrel.balance.BodyBalance;
import gambrel.balance.Drawn;
import gambrel.cuts.CutTree;
import gambrel.cuts.Item;
import gambrel.cuts.Kind;
import gambrel.cuts.Species;
import gambrel.measure.Weight;
import gambrel.month.Ratio;
import gambrel.month.Spread;
import gambrel.reckoning.BodyAccount;
import gambrel.shop.Step;
import gambrel.weighing.Weighing;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What went home or into tubs of one primal, as a share of the weight into the boning room.
 *
 * @param species the species
 * @param primal the first part below side and quarter; an item without a quarter is of no primal
 * @param month all weight over all weight, of the bodies that have the primal
 * @param before the bodies of the twelve months before, in per cent
 */
public record PrimalShare(Species species, Item primal, Ratio month, Optional<Spread> before) {
  private static final Drawn<BodyBalance, Map<String, Ratio>> SHARES =
      new Drawn<>(PrimalShare::shares);

  static List<PrimalShare> of(
      Species species, List<BodyAccount> month, List<BodyAccount> before) {
    if (month.isEmpty()) {
      return List.of();
    }
    var tree = month.get(0).balance().weighings().tree();
    var ofMonth = byPrimal(month);
    var ofBefore = byPrimal(before);
    return tree.items().stream()
        .filter(item -> ofMonth.containsKey(item.id()))
        .map(
            item ->
                new PrimalShare(
                    species,
                    item,
                    Ratio.sum(ofMonth.get(item.id())),
                    Spread.ofPercent(ofBefore.getOrDefault(item.id(), List.of()))))
        .toList();
  }

  /** The first part on the way down that does not hang, if a hung part of the body is above it. */
  static Optional<Item> primal(CutTree tree, String item) {
    if (tree.find(item).isEmpty()) {
      return Optional.empty();
    }
    return tree.path(item).stream()
        .filter(part -> part.kind() != Kind.CARCASE)
        .findFirst()
        .filter(part -> !part.parent().equals(CutTree.ROOT));
  }

  /** The shares of those bodies that have it, by the id of the primal. */
  private static Map<String, List<Ratio>> byPrimal(List<BodyAccount> accounts) {
    var shares = new HashMap<String, List<Ratio>>();
    for (var account : accounts) {
      SHARES
          .of(account.balance())
          .forEach((id, share) -> shares.computeIfAbsent(id, p -> new ArrayList<>()).add(share));
    }
    return shares;
  }

  /** By the id of the primal: an item takes long to look up. */
  private static Map<String, Ratio> shares(BodyBalance body) {
    var weights = new HashMap<String, Weight>();
    var tree = body.weighings().tree();
    body.cuts().stream()
        .filter(PrimalShare::leaves)
        .forEach(
            w -> primal(tree, w.item()).ifPresent(p -> weights.merge(p.id(), w.net(), Weight::plus)));
    var shares = new HashMap<String, Ratio>();
    weights.forEach(
        (primal, weight) ->
            Ratio.ofOne(Optional.of(weight).filter(w -> !w.isZero()), body.boning())
                .ifPresent(ratio -> shares.put(primal, ratio)));
    return shares;
  }

  private static boolean leaves(Weighing weighing) {
    return weighing.step() == Step.PACK || weighing.step() == Step.TUB && weighing.inBatch();
  }
}
