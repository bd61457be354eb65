package gambrel.trade.balance;

import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Kind;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * The weighings that are a body's own: all that name it and move mass, but for packs of a batch.
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
   * Chooses those of {@code weighings} that are the body's own.
   *
   * @param tree the cut tree of its species
   * @param weighings all that name the body, earliest first
   */
  public BodyWeighings(Body body, CutTree tree, List<Weighing> weighings) {
    this.body = body;
    this.tree = tree;
    this.all = those(weighings, w -> w.ofBody() && w.step().movesMass());
    this.cuts = those(all, w -> w.step().isCutting() && !isOffal(w));
    this.out = those(all, BodyWeighings::isOut);
    this.bySteps =
        all.stream()
            .collect(Collectors.groupingBy(Weighing::step, Collectors.toUnmodifiableList()));
  }

  private static List<Weighing> those(List<Weighing> weighings, Predicate<Weighing> which) {
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

  /** All of them. */
  public List<Weighing> all() {
    return all;
  }

  /** Those of one step. */
  public List<Weighing> of(Step step) {
    return bySteps.getOrDefault(step, List.of());
  }

  /** Those on the rail. */
  public List<Weighing> rail() {
    return those(all, w -> w.step().isRail());
  }

  /** Packs, tubs that go into a batch, and bins: what left the body for good. */
  public List<Weighing> out() {
    return out;
  }

  /** Block, pack, tub and bin weighings that are not offal. */
  public List<Weighing> cuts() {
    return cuts;
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

  /**
   * Whether a bin counts as bone, as fat or as waste; waste is whatever is neither bone nor fat.
   */
  public Kind binKind(Weighing bin) {
    var kind = kind(bin);
    return kind == Kind.BONE || kind == Kind.FAT ? kind : Kind.WASTE;
  }

  /** Whether a weighing takes mass off its body for good. */
  static boolean isOut(Weighing weighing) {
    return switch (weighing.step()) {
      case PACK, BIN -> true;
      case TUB -> weighing.inBatch();
      default -> false;
    };
  }
}
