package gambrel.intake;

/**
 * A text that a regular expression may look at only so often: some expressions need more steps than
 * there is time. Steps are counted rather than seconds, so that every machine decides alike.
 */
final class PatientText implements CharSequence {
  private static final int MOST_STEPS = 5_000_000;

  private final CharSequence text;
  private int steps;

  PatientText(CharSequence text) {
    this.text = text;
  }

  /** Too many steps. */
  static final class OutOfPatience extends RuntimeException {
    private OutOfPatience() {
      super(null, null, false, false);
    }
  }

  @Override
  public char charAt(int index) {
    if (++steps > MOST_STEPS) {
      throw new OutOfPatience();
    }
    return text.charAt(index);
  }

  @Override
  public int length() {
    return text.length();
  }

  @Override
  public CharSequence subSequence(int start, int end) {
    return text.subSequence(start, end);
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
