package gambrel.oracle;

import java.math.BigDecimal;
import java.util.List;
import java.util.SplittableRandom;

/** Seeded choices. */
final class Dice {
  private final SplittableRandom random;

  Dice(long seed) {
    random = new SplittableRandom(seed);
  }

  boolean chance(int percent) {
    return random.nextInt(100) < percent;
  }

  /** Both ends included. */
  int between(int from, int to) {
    return from + random.nextInt(to - from + 1);
  }

  <T> T pick(List<T> from) {
    return from.get(random.nextInt(from.size()));
  }

  /** Between two numbers of thousandths. */
  BigDecimal thousandths(int from, int to) {
    return new BigDecimal(between(from, to)).movePointLeft(3);
  }
}
