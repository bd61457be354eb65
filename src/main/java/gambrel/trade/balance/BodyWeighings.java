package gambrel.trade.balance;

import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Kind;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;

/**
 * A body's own weighings: every weighing that names it and moves mass, except packs of a batch.
 * Every list is earliest first.
 *
 * @param body the body
 * @param tree the cut tree of its species
 * @param all every own weighing
 */
public record BodyWeighings(Body body, CutTree tree, List<Weighing> all) {
  /** Selects the own weighings among those that name the body, earliest first. */
  public BodyWeighings {
    all = all.stream().filter(w -> w.ofBody() && w.step().movesMass()).toList();
  }

  private List<Weighing> select(Predicate<Weighing> which) {
    return all.stream().filter(which).toList();
  }

  /** The own weighings of one step. */
  public List<Weighing> of(Step step) {
    return of(step, weighing -> true);
  }

  /** Those of one step that fit. */
  public List<Weighing> of(Step step, Predicate<Weighing> which) {
    return select(weighing -> weighing.step() == step && which.test(weighing));
  }

  /** The hot, cold and aged weighings. */
  public List<Weighing> rail() {
    return select(weighing -> weighing.step().isRail());
  }

  /** Packs, tubs that go into a batch, and bins. */
  public List<Weighing> out() {
    return select(BodyWeighings::isOut);
  }

  /** Block, pack, tub and bin weighings that are not offal. */
  public List<Weighing> cuts() {
    return select(w -> w.step().isCutting() && !isOffal(w));
  }

  /** The items with vertebrae in them that packs are keyed as, in tree order. */
  public List<String> packedWithVertebra() {
    var items = of(Step.PACK).stream().map(Weighing::item).distinct();
    return items
        .filter(item -> tree.facts(item).hasVertebra())
        .sorted(Comparator.comparingInt(tree::order))
        .toList();
  }

  /** Whether a weighing is of offal. */
  public boolean isOffal(Weighing weighing) {
    return kind(weighing) == Kind.OFFAL;
  }

  /** Whether a weighing is of meat or trim. */
  public boolean isMeat(Weighing weighing) {
    return kind(weighing).isMeat();
  }

  /** The kind of a weighing's item; waste if the tree lacks the item. */
  public Kind kind(Weighing weighing) {
    return tree.find(weighing.item()).map(Item::kind).orElse(Kind.WASTE);
  }

  /** The kind that a bin counts as: bone, fat, or waste for everything else. */
  public Kind binKind(Weighing bin) {
    var kind = kind(bin);
    return kind.isBoneOrFat() ? kind : Kind.WASTE;
  }

  /** Whether a weighing is a pack, a bin, or a tub that goes into a batch. */
  static boolean isOut(Weighing weighing) {
    return switch (weighing.step()) {
      case PACK, BIN -> true;
      case TUB -> weighing.inBatch();
      default -> false;
    };
  }
}
