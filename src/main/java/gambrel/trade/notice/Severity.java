package gambrel.trade.notice;

import java.util.Locale;

/** The consequence of a notice, worst first. */
public enum Severity {
  /** Something of the night was not done. */
  STOP,
  /** A statement or a row waits for a person. */
  HOLD,
  /** Done, with a remark that a person should read. */
  MARK,
  /** For the record. */
  NOTE;

  /** The word that data files print. */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }
}
