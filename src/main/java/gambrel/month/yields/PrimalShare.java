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
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What went home or into tubs of one primal, as a share of the weight into the boning room.
 *
 * @param species the species
 * @param primal the first part below side and quarter; an item without a quarter is of no primal
 * @param month all weight over all weight, of the bodies that have the primal
 * @param before the bodies of the twelve months before, in per cent
 */
public record PrimalShare(Species species, Item primal, Ratio month, Optional<Spread> before) {
  private static final Drawn<BodyBalance, Map<String, Share>> SHARES =
      new Drawn<>(PrimalShare::shares);

  /** One body's share, with the per cent that twelve months will ask for. */
  private record Share(Ratio ratio, BigFraction percent) {
    static Share of(Ratio ratio) {
      return new Share(ratio, ratio.percent().orElseThrow());
    }
  }

  static List<PrimalShare> of(
      Species species, List<BodyAccount> month, List<BodyAccount> before) {
    if (month.isEmpty()) {
      return List.of();
    }
    var tree = month.get(0).balance().weighings().tree();
    return tree.items().stream()
        .filter(item -> primal(tree, item.id()).filter(item::equals).isPresent())
        .map(item -> of(species, item, month, before))
        .filter(share -> share.month().isKnown())
        .toList();
  }

  private static PrimalShare of(
      Species species, Item primal, List<BodyAccount> month, List<BodyAccount> before) {
    var percents = of(primal, before).stream().map(Share::percent).toList();
    var shares = of(primal, month).stream().map(Share::ratio).toList();
    return new PrimalShare(species, primal, Ratio.sum(shares), Spread.of(percents));
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

  /** Of those bodies that have it. */
  private static List<Share> of(Item primal, List<BodyAccount> accounts) {
    return accounts.stream()
        .flatMap(account -> Stream.ofNullable(SHARES.of(account.balance()).get(primal.id())))
        .toList();
  }

  /** By the id of the primal: an item takes long to look up. */
  private static Map<String, Share> shares(BodyBalance body) {
    var weights = new HashMap<String, Weight>();
    var tree = body.weighings().tree();
    body.cuts().stream()
        .filter(PrimalShare::leaves)
        .forEach(
            w -> primal(tree, w.item()).ifPresent(p -> weights.merge(p.id(), w.net(), Weight::plus)));
    var shares = new HashMap<String, Share>();
    weights.forEach(
        (primal, weight) ->
            Ratio.ofOne(Optional.of(weight).filter(w -> !w.isZero()), body.boning())
                .ifPresent(ratio -> shares.put(primal, Share.of(ratio))));
    return shares;
  }

  private static boolean leaves(Weighing weighing) {
    return weighing.step() == Step.PACK || weighing.step() == Step.TUB && weighing.inBatch();
  }
}
