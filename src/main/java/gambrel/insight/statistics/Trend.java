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
 * @param interceptError standard error of the intercept
 * @param residual standard deviation of the points about the line
 * @param determination R²
 * @param meanX mean of x
 * @param squaresX sum of squared distances of x from its mean
 */
public record Trend(
    int number,
    double slope,
    double intercept,
    double slopeError,
    double interceptError,
    double residual,
    double determination,
    double meanX,
    double squaresX) {
  private static final int PARAMETERS = 2;

  /** A point. */
  public record Point(BigFraction x, BigFraction y) {}

  /** The line through {@code points}; empty with fewer than three, or if x is always the same. */
  public static Optional<Trend> of(List<Point> points) {
    if (points.size() <= PARAMETERS
        || points.stream().map(Point::x).distinct().count() < PARAMETERS) {
      return Optional.empty();
    }
    var meanX = Sample.of(points.stream().map(Point::x).toList()).mean();
    var meanY = Sample.of(points.stream().map(Point::y).toList()).mean();
    var line = new SimpleRegression();
    double[][] centred = new double[points.size()][];
    for (int i = 0; i < centred.length; i++) {
      centred[i] = centred(points.get(i), meanX, meanY);
    }
    line.addData(centred);
    return Optional.of(uncentred(line, centred, meanX.doubleValue(), meanY.doubleValue()));
  }

  private static double[] centred(Point point, BigFraction meanX, BigFraction meanY) {
    return new double[] {
      point.x().subtract(meanX).doubleValue(), point.y().subtract(meanY).doubleValue()
    };
  }

  private static Trend uncentred(
      SimpleRegression line, double[][] centred, double meanX, double meanY) {
    double slope = line.getSlope();
    // Point by point: the library subtracts two sums of squares, which costs five digits.
    double squaredErrors = 0;
    for (double[] point : centred) {
      double error = point[1] - slope * point[0];
      squaredErrors += error * error;
    }
    double residual = Math.sqrt(squaredErrors / (line.getN() - PARAMETERS));
    double squares = line.getXSumSquares();
    double n = line.getN();
    return new Trend(
        Math.toIntExact(line.getN()),
        slope,
        meanY - slope * meanX,
        residual / Math.sqrt(squares),
        residual * Math.sqrt(1 / n + meanX * meanX / squares),
        residual,
        line.getRSquare(),
        meanX,
        squares);
  }

  /** y on the line. */
  public double at(double x) {
    return intercept + slope * x;
  }

  /** Half the width of the slope's confidence interval; {@code confidence} is 0.95 or the like. */
  public double slopeMargin(double confidence) {
    return quantile(confidence) * slopeError;
  }

  /** Half the width of the prediction interval of one more point at {@code x}. */
  public double predictionMargin(double x, double confidence) {
    double distance = x - meanX;
    return quantile(confidence)
        * residual
        * Math.sqrt(1 + 1.0 / number + distance * distance / squaresX);
  }

  private double quantile(double confidence) {
    return Students.above(number - PARAMETERS, (1 - confidence) / 2);
  }
}
