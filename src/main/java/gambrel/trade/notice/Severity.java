package gambrel.trade.notice;

import gambrel.trade.measure.FileWord;

/** The consequence of a notice, worst first. */
public enum Severity implements FileWord {
  /** Part of the night's work was not done. */
  STOP,
  /** A statement or a row waits for a person. */
  HOLD,
  /** Done, but a person should read the notice. */
  MARK,
  /** For the record. */
  NOTE
}
