package gambrel.trade.shop;

import gambrel.trade.measure.FileWord;

/** The steps at which things are weighed on the way from the rail to the box. */
public enum Step implements FileWord {
  /** On the rail after dressing. */
  HOT,
  /** On the rail after chilling. */
  COLD,
  /** On the rail again, later. */
  AGED,
  /** A piece weighed before it is broken further. */
  BLOCK,
  /** Trim going into a batch. */
  TUB,
  /** Water, seasoning, filler or bought-in fat going into a batch. */
  ADDED,
  /** Packed for the customer or for the shop's counter. */
  PACK,
  /** Bone, fat or waste that is not taken home. */
  BIN,
  /** A test weight. */
  TEST,
  /** Anything else; it takes no part in a balance. */
  OTHER;

  /** Whether the thing hangs on the rail. */
  public boolean isRail() {
    return this == HOT || this == COLD || this == AGED;
  }

  /** Whether a weighing of this step is made while a body is cut. */
  public boolean isCutting() {
    return this == BLOCK || this == TUB || this == PACK || this == BIN;
  }

  /** Whether a weighing of this step takes part in a balance. */
  public boolean movesMass() {
    return this != TEST && this != OTHER;
  }
}
