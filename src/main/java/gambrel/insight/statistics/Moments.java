package gambrel.insight.statistics;

import java.util.Collection;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.stat.StatUtils;
import org.hipparchus.stat.descriptive.moment.SecondMoment;
import org.hipparchus.stat.descriptive.moment.Variance;

/**
 * Number, mean and scatter of some values in double precision.
 *
 * @param number how many values, at least one
 * @param mean their mean
 * @param squares sum of their squared distances from the mean
 */
public record Moments(int number, double mean, double squares) {
  /** The moments of some values, at least one. */
  public static Moments of(Collection<Double> values) {
    double[] all = values.stream().mapToDouble(value -> value).toArray();
    var moment = new SecondMoment();
    moment.incrementAll(all);
    return new Moments(all.length, StatUtils.mean(all), moment.getResult());
  }

  /**
   * The value that Student's t exceeds with a given probability.
   *
   * @param degrees degrees of freedom, at least 1
   * @param probability between 0 and 1
   */
  public static double studentsAbove(int degrees, double probability) {
    return new TDistribution(degrees).inverseCumulativeProbability(1 - probability);
  }

  /** The probability that Student's t is above a value. */
  public static double studentsBeyond(int degrees, double value) {
    return new TDistribution(degrees).cumulativeProbability(-value);
  }

  /** The sum of squares between groups: squared distances of their means, one for each value. */
  public static double squaresBetween(Collection<Moments> groups) {
    double[] means = groups.stream().mapToDouble(Moments::mean).toArray();
    double[] numbers = groups.stream().mapToDouble(Moments::number).toArray();
    return new Variance(false).evaluate(means, numbers) * number(groups);
  }

  /** The sum of squares within groups. */
  public static double squaresWithin(Collection<Moments> groups) {
    return groups.stream().mapToDouble(Moments::squares).sum();
  }

  /** How many values some groups have together. */
  public static int number(Collection<Moments> groups) {
    return groups.stream().mapToInt(Moments::number).sum();
  }
}
