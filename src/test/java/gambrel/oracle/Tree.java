package gambrel.oracle;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** One species' tree with the questions that the figures ask of it. */
final class Tree {
  static final String ROOT = "carcase";

  private static final Set<String> HUNG = Set.of("side", "forequarter", "hindquarter");

  private final Map<String, TreeSource.Node> nodes = new LinkedHashMap<>();
  private final Map<String, List<String>> hung = new HashMap<>();
  private final Map<String, Integer> order = new HashMap<>();

  Tree(List<TreeSource.Node> items) {
    for (var node : items) {
      order.put(node.item(), nodes.size());
      nodes.put(node.item(), node);
      if (isHung(node.item())) {
        hung.computeIfAbsent(node.parent(), parent -> new ArrayList<>()).add(node.item());
      }
    }
  }

  List<String> items() {
    return new ArrayList<>(nodes.keySet());
  }

  boolean has(String item) {
    return nodes.containsKey(item);
  }

  String kind(String item) {
    return nodes.get(item).kind();
  }

  String parent(String item) {
    return nodes.get(item).parent();
  }

  int count(String item) {
    return nodes.get(item).count();
  }

  int order(String item) {
    return order.get(item);
  }

  /** Whether {@code item} is {@code ancestor} or lies under it. */
  boolean isUnder(String item, String ancestor) {
    for (var at = item; has(at); at = parent(at)) {
      if (at.equals(ancestor)) {
        return true;
      }
    }
    return false;
  }

  /** Child parts that hang on the rail: sides and quarters. */
  List<String> hungChildren(String item) {
    return hung.getOrDefault(item, List.of());
  }

  private static boolean isHung(String item) {
    return HUNG.contains(item.replaceFirst("^(left|right)-", ""));
  }
}
