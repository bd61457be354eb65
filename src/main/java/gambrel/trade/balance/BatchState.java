package gambrel.trade.balance;

import java.util.Locale;

/** Whether a batch is finished, and balances. */
public enum BatchState {
  /** Not packed yet, or still being weighed. */
  OPEN,
  /** Finished, and what came out does not fit what went in. */
  OUT,
  /** Finished. */
  BALANCED;

  /** The word that data files print. */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }
}
