package gambrel.trade.notice;

import gambrel.trade.measure.FileWord;

/** The consequence of a notice, worst first. */
public enum Severity implements FileWord {
  /** Something of the night was not done. */
  STOP,
  /** A statement or a row waits for a person. */
  HOLD,
  /** Done, with a remark that a person should read. */
  MARK,
  /** For the record. */
  NOTE
}
