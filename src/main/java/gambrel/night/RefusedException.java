package gambrel.night;

/** The run cannot start: the command line is wrong, or the shop folder cannot be read. */
public final class RefusedException extends Exception {
  private static final long serialVersionUID = 1L;

  /** A refusal with its reason as a sentence. */
  public RefusedException(String why) {
    super(why);
  }
}
