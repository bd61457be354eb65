package gambrel.trade.shop;

/** The result for a body as a whole. */
public enum Outcome {
  /** Cut in the usual way. */
  CUT,
  /** Taken home as it hung. */
  WHOLE,
  /** Found unfit for food. */
  CONDEMNED,
  /** Entered by mistake or withdrawn. */
  CANCELLED
}
