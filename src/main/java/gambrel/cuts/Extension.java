package gambrel.cuts;

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
  public record Rejected(Item item, Flaw flaw) {
    /** Item and flaw in one sentence. */
    public String message() {
      return item.id() + " " + flaw.words;
    }
  }

  /** Why an item does not fit into a tree. */
  public enum Flaw {
    /** The parent is in neither the tree nor the accepted items. */
    NO_PARENT("comes from an item that is not in the tree"),
    /** The item would come from itself. */
    CYCLE("comes from itself, directly or by way of other items"),
    /** An earlier item of the same list has the same id. */
    TWICE("is listed a second time"),
    /** The whole body has a parent or another kind, or another item has no parent. */
    ROOT("is not the root: only carcase, of kind carcase, has no parent");

    private final String words;

    Flaw(String words) {
      this.words = words;
    }
  }
}
