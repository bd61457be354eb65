package gambrel.bench;

import java.time.LocalDate;
import java.util.Random;

/**
 * A made-up beast.
 *
 * @param number running number
 * @param killed day of kill
 * @param place its place in the day's order
 * @param hot hot weight, grams
 * @param seed of its own weights
 */
record BenchBody(int number, LocalDate killed, int place, int hot, long seed) {
  /** Export rows of a body: four on the rail, four quarters, and its trays. */
  static final int ROWS = 8 + BenchCuts.TRAYS;

  static BenchBody of(int number, LocalDate killed, int place, Random random) {
    return new BenchBody(
        number, killed, place, 220_000 + random.nextInt(120_000), random.nextLong());
  }

  String id() {
    return "B%06d".formatted(number);
  }

  /** The day's batch of mince, made of the tubs of all its bodies. */
  String batch() {
    return "M" + killed.toString().replace("-", "");
  }
}
