package gambrel.trade.sending;

import gambrel.trade.measure.FileWord;

/** What became of a statement that was handed to a mail server. */
public enum SentState implements FileWord {
  /** The server took it. */
  SENT,
  /** The server, or the way to it, refused it. */
  REFUSED,
  /** It was about to be handed over, or handed over without an answer. */
  UNKNOWN;
}
