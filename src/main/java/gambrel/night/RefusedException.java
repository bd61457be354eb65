package gambrel.night;

/** The run cannot start: bad usage, or a shop folder that cannot be read. */
public final class RefusedException extends Exception {
  private static final long serialVersionUID = 1L;

  /** With the reason as a sentence. */
  public RefusedException(String why) {
    super(why);
  }
}
