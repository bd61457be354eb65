package gambrel.trade.cuts;

import java.util.List;

/**
 * A tree with items added or replaced, and the items that did not fit.
 *
 * @param tree the tree with every item that fits
 * @param rejected the other items; an item of the tree whose replacement is rejected stays
 */
public record Extension(CutTree tree, List<Rejected> rejected) {
  /** Copies the list. */
  public Extension {
    rejected = List.copyOf(rejected);
  }

  /** An item that is left out of a tree, with the reason. */
  public record Rejected(Item item, Flaw flaw) {}

  /** Why an item does not fit into a tree. */
  public enum Flaw {
    /** The parent is in neither the tree nor the accepted items. */
    NO_PARENT,
    /** The item would come from itself. */
    CYCLE,
    /** An earlier item of the same list has the same id. */
    TWICE,
    /** The carcase has a parent or another kind, or another item has no parent. */
    ROOT
  }
}
