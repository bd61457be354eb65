package gambrel.trade.cuts;

import java.util.List;

/**
 * A tree with items added or replaced, and the items that did not fit.
 *
 * @param tree the tree with every item that fits
 * @param rejected the rest; a built-in item whose replacement is rejected stays as it was
 */
public record Extension(CutTree tree, List<Rejected> rejected) {
  /** Copies the list. */
  public Extension {
    rejected = List.copyOf(rejected);
  }

  /** An item left out of a tree, and why. */
  public record Rejected(Item item, Flaw flaw) {}

  /** Why an item does not fit into a tree. */
  public enum Flaw {
    /** The parent is in neither the tree nor the accepted items. */
    NO_PARENT,
    /** The item would come from itself. */
    CYCLE,
    /** An earlier item of the same list has the same id. */
    TWICE,
    /** The whole body has a parent or another kind, or another item has no parent. */
    ROOT
  }
}
