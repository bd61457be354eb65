package gambrel.balance;

import gambrel.cuts.CutTree;
import gambrel.cuts.Item;
import gambrel.cuts.Kind;
import gambrel.shop.Body;
import gambrel.shop.Step;
import gambrel.weighing.Weighing;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * The weighings that are a body's own: all that name it and move mass, but for packs of a batch. Every
 * list is earliest first.
 */
public final class BodyWeighings {
  private final Body body;
  private final CutTree tree;
  private final List<Weighing> named;
  private volatile Sorted sorted;

  /**
   * Keeps those of {@code weighings} that are the body's own.
   *
   * @param tree the cut tree of its species
   * @param weighings all that name the body, earliest first
   */
  public BodyWeighings(Body body, CutTree tree, List<Weighing> weighings) {
    this.body = body;
    this.tree = tree;
    this.named = weighings;
  }

  /** The lists that are asked for again and again. */
  private record Sorted(
      List<Weighing> all, List<Weighing> cuts, Map<Step, List<Weighing>> bySteps) {}

  private Sorted sorted() {
    var known = sorted;
    if (known == null) {
      known = sort();
      sorted = known;
    }
    return known;
  }

  private Sorted sort() {
    var all = named.stream().filter(w -> w.ofBody() && w.step().movesMass()).toList();
    var cuts = all.stream().filter(w -> w.step().isCutting() && !isOffal(w)).toList();
    var bySteps = new EnumMap<Step, List<Weighing>>(Step.class);
    all.forEach(w -> bySteps.put(w.step(), List.of()));
    bySteps.replaceAll((step, list) -> all.stream().filter(w -> w.step() == step).toList());
    return new Sorted(all, cuts, bySteps);
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
    return sorted().all();
  }

  /** Those of one step. */
  public List<Weighing> of(Step step) {
    return sorted().bySteps().getOrDefault(step, List.of());
  }

  /** Those on the rail. */
  public List<Weighing> rail() {
    return all().stream().filter(w -> w.step().isRail()).toList();
  }

  /** Packs, tubs that go into a batch, and bins: what left the body for good. */
  public List<Weighing> out() {
    return all().stream().filter(BodyWeighings::isOut).toList();
  }

  /** Block, pack, tub and bin weighings that are not offal. */
  public List<Weighing> cuts() {
    return sorted().cuts();
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
