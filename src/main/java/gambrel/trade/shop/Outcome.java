package gambrel.trade.shop;

/** What became of a body as a whole. */
public enum Outcome {
  /** Cut in the usual way. */
  CUT,
  /** Left as it hung. */
  WHOLE,
  /** Found unfit for food. */
  CONDEMNED,
  /** Entered by mistake or withdrawn. */
  CANCELLED
}
