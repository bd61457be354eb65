package gambrel.trade.rows;

/** The result for a row of an export; each row has exactly one. */
public enum RowDisposition {
  /** An earlier row has the same content. */
  REPEAT,
  /** Cancels a weighing, or is cancelled. */
  VOID,
  /** Waits for a person. */
  SET_ASIDE,
  /** Read and understood. */
  USED
}
