package gambrel.insight.cause;

/** Logarithms of odds as the scores of suggestions add them up. */
final class Odds {
  /** Twice the natural logarithm of 2, in thousandths. */
  private static final long OF_TWO = 1386;

  private Odds() {}

  /**
   * Twice the natural logarithm of a number above zero, in hundredths. Between powers of two it is
   * interpolated, and at most 12 too low.
   */
  static long of(long number) {
    int bits = Long.SIZE - 1 - Long.numberOfLeadingZeros(number);
    long power = 1L << bits;
    long hundredths = 100L * bits + (number - power) * 100 / power;
    return hundredths * OF_TWO / 1000;
  }
}
