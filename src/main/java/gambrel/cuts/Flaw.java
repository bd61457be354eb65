package gambrel.cuts;

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

  /** The flaw as the end of a sentence that starts with the item. */
  public String words() {
    return words;
  }
}
