package gambrel.insight.month.loss;

import java.util.Collection;
import java.util.List;

/**
 * How the bodies of a shop scatter within a day and the days among each other, as estimated from
 * the sums of squares of a one-way layout with random days of unequal number (the moment estimators
 * of the analysis of variance). A day of one body tells less than a day of six.
 *
 * @param days how many days it was estimated from
 * @param within variance of bodies of one day
 * @param between variance that all bodies of a day have in common
 */
record DayScatter(int days, double within, double between) {

  /**
   * The mean of some days.
   *
   * @param value each day weighed by how surely its own mean is known
   * @param variance of that value
   */
  record Mean(double value, double variance) {}

  /** From the values of two days or more, at least one each. */
  static DayScatter of(Collection<List<Double>> days) {
    double bodies = days.stream().mapToInt(List::size).sum();
    double mean = days.stream().flatMap(List::stream).mapToDouble(v -> v).sum() / bodies;
    double squaresWithin = 0;
    double squaresBetween = 0;
    double squaredNumbers = 0;
    for (var day : days) {
      double own = mean(day);
      squaresWithin += day.stream().mapToDouble(v -> (v - own) * (v - own)).sum();
      squaresBetween += day.size() * (own - mean) * (own - mean);
      squaredNumbers += (double) day.size() * day.size();
    }
    double degrees = days.size() - 1.0;
    double within = bodies > days.size() ? squaresWithin / (bodies - days.size()) : 0;
    double usual = (bodies - squaredNumbers / bodies) / degrees;
    double between = Math.max(0, (squaresBetween / degrees - within) / usual);
    return new DayScatter(days.size(), within, between);
  }

  /** The mean of some days' values. */
  Mean mean(Collection<List<Double>> values) {
    double weights = 0;
    double sum = 0;
    for (var day : values) {
      double variance = between + within / day.size();
      double weight = variance == 0 ? day.size() : 1 / variance;
      weights += weight;
      sum += weight * mean(day);
    }
    return new Mean(sum / weights, between + within == 0 ? 0 : 1 / weights);
  }

  private static double mean(List<Double> values) {
    return values.stream().mapToDouble(v -> v).average().orElseThrow();
  }
}
