package gambrel.trade.decision;

import java.util.Locale;

/** The state of a body. */
public enum State {
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

  /** The word that data files print. */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }
}
