package gambrel.insight.statistics;

import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.hipparchus.stat.regression.SimpleRegression;

/**
 * A straight line through points by least squares.
 *
 * <p>The line is fitted to the points' exact distances from their means, so that large values with
 * small differences keep their precision.
 *
 * @param number how many points
 * @param slope change of y when x grows by one
 * @param intercept y where x is 0
 * @param slopeError standard error of the slope
 * @param residual standard deviation of the points about the line
 */
public record Trend(
    int number, double slope, double intercept, double slopeError, double residual) {
  private static final int PARAMETERS = 2;

  /** A point. */
  public record Point(BigFraction x, BigFraction y) {}

  /** The line through {@code points}; empty with fewer than three, or if x is always the same. */
  public static Optional<Trend> of(List<Point> points) {
    if (points.size() <= PARAMETERS
        || points.stream().map(Point::x).distinct().count() < PARAMETERS) {
      return Optional.empty();
    }
    var meanX = Mean.of(points.stream().map(Point::x).toList());
    var meanY = Mean.of(points.stream().map(Point::y).toList());
    var centred =
        points.stream()
            .map(point -> new double[] {less(point.x(), meanX), less(point.y(), meanY)})
            .toArray(double[][]::new);
    var line = new SimpleRegression();
    line.addData(centred);
    double slope = line.getSlope();
    // Point by point: the library subtracts two sums of squares, which costs five digits.
    double squaredErrors = 0;
    for (double[] point : centred) {
      double error = point[1] - slope * point[0];
      squaredErrors += error * error;
    }
    double residual = Math.sqrt(squaredErrors / (points.size() - PARAMETERS));
    double squares = line.getXSumSquares();
    return Optional.of(
        new Trend(
            points.size(),
            slope,
            meanY.doubleValue() - slope * meanX.doubleValue(),
            residual / Math.sqrt(squares),
            residual));
  }

  private static double less(BigFraction value, BigFraction mean) {
    return value.subtract(mean).doubleValue();
  }

  /** y on the line. */
  public double at(double x) {
    return intercept + slope * x;
  }

  /** Half the width of the slope's confidence interval; {@code confidence} is 0.95 or the like. */
  public double slopeMargin(double confidence) {
    return Moments.studentsAbove(number - PARAMETERS, (1 - confidence) / 2) * slopeError;
  }
}
