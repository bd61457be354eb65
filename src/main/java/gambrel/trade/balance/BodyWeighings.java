package gambrel.trade.balance;

import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Kind;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * A body's own weighings: every weighing that names it and moves mass, except packs of a batch.
 * Every list is earliest first.
 */
public final class BodyWeighings {
  private final Body body;
  private final CutTree tree;
  private final List<Weighing> all;
  private final List<Weighing> cuts;
  private final List<Weighing> out;
  private final Map<Step, List<Weighing>> bySteps;

  /**
   * Selects the body's own weighings.
   *
   * @param tree the cut tree of its species
   * @param weighings every weighing that names the body, earliest first
   */
  public BodyWeighings(Body body, CutTree tree, List<Weighing> weighings) {
    this.body = body;
    this.tree = tree;
    this.all = select(weighings, w -> w.ofBody() && w.step().movesMass());
    this.cuts = select(all, w -> w.step().isCutting() && !isOffal(w));
    this.out = select(all, BodyWeighings::isOut);
    this.bySteps =
        all.stream()
            .collect(Collectors.groupingBy(Weighing::step, Collectors.toUnmodifiableList()));
  }

  private static List<Weighing> select(List<Weighing> weighings, Predicate<Weighing> which) {
    return weighings.stream().filter(which).collect(Collectors.toUnmodifiableList());
  }

  /** The body. */
  public Body body() {
    return body;
  }

  /** The cut tree of its species. */
  public CutTree tree() {
    return tree;
  }

  /** All own weighings. */
  public List<Weighing> all() {
    return all;
  }

  /** The own weighings of one step. */
  public List<Weighing> of(Step step) {
    return bySteps.getOrDefault(step, List.of());
  }

  /** The hot, cold and aged weighings. */
  public List<Weighing> rail() {
    return select(all, w -> w.step().isRail());
  }

  /** Packs, tubs that go into a batch, and bins. */
  public List<Weighing> out() {
    return out;
  }

  /** Block, pack, tub and bin weighings that are not offal. */
  public List<Weighing> cuts() {
    return cuts;
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
    var kind = kind(weighing);
    return kind == Kind.MEAT || kind == Kind.TRIM;
  }

  /** The kind of a weighing's item; waste if the tree lacks the item. */
  public Kind kind(Weighing weighing) {
    return tree.find(weighing.item()).map(Item::kind).orElse(Kind.WASTE);
  }

  /** The kind that a bin counts as: bone, fat, or waste for everything else. */
  public Kind binKind(Weighing bin) {
    var kind = kind(bin);
    return kind == Kind.BONE || kind == Kind.FAT ? kind : Kind.WASTE;
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
