package gambrel.trade.balance;

import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Kind;
import gambrel.trade.cuts.SideLabels;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/**
 * The parts of a cut tree in which bodies hang. If left and right are apart, each side is a part of
 * its own; otherwise left and right count as the plain part. Immutable; made once for all bodies of
 * a species.
 */
final class HungTree {
  /** These hang, even if a shop's own cuts give them another kind. */
  private static final Set<String> SIDES_AND_QUARTERS =
      Set.of(CutTree.SIDE, CutTree.FOREQUARTER, CutTree.HINDQUARTER);

  private final CutTree tree;
  private final boolean apart;
  private final Map<String, List<String>> children = new HashMap<>();
  private final List<String> smallest;

  HungTree(CutTree tree, boolean apart) {
    this.tree = tree;
    this.apart = apart;
    for (var item : tree.items()) {
      children.put(
          item.id(),
          tree.children(item.id()).stream().map(Item::id).filter(this::isFollowed).toList());
    }
    smallest =
        tree.items().stream()
            .map(Item::id)
            .filter(item -> isHung(item) && isSmallest(item))
            .toList();
  }

  CutTree tree() {
    return tree;
  }

  /** The part that a weighing of {@code item} counts for. */
  String part(String item) {
    return apart ? item : plain(tree, item);
  }

  /** The parts directly below {@code part} under which something may have been weighed. */
  List<String> children(String part) {
    return children.getOrDefault(part, List.of());
  }

  /** The hung parts with no hung part below them. */
  List<String> smallest() {
    return smallest;
  }

  boolean isSmallest(String part) {
    return children(part).stream().noneMatch(this::isHung);
  }

  private boolean isHung(String item) {
    return isFollowed(item)
        && (SIDES_AND_QUARTERS.contains(plain(tree, item))
            || tree.find(item).orElseThrow().kind() == Kind.CARCASE);
  }

  private boolean isFollowed(String item) {
    return apart ? !hasLabelledForm(item) : !isLabelled(tree, item);
  }

  private boolean hasLabelledForm(String item) {
    return SideLabels.ALL.stream().anyMatch(label -> tree.find(label + item).isPresent());
  }

  private static boolean isLabelled(CutTree tree, String item) {
    return !plain(tree, item).equals(item);
  }

  private static String plain(CutTree tree, String item) {
    String plain = SideLabels.plain(item);
    return tree.find(plain).isPresent() ? plain : item;
  }

  /** The hung tree of each cut tree, made at its first use. Thread-safe. */
  static final class Cache {
    private final Map<Boolean, Map<CutTree, HungTree>> trees =
        Map.of(true, new ConcurrentHashMap<>(), false, new ConcurrentHashMap<>());

    /** The tree for weighings of these items: apart if all but the carcase say left or right. */
    HungTree of(CutTree tree, Stream<String> items) {
      boolean apart =
          items.filter(item -> !item.equals(CutTree.ROOT)).allMatch(item -> isLabelled(tree, item));
      return trees.get(apart).computeIfAbsent(tree, t -> new HungTree(t, apart));
    }
  }
}
