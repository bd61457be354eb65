package gambrel.trade.balance;

import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Item;
import gambrel.trade.measure.Groups;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Finds the rail weights that count. Weights of smaller parts replace the weight of a part only if
 * they are all of them that the body has; else the greater part stands and they are beyond it.
 * Weights of one step for different sides of a body add up.
 */
final class RailResolver {
  private final HungTree hung;
  private final int head;
  private final Set<String> measured = new LinkedHashSet<>();

  /** For a body and those of its rail weighings that are compared. */
  RailResolver(HungTree.Cache trees, BodyWeighings body, List<Weighing> compared) {
    this.head = body.body().head();
    // Left and right are apart only if every compared weighing names its side.
    this.hung = trees.of(body.tree(), compared.stream().map(Weighing::item));
    // Coverage is counted in the smallest hung parts, which make up all parts above them.
    compared.stream().map(this::part).filter(hung::isSmallest).forEach(measured::add);
    measured.addAll(hung.smallest());
  }

  /** The part that a weighing counts for. */
  private String part(Weighing weighing) {
    return hung.part(weighing.item());
  }

  /** The number of a part that the body, or the whole mob, has. */
  private int total(String part) {
    return count(part) * head;
  }

  private int count(String part) {
    return hung.tree().find(part).map(Item::count).orElse(1);
  }

  /**
   * Later rail weights laid over earlier ones.
   *
   * @param cover each part's later weight, else its earlier one
   * @param ageing the sums of both weights of the parts that were weighed again; empty if the
   *     earlier weight of one is unknown, or known only together with others
   */
  record Replaced(RailWeights cover, Optional<Rail.Ageing> ageing) {
    static Replaced earlier(RailWeights cover) {
      return new Replaced(cover, Optional.of(Rail.Ageing.NONE));
    }

    Replaced and(Replaced other) {
      return new Replaced(
          cover.and(other.cover), ageing.flatMap(one -> other.ageing.map(one::and)));
    }
  }

  /** The weighings of one step that count. */
  RailWeights standing(Step step, List<Weighing> weighings) {
    var pieces = new HashMap<String, RailWeights.PartWeight>();
    Groups.inOrder(weighings.stream(), this::part)
        .forEach(
            (part, list) -> {
              int number = list.stream().mapToInt(w -> w.number(total(w.item()))).sum();
              pieces.put(part, new RailWeights.PartWeight(part, step, number, list));
            });
    return standing(CutTree.ROOT, pieces);
  }

  private RailWeights standing(String part, Map<String, RailWeights.PartWeight> pieces) {
    var below = RailWeights.NONE;
    for (String child : hung.children(part)) {
      // Only weighed parts and the parts above them are visited; a tree has many others.
      if (pieces.keySet().stream().anyMatch(weighed -> hung.tree().isUnder(weighed, child))) {
        below = below.and(standing(child, pieces));
      }
    }
    var own = pieces.get(part);
    if (own == null) {
      return below;
    }
    var whole = new RailWeights(List.of(own));
    if (fits(whole.and(below))) {
      return whole.and(below);
    }
    // The parts below must be all that the body has, neither fewer nor more.
    boolean isAll = coverage(below).equals(coverage(part, total(part)));
    return isAll ? below : whole.over(below);
  }

  private boolean fits(RailWeights cover) {
    return coverage(cover).entrySet().stream()
        .allMatch(e -> e.getValue().compareTo(BigFraction.of(total(e.getKey()))) <= 0);
  }

  /** {@code earlier}, with {@code later} in place of each part that it covers completely. */
  Replaced replace(RailWeights earlier, RailWeights later) {
    return replace(CutTree.ROOT, earlier, later);
  }

  private Replaced replace(String part, RailWeights earlier, RailWeights later) {
    if (later.isEmpty()) {
      return Replaced.earlier(earlier);
    }
    if (covers(later, earlier)) {
      return replaced(earlier, later);
    }
    if (earlier.pieces().stream().anyMatch(piece -> piece.item().equals(part))) {
      return Replaced.earlier(earlier);
    }
    var all = Replaced.earlier(RailWeights.NONE);
    for (String child : hung.children(part)) {
      all = all.and(replace(child, under(child, earlier), under(child, later)));
    }
    return all;
  }

  private Replaced replaced(RailWeights earlier, RailWeights later) {
    boolean known = coverage(earlier).equals(coverage(later));
    return new Replaced(
        later,
        known
            ? Optional.of(
                new Rail.Ageing(earlier.weight().orElseThrow(), later.weight().orElseThrow()))
            : Optional.empty());
  }

  private RailWeights under(String part, RailWeights cover) {
    return new RailWeights(
        cover.pieces().stream().filter(piece -> hung.tree().isUnder(piece.item(), part)).toList());
  }

  private boolean covers(RailWeights cover, RailWeights other) {
    var covered = coverage(cover);
    return coverage(other).entrySet().stream()
        .allMatch(
            e -> covered.getOrDefault(e.getKey(), BigFraction.ZERO).compareTo(e.getValue()) >= 0);
  }

  /** The number of each of the smallest hung parts that some rail weights cover. */
  Map<String, BigFraction> coverage(RailWeights cover) {
    var coverage = new HashMap<String, BigFraction>();
    for (var piece : cover.pieces()) {
      coverage(piece.item(), piece.number())
          .forEach((part, number) -> coverage.merge(part, number, BigFraction::add));
    }
    return coverage;
  }

  /** As above, of {@code number} of one part. */
  private Map<String, BigFraction> coverage(String part, int number) {
    var coverage = new HashMap<String, BigFraction>();
    for (String below : measured) {
      if (hung.tree().isUnder(below, part)) {
        coverage.put(below, BigFraction.of((long) number * count(below), count(part)));
      }
    }
    return coverage;
  }
}
