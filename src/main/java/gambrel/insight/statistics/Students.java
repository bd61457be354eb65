package gambrel.insight.statistics;

import org.hipparchus.distribution.continuous.TDistribution;

/** Student's t distribution. */
public final class Students {
  private Students() {}

  /**
   * The value that t exceeds with a given probability.
   *
   * @param degrees degrees of freedom, at least 1
   * @param probability between 0 and 1
   */
  public static double above(int degrees, double probability) {
    return new TDistribution(degrees).inverseCumulativeProbability(1 - probability);
  }
}
