package gambrel.weighing;

/** What becomes of a row; each row has exactly one. */
enum Fate {
  /** Met before with the same content. */
  REPEAT,
  /** Cancels a weighing, or is cancelled. */
  VOID,
  /** Waits for a person. */
  SET_ASIDE,
  /** Read and understood. */
  USED
}
