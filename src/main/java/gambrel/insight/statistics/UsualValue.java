package gambrel.insight.statistics;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.hipparchus.stat.StatUtils;

/**
 * What is usual of each kind of thing, robustly: the median of the kind, on the straight line of
 * the covariate. The spread is 1.4826 times the median absolute deviation from that (NIST/SEMATECH
 * e-Handbook, 1.3.5.6), enlarged for the medians that were taken from the same values.
 *
 * @param medians the median of each kind after the line is taken off
 * @param slope of the line
 * @param middle mean of the covariate
 * @param squares sum of the covariate's squared distances from the mean of its kind
 * @param spread an estimate of the standard deviation of normal values
 * @param degrees what the spread is worth: the degrees of freedom of a standard deviation that is
 *     as sure; the median absolute deviation is 0.37 times as efficient (Rousseeuw and Croux,
 *     Alternatives to the Median Absolute Deviation, 1993)
 */
public record UsualValue(
    Map<String, Double> medians,
    double slope,
    double middle,
    double squares,
    double spread,
    int degrees) {
  private static final double MAD_TO_SIGMA = 1.4826;
  private static final double EFFICIENCY = 0.37;
  private static final double NOTHING = 1e-9;

  /** The usual values of a baseline. */
  public static UsualValue of(Collection<DayValues.Value> baseline) {
    var line = Line.of(baseline);
    var byKind = new HashMap<String, List<Double>>();
    for (var v : baseline) {
      byKind
          .computeIfAbsent(v.kind(), kind -> new ArrayList<>())
          .add(v.value() - line.slope() * v.covariate());
    }
    var medians = new HashMap<String, Double>();
    byKind.forEach((kind, values) -> medians.put(kind, median(values)));
    var distances =
        baseline.stream()
            .map(v -> Math.abs(v.value() - line.slope() * v.covariate() - medians.get(v.kind())))
            .toList();
    int free = baseline.size() - medians.size();
    double factor = free < 1 ? 0 : MAD_TO_SIGMA * Math.sqrt((double) baseline.size() / free);
    return new UsualValue(
        medians,
        line.slope(),
        line.middle(),
        line.squares(),
        free < 1 ? 0 : factor * median(distances),
        Math.max(1, (int) (EFFICIENCY * free)));
  }

  /**
   * The standard deviation of one more thing from what it should have: it grows with the distance
   * of its covariate from those of the baseline, as that of a prediction from a straight line.
   */
  public double spreadAt(DayValues.Value value) {
    double distance = value.covariate() - middle;
    double far = squares < NOTHING ? 0 : distance * distance / squares;
    return spread * Math.sqrt(1 + far);
  }

  /** What a thing of that kind and covariate should have; empty for a kind without values. */
  public OptionalDouble expected(DayValues.Value value) {
    var median = medians.get(value.kind());
    return median == null
        ? OptionalDouble.empty()
        : OptionalDouble.of(median + slope * value.covariate());
  }

  private static double median(Collection<Double> values) {
    return StatUtils.percentile(values.stream().mapToDouble(value -> value).toArray(), 50);
  }

  /** The least-squares line within kinds; its slope is 0 if the covariate does not vary. */
  private record Line(double slope, double middle, double squares) {
    static Line of(Collection<DayValues.Value> baseline) {
      var sums = new HashMap<String, double[]>();
      double all = 0;
      for (var v : baseline) {
        var sum = sums.computeIfAbsent(v.kind(), kind -> new double[3]);
        sum[0]++;
        sum[1] += v.covariate();
        sum[2] += v.value();
        all += v.covariate();
      }
      double squares = 0;
      double products = 0;
      for (var v : baseline) {
        var sum = sums.get(v.kind());
        double distance = v.covariate() - sum[1] / sum[0];
        squares += distance * distance;
        products += distance * (v.value() - sum[2] / sum[0]);
      }
      double slope = squares < NOTHING ? 0 : products / squares;
      return new Line(slope, all / Math.max(1, baseline.size()), squares);
    }
  }
}
