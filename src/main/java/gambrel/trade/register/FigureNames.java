package gambrel.trade.register;

/** How the figures of a statement are named in its attachment. */
public final class FigureNames {
  /** Unit of all weights. */
  public static final String UNIT = "unit";

  /** Currency of all charges of the shop. */
  public static final String CURRENCY = "currency";

  /** The customer's own take-home weight. */
  public static final String TAKE_HOME = "take_home";

  /** The customer's weight of an item. */
  public static final String ITEM = "item:";

  /** The customer's number of packs of an item. */
  public static final String PACKS = "packs:";

  /** The customer's part of a batch, or {@code open}. */
  public static final String BATCH = "batch:";

  /** How many animals went into a batch; absent while it is open. */
  public static final String BATCH_BODIES = "batch_bodies:";

  /** A figure of the whole body. */
  public static final String BODY = "body:";

  private FigureNames() {}
}
