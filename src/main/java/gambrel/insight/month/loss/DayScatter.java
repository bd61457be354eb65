package gambrel.insight.month.loss;

import gambrel.insight.statistics.Moments;
import java.util.Collection;
import java.util.List;

/**
 * How bodies scatter within a day, and how days scatter: the moment estimators of the analysis of
 * variance, for a one-way layout of random days with unequal numbers of bodies.
 *
 * @param days how many days the estimate is from
 * @param within variance of the bodies of one day
 * @param between variance that the bodies of one day have in common
 */
record DayScatter(int days, double within, double between) {

  /**
   * The mean of some days.
   *
   * @param value the mean, each day weighted by the precision of its own mean
   * @param variance the variance of that mean
   */
  record Mean(double value, double variance) {}

  /** The scatter of two days or more, each with the values of its bodies, at least one. */
  static DayScatter of(Collection<List<Double>> values) {
    var days = values.stream().map(Moments::of).toList();
    double bodies = Moments.number(days);
    double squaredNumbers = days.stream().mapToDouble(d -> (double) d.number() * d.number()).sum();
    double degrees = days.size() - 1.0;
    double within = bodies > days.size() ? Moments.squaresWithin(days) / (bodies - days.size()) : 0;
    double bodiesADay = (bodies - squaredNumbers / bodies) / degrees;
    double between = Math.max(0, (Moments.squaresBetween(days) / degrees - within) / bodiesADay);
    return new DayScatter(days.size(), within, between);
  }

  /** The mean of some days, each with the values of its bodies. */
  Mean mean(Collection<List<Double>> days) {
    double weights = 0;
    double sum = 0;
    for (var day : days) {
      double variance = between + within / day.size();
      double weight = variance == 0 ? day.size() : 1 / variance;
      weights += weight;
      sum += weight * Moments.of(day).mean();
    }
    return new Mean(sum / weights, between + within == 0 ? 0 : 1 / weights);
  }
}
