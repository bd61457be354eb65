package gambrel.insight;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hipparchus.distribution.discrete.BinomialDistribution;

/**
 * How many false alarms a number of trials may give if the program keeps its promised rate. The
 * count is then binomial at most. The bound is the least count that such a program exceeds in no
 * more than one of 500 runs.
 *
 * @param trials how many independent trials
 * @param rate the promised rate
 */
public record FalseAlarms(int trials, double rate) {
  /** How often a program that keeps its rate may exceed the bound. */
  private static final double SOUND_FAILS = 0.002;

  /** The largest count that passes. */
  public int most() {
    var promised = counts(rate);
    int most = 0;
    while (1 - promised.cumulativeProbability(most) > SOUND_FAILS) {
      most++;
    }
    return most;
  }

  /** The power: how often a program with twice the promised rate exceeds the bound. */
  public double power() {
    return 1 - counts(2 * rate).cumulativeProbability(most());
  }

  private BinomialDistribution counts(double probability) {
    return new BinomialDistribution(trials, probability);
  }

  /** Fails if {@code found} alarms are more than the bound. */
  public void check(String what, long found) {
    int most = most();
    assertTrue(
        found <= most,
        () ->
            String.format(
                "%s: %d alarms in %d trials, at most %d at the promised rate of %s",
                what, found, trials, most, rate));
  }
}
