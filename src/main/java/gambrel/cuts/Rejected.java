package gambrel.cuts;

/** An item left out of a tree, and why. */
public record Rejected(Item item, Flaw flaw) {

  /** Item and flaw in one sentence. */
  public String message() {
    return item.id() + " " + flaw.words();
  }
}
