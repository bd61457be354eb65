package gambrel.trade.balance;

import gambrel.trade.measure.FileWord;

/** The state of a batch. */
public enum BatchState implements FileWord {
  /** Not packed yet, or still being weighed. */
  OPEN,
  /** Finished; no meat went in, or the loss is below −U or above the limit. */
  OUT,
  /** Finished; the loss is within its limits. */
  BALANCED;
}
