package gambrel.insight.statistics;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;

/**
 * Where one further value lies, given some like it: mean ± t · s · √(1 + 1/n), the prediction
 * interval of a normal distribution (Hahn, Meeker and Escobar, Statistical Intervals, 2nd edition
 * 2017, for a single further value). A value far from all others is left out first: Grubbs' test
 * (NIST/SEMATECH e-Handbook 1.3.5.17.1), repeated while more than six are left.
 *
 * @param number how many values it is drawn from
 * @param mean their mean
 * @param spread s · √(1 + 1/n)
 */
public record FurtherValue(int number, double mean, double spread) {
  /** Of so many samples without an odd value at most one loses a value. */
  private static final int ONE_LOSES_IN = 100;

  private static final int FEWEST_TESTED = 7;

  /**
   * Draws it from some values, at least two.
   *
   * @param resolution standard uncertainty of a value from the steps of the scales; values that
   *     happen to be equal are taken to scatter so much
   */
  public static FurtherValue of(Collection<Double> values, double resolution) {
    var kept = new ArrayList<>(values);
    var further = all(kept, resolution);
    while (kept.size() >= FEWEST_TESTED) {
      double mean = further.mean;
      var farthest = kept.stream().max(Comparator.comparing(value -> Math.abs(value - mean)));
      if (!further.isOdd(Math.abs(farthest.orElseThrow() - mean))) {
        break;
      }
      kept.remove(farthest.get());
      further = all(kept, resolution);
    }
    return further;
  }

  private static FurtherValue all(Collection<Double> values, double resolution) {
    var moments = Moments.of(values);
    double scatter = Math.sqrt(moments.squares() / (values.size() - 1));
    double spread = Math.max(scatter, resolution) * Math.sqrt(1 + 1.0 / values.size());
    return new FurtherValue(values.size(), moments.mean(), spread);
  }

  /** Grubbs' test of the value farthest from the mean, by the probability of its distance. */
  private boolean isOdd(double distance) {
    double n = number;
    double grubbs = distance * Math.sqrt(1 + 1 / n) / spread;
    double left = (n - 1) * (n - 1) - n * grubbs * grubbs;
    double t = grubbs * Math.sqrt(n * (n - 2) / left);
    return distance > 0
        && (left <= 0 || Moments.studentsBeyond(number - 2, t) * 2 * n < 1.0 / ONE_LOSES_IN);
  }

  /** Half the width of the interval that a further value leaves with this probability. */
  public double half(double outside) {
    return Moments.studentsAbove(number - 1, outside / 2) * spread;
  }

  /** The probability that a further value lies above the mean by more than {@code distance}. */
  public double above(double distance) {
    return Moments.studentsBeyond(number - 1, distance / spread);
  }
}
