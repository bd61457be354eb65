package gambrel.demo;

import java.util.List;

/**
 * Reproducible chance in whole numbers, so that every machine throws the same. The generator is
 * SplitMix64 (Steele, Lea and Flood, 2014; constants from memory).
 */
final class Dice {
  private static final long DEMO_SEED = 20260701L;

  private long state;

  /** Dice of their own for a purpose, so that a change elsewhere in the demo moves nothing here. */
  Dice(String purpose) {
    state = DEMO_SEED;
    for (char c : purpose.toCharArray()) {
      state = next() ^ c;
    }
  }

  private long next() {
    state += 0x9E3779B97F4A7C15L;
    long z = state;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }

  /** Any whole number from low to high, both included. */
  int between(int low, int high) {
    return low + (int) Long.remainderUnsigned(next(), high - low + 1L);
  }

  /** The same, but the middle more often than the ends. */
  int around(int low, int high) {
    return (between(low, high) + between(low, high) + 1) / 2;
  }

  /** A value that differs by at most so many parts in a thousand. */
  long vary(long value, int perMille) {
    return value * (1000 + around(-perMille, perMille)) / 1000;
  }

  <T> T pick(List<T> choices) {
    return choices.get(between(0, choices.size() - 1));
  }
}
