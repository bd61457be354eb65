package gambrel.trade.balance;

import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Item;
import gambrel.trade.weighing.Weighing;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/** The parts that a body hangs in, as its weighings name them. */
final class HungParts {
  private final HungTree hung;
  private final int head;
  private final Set<String> measured = new LinkedHashSet<>();

  HungParts(HungTree.Cache trees, CutTree tree, int head, Collection<Weighing> railWeighings) {
    this.head = head;
    this.hung = trees.of(tree, HungTree.isApart(tree, railWeighings.stream().map(Weighing::item)));
    // Coverage is counted in the smallest hung parts, which make up all parts above them.
    railWeighings.stream().map(this::part).filter(hung::isSmallest).forEach(measured::add);
    measured.addAll(hung.smallest());
  }

  /** The part that a weighing counts for. */
  String part(Weighing weighing) {
    return hung.part(weighing.item());
  }

  String root() {
    return hung.tree().root().id();
  }

  /** The number of a part that the body, or the whole mob, has. */
  int total(String part) {
    return count(part) * head;
  }

  /** The number of its part that a weighing covers. */
  int number(Weighing weighing) {
    return weighing.number(total(weighing.item()));
  }

  private int count(String part) {
    return hung.tree().find(part).map(Item::count).orElse(1);
  }

  /** The parts below {@code part} under which something may have been weighed. */
  List<String> children(String part) {
    return hung.children(part);
  }

  /** The parts in {@code some} and all parts above them. */
  Set<String> above(Collection<String> some) {
    var above = new HashSet<String>();
    for (String part : some) {
      if (hung.tree().find(part).isPresent()) {
        hung.tree().path(part).forEach(item -> above.add(item.id()));
      }
    }
    return above;
  }

  /** The number of each measured part that {@code number} of {@code part} cover. */
  Map<String, BigFraction> coverage(String part, int number) {
    var coverage = new HashMap<String, BigFraction>();
    for (String below : measured) {
      if (isUnder(below, part)) {
        coverage.put(below, BigFraction.of((long) number * count(below), count(part)));
      }
    }
    return coverage;
  }

  boolean isUnder(String part, String above) {
    return hung.tree().isUnder(part, above);
  }
}
