package gambrel.trade.balance;

import java.util.Locale;

/** The state of a batch. */
public enum BatchState {
  /** Not packed yet, or still being weighed. */
  OPEN,
  /** Finished; no meat went in, or the loss is below −U or above the limit. */
  OUT,
  /** Finished; the loss is within its limits. */
  BALANCED;

  /** The word that data files print. */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }
}
