package gambrel.month.yields;

import gambrel.balance.BodyBalance;
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
import java.util.List;
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
    var figure = new Ratio.Figure(body -> weight(body, primal), BodyBalance::boning);
    return new PrimalShare(species, primal, figure.of(month), Yields.spread(figure, before));
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

  private static Optional<Weight> weight(BodyBalance body, Item primal) {
    var tree = body.weighings().tree();
    var those =
        body.cuts().stream()
            .filter(PrimalShare::leaves)
            .filter(w -> tree.isUnder(w.item(), primal.id()))
            .toList();
    return Optional.of(Weighing.total(those)).filter(weight -> !weight.isZero());
  }

  private static boolean leaves(Weighing weighing) {
    return weighing.step() == Step.PACK || weighing.step() == Step.TUB && weighing.inBatch();
  }
}
