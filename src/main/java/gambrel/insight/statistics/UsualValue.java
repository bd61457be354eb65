package gambrel.insight.statistics;

import gambrel.trade.measure.Groups;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.hipparchus.stat.StatUtils;

/**
 * What is usual of each kind of thing, robustly: the sum of what the traits of the kind add, on the
 * straight line of the covariate. What a trait adds is the median of what is left of its values
 * without the others (median polish: Tukey, Exploratory Data Analysis, 1977, 11). The spread is
 * 1.4826 times the median absolute deviation from the sum (NIST/SEMATECH e-Handbook, 1.3.5.6),
 * enlarged for the medians that were taken from the same values.
 *
 * @param medians what each trait adds after the line is taken off, by place in the kind
 * @param slope of the line
 * @param middle mean of the covariate
 * @param squares sum of the covariate's squared distances from the mean of its kind
 * @param spread an estimate of the standard deviation of normal values
 * @param degrees what the spread is worth: the degrees of freedom of a standard deviation that is
 *     as sure; the median absolute deviation is 0.37 times as efficient (Rousseeuw and Croux,
 *     Alternatives to the Median Absolute Deviation, 1993)
 */
public record UsualValue(
    List<Map<String, Double>> medians,
    double slope,
    double middle,
    double squares,
    double spread,
    int degrees) {
  private static final double MAD_TO_SIGMA = 1.4826;
  private static final double EFFICIENCY = 0.37;
  private static final double NOTHING = 1e-9;
  private static final int ROUNDS = 10;

  /** The usual values of a baseline. */
  public static UsualValue of(List<DayValues.Value> baseline) {
    var line = Line.of(baseline);
    var left =
        baseline.stream().mapToDouble(v -> v.value() - line.slope() * v.covariate()).toArray();
    var medians = polish(baseline, left);
    int traits = medians.stream().mapToInt(level -> level.size() - 1).sum();
    int free = baseline.size() - traits - 1;
    double deviation = StatUtils.percentile(Arrays.stream(left).map(Math::abs).toArray(), 50);
    double spread =
        free < 1 ? 0 : MAD_TO_SIGMA * Math.sqrt((double) baseline.size() / free) * deviation;
    return new UsualValue(
        medians,
        line.slope(),
        line.middle(),
        line.squares(),
        spread,
        Math.max(1, (int) (EFFICIENCY * free)));
  }

  /** What each trait adds; takes it off the numbers, which are one for each value. */
  private static List<Map<String, Double>> polish(List<DayValues.Value> values, double[] numbers) {
    int places = values.isEmpty() ? 0 : values.get(0).kind().size();
    var added = new ArrayList<Map<String, Double>>();
    var alike = new ArrayList<Map<String, List<Integer>>>();
    for (int i = 0; i < places; i++) {
      int place = i;
      added.add(new HashMap<>());
      alike.add(
          Groups.inOrder(
              IntStream.range(0, numbers.length).boxed(), v -> values.get(v).kind().get(place)));
    }
    for (int step = 0; step < ROUNDS * places; step++) {
      int place = step % places;
      alike
          .get(place)
          .forEach(
              (trait, its) -> {
                double median =
                    StatUtils.percentile(its.stream().mapToDouble(v -> numbers[v]).toArray(), 50);
                added.get(place).merge(trait, median, Double::sum);
                its.forEach(v -> numbers[v] -= median);
              });
    }
    return added;
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

  /** What a thing of that kind and covariate should have; empty for a trait without values. */
  public OptionalDouble expected(DayValues.Value value) {
    double sum = slope * value.covariate();
    for (int place = 0; place < medians.size(); place++) {
      var median = medians.get(place).get(value.kind().get(place));
      if (median == null) {
        return OptionalDouble.empty();
      }
      sum += median;
    }
    return medians.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(sum);
  }

  /** The least-squares line within kinds; its slope is 0 if the covariate does not vary. */
  private record Line(double slope, double middle, double squares) {
    static Line of(Collection<DayValues.Value> baseline) {
      double squares = 0;
      double products = 0;
      for (var alike : Groups.inOrder(baseline.stream(), DayValues.Value::kind).values()) {
        double middle = middle(alike);
        for (var v : alike) {
          squares += (v.covariate() - middle) * (v.covariate() - middle);
          products += (v.covariate() - middle) * v.value();
        }
      }
      return new Line(squares < NOTHING ? 0 : products / squares, middle(baseline), squares);
    }

    private static double middle(Collection<DayValues.Value> some) {
      return some.stream().mapToDouble(DayValues.Value::covariate).average().orElse(0);
    }
  }
}
