package gambrel.trade.decision;

import gambrel.trade.measure.FileWord;

/** Why a body waits, in the order in which reasons are listed. */
public enum ReasonCode implements FileWord {
  /** A rail weight that the shop takes is missing. */
  RAIL_MISSING,
  /** Hot and cold cover different parts. */
  PARTS_MISSING,
  /** More came out than went in. */
  LOSS_NEGATIVE,
  /** More was lost than the shop accepts. */
  LOSS_HIGH,
  /** Less came of it than is usual, where the loss is not tested. */
  HOME_LOW,
  /** Rail weighings beyond what the body has. */
  RAIL_TWICE,
  /** A row of the shop folder that could concern it cannot be read. */
  ROW_UNREAD,
  /** A row that names the body, or a batch of it, is set aside. */
  ROW_SET_ASIDE,
  /** One of its batches does not balance. */
  BATCH_OUT,
  /** One of its batches is late. */
  BATCH_LATE,
  /** Its shares do not add up. */
  SHARES,
  /** The quantity of a charge is not known. */
  CHARGE_UNKNOWN,
  /** A scale that it, or a batch of it, was weighed on failed a test. */
  SCALE_FAILED,
  /** One of its batches is open, so the body is open. */
  BATCH_OPEN,
  /** It is cut in part, so it is open. */
  PART_CUT;

  /** Whether a release can cover it. */
  public boolean isReleasable() {
    return this != SHARES && this != CHARGE_UNKNOWN && this != ROW_UNREAD;
  }
}
