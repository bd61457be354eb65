package gambrel.cli;

/** What the process tells its caller. */
final class ExitCode {
  /** Nothing for a person to do. */
  static final int DONE = 0;

  /** Done, and something waits for a person. */
  static final int WAITING = 1;

  /** Bad usage, or a shop folder that cannot be read. */
  static final int USAGE = 2;

  /** Another run holds the output folder. */
  static final int BUSY = 3;

  /** Failed half-way; the last published state stands. */
  static final int FAILED = 4;

  private ExitCode() {}
}
