package gambrel.trade.rows;

/** What becomes of a row; each row has exactly one. */
public enum RowDisposition {
  /** Met before with the same content. */
  REPEAT,
  /** Cancels a weighing, or is cancelled. */
  VOID,
  /** Waits for a person. */
  SET_ASIDE,
  /** Read and understood. */
  USED
}
