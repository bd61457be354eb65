package gambrel.balance;

import gambrel.cuts.CutTree;
import gambrel.cuts.Item;
import gambrel.cuts.Kind;
import gambrel.weighing.Weighing;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The parts that a body hangs in, as its weighings name them. Where every part is keyed left or
 * right, the two sides are followed apart; otherwise left and right count as the plain part.
 */
final class HungParts {
  private static final List<String> LABELS = List.of("left-", "right-");

  /** They hang whatever kind a shop's own cuts give them. */
  private static final Set<String> SIDES_AND_QUARTERS =
      Set.of("side", "forequarter", "hindquarter");

  private final CutTree tree;
  private final int head;
  private final boolean apart;
  private final Set<String> measured = new LinkedHashSet<>();

  HungParts(CutTree tree, int head, Collection<Weighing> railWeighings) {
    this.tree = tree;
    this.head = head;
    this.apart =
        railWeighings.stream()
            .map(Weighing::item)
            .filter(item -> !item.equals(tree.root().id()))
            .allMatch(this::isLabelled);
    // Coverage is counted in the smallest hung parts; those above them are made of these.
    railWeighings.stream().map(this::part).filter(this::isSmallest).forEach(measured::add);
    tree.items().stream()
        .map(Item::id)
        .filter(item -> isHung(item) && isSmallest(item))
        .forEach(measured::add);
  }

  /** The part that a weighing counts for. */
  String part(Weighing weighing) {
    return apart ? weighing.item() : plain(weighing.item());
  }

  String root() {
    return tree.root().id();
  }

  /** How many of a part the body, or the whole mob, has. */
  int total(String part) {
    return count(part) * head;
  }

  /** How many of its part a weighing takes up. */
  int number(Weighing weighing) {
    return weighing.number(total(weighing.item()));
  }

  private int count(String part) {
    return tree.find(part).map(Item::count).orElse(1);
  }

  /** The parts below {@code part} under which something may have been weighed. */
  List<String> children(String part) {
    return tree.children(part).stream().map(Item::id).filter(this::isFollowed).toList();
  }

  /** How many of each measured part {@code number} of {@code part} take up. */
  Map<String, BigFraction> coverage(String part, int number) {
    var coverage = new HashMap<String, BigFraction>();
    for (String below : measured) {
      if (tree.isUnder(below, part)) {
        coverage.put(below, BigFraction.of((long) number * count(below), count(part)));
      }
    }
    return coverage;
  }

  boolean isUnder(String part, String above) {
    return tree.isUnder(part, above);
  }

  private boolean isSmallest(String part) {
    return children(part).stream().noneMatch(this::isHung);
  }

  private boolean isHung(String item) {
    return isFollowed(item)
        && (SIDES_AND_QUARTERS.contains(plain(item))
            || tree.find(item).orElseThrow().kind() == Kind.CARCASE);
  }

  private boolean isFollowed(String item) {
    return apart ? !hasLabelledForm(item) : !isLabelled(item);
  }

  private boolean isLabelled(String item) {
    return !plain(item).equals(item);
  }

  private boolean hasLabelledForm(String item) {
    return LABELS.stream().anyMatch(label -> tree.find(label + item).isPresent());
  }

  private String plain(String item) {
    for (String label : LABELS) {
      if (item.startsWith(label)) {
        String plain = item.substring(label.length());
        return tree.find(plain).isPresent() ? plain : item;
      }
    }
    return item;
  }
}
