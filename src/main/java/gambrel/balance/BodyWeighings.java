package gambrel.balance;

import gambrel.cuts.CutTree;
import gambrel.cuts.Item;
import gambrel.cuts.Kind;
import gambrel.shop.Body;
import gambrel.shop.Step;
import gambrel.weighing.Weighing;
import java.util.List;
import java.util.function.Predicate;

/**
 * The weighings that are a body's own: all that name it and move mass, but for packs of a batch.
 *
 * @param body the body
 * @param tree the cut tree of its species
 * @param all earliest first
 */
public record BodyWeighings(Body body, CutTree tree, List<Weighing> all) {
  /** Keeps those of {@code all} that are the body's own. */
  public BodyWeighings {
    all = all.stream().filter(w -> w.ofBody() && w.step().movesMass()).toList();
  }

  /** Those of one step. */
  public List<Weighing> of(Step step) {
    return all.stream().filter(w -> w.step() == step).toList();
  }

  /** Those on the rail. */
  public List<Weighing> rail() {
    return all.stream().filter(w -> w.step().isRail()).toList();
  }

  /** Packs, tubs that go into a batch, and bins: what left the body for good. */
  public List<Weighing> out() {
    return all.stream().filter(BodyWeighings::isOut).toList();
  }

  /** Block, pack, tub and bin weighings that are not offal. */
  public List<Weighing> cuts() {
    return all.stream().filter(w -> w.step().isCutting() && !isOffal(w)).toList();
  }

  /** Whether a weighing is of offal. */
  public boolean isOffal(Weighing weighing) {
    return kind(weighing) == Kind.OFFAL;
  }

  /** The kind of a weighing's item. */
  public Kind kind(Weighing weighing) {
    return tree.find(weighing.item()).map(Item::kind).orElse(Kind.WASTE);
  }

  /** The weighings of {@code out()} that are no offal. */
  List<Weighing> outButOffal() {
    return out().stream().filter(Predicate.not(this::isOffal)).toList();
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
