package gambrel.trade.sending;

import java.util.Locale;

/** What became of a statement that was handed to a mail server. */
public enum SentState {
  /** The server took it. */
  SENT,
  /** The server, or the way to it, refused it. */
  REFUSED,
  /** It was about to be handed over, or handed over without an answer. */
  UNKNOWN;

  /** The word of data files. */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }
}
