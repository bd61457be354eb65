package gambrel.outside;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Random choices of one room. */
final class Chance {
  private final SplittableRandom random;

  Chance(long seed) {
    random = new SplittableRandom(seed);
  }

  /** A number from the normal distribution, at most three spreads from the mean. */
  double normal(double mean, double spread) {
    double deviate = random.nextGaussian();
    while (Math.abs(deviate) > 3) {
      deviate = random.nextGaussian();
    }
    return mean + spread * deviate;
  }

  /** A number between two others, each as likely. */
  double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  /** A whole number between two others, both included. */
  int whole(int low, int high) {
    return random.nextInt(low, high + 1);
  }

  /** Whether something comes about that has this probability. */
  boolean happens(double probability) {
    return random.nextDouble() < probability;
  }

  /** One of some values, each as likely. */
  <T> T pick(List<T> values) {
    return values.get(random.nextInt(values.size()));
  }

  /** The values in random order. */
  <T> List<T> shuffled(List<T> values) {
    var left = new ArrayList<>(values);
    var order = new ArrayList<T>();
    while (!left.isEmpty()) {
      order.add(left.remove(random.nextInt(left.size())));
    }
    return order;
  }

  /** The seed of something that is drawn apart. */
  long seed() {
    return random.nextLong();
  }
}
