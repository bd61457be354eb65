package gambrel.oracle;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The hung parts of one body: told apart as left and right where every rail weighing says which it
 * is, else the sides and quarters without a hand.
 */
record Hanging(Tree tree, boolean handed) {

  static Hanging of(Tree tree, List<Row> rail) {
    boolean handed =
        rail.stream().allMatch(row -> row.item.equals(Tree.ROOT) || hasHand(row.item))
            && rail.stream().anyMatch(row -> hasHand(row.item));
    return new Hanging(tree, handed);
  }

  private static boolean hasHand(String item) {
    return item.startsWith("left-") || item.startsWith("right-");
  }

  /** The part that an item is weighed as. */
  String part(String item) {
    return handed || !hasHand(item) ? item : item.substring(item.indexOf('-') + 1);
  }

  /** Parts the part is broken into on the rail. */
  List<String> children(String part) {
    return tree.hungChildren(part).stream()
        .filter(child -> handed ? !tree.has("left-" + child) : !hasHand(child))
        .toList();
  }

  /** How many of the child one of the parent has. */
  BigFraction ratio(String child, String parent) {
    return BigFraction.of(tree.count(child), tree.count(parent));
  }

  /** Whether the part is the other or lies under it, on the rail. */
  boolean isUnder(String part, String other) {
    return part.equals(other) || children(other).stream().anyMatch(child -> isUnder(part, child));
  }
}
