package gambrel.trade.decision;

import gambrel.trade.measure.FileWord;

/** The state of a body. */
public enum State implements FileWord {
  /** Still being weighed. */
  OPEN,
  /** Finished, and waits for a person. */
  HELD,
  /** Finished; its statements go out. */
  ISSUED,
  /** Finished; the shop's own, no statement. */
  CLOSED,
  /** Entered by mistake or withdrawn. */
  CANCELLED;

  /** Whether a body is finished and needs no decision by a person. */
  public boolean isSettled() {
    return this == ISSUED || this == CLOSED;
  }
}
