package gambrel.cli;

/** Exit codes that come without a run; {@link gambrel.run.Outcome} gives those of runs. */
final class ExitCode {
  /** Nothing for a person to do. */
  static final int DONE = 0;

  /** Failed half-way; the last published state stands. */
  static final int FAILED = 4;

  private ExitCode() {}
}
