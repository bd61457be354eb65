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
}
