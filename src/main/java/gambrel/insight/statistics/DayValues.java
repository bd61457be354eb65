package gambrel.insight.statistics;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Values of things of several kinds, taken on several days, and how much they rise with a given
 * exposure: the linear model with an amount for each trait of a kind, an optional covariate, and
 * errors that the things of one day have partly in common.
 *
 * <p>A value farther than {@link #CLIP} robust spreads from the median of its kind counts as that
 * far, so that a single slip moves no mean, and in the baseline as the median, so that no slip or
 * day of them widens what is usual (see {@link UsualValue}). The variances within and between days
 * are the moment estimators of the analysis of variance for a one-way layout of random days with
 * unequal numbers (Searle, Casella, McCulloch, Variance Components, 1992, 3.6).
 */
public final class DayValues {
  private static final double CLIP = 4;

  /** What a change must keep of its t without the day that speaks most for it. */
  private static final double KEPT = 0.8;

  /** The least standard deviation within a day, finer than what a scale shows. */
  private static final double FINEST = 0.01;

  private static final double NOTHING = 1e-9;

  /** The least sum of squared exposures, each less the mean of its kind. */
  private static final double LEAST_EXPOSURE = 0.2;

  /**
   * One value.
   *
   * @param kind what the thing has in common with others, such as its class and its supplier; each
   *     adds an amount of its own. All values have equally many
   * @param day when it was taken
   * @param value the value
   * @param covariate a number on which the value depends in a straight line; 0 if there is none
   */
  public record Value(List<String> kind, LocalDate day, double value, double covariate) {
    /** Another value of the same thing. */
    public Value with(double other) {
      return new Value(kind, day, other, covariate);
    }
  }

  /**
   * How much values rise for one unit of an exposure.
   *
   * @param mean the estimate from the values as they are
   * @param size the estimate from the values none of which counts as far away
   * @param variance the variance of that
   * @param without the size without the day that speaks most for it; if it is of one day, without
   *     the value
   * @param varianceWithout the variance of that
   * @param degrees degrees of freedom of the variances
   */
  public record Effect(
      double mean,
      double size,
      double variance,
      double without,
      double varianceWithout,
      int degrees) {
    /** The absolute t; less if one day makes more than a fifth of it, and 0 if all of it. */
    public double strength() {
      return size * without <= 0
          ? 0
          : Math.min(
              Math.abs(size) / Math.sqrt(variance),
              Math.abs(without) / Math.sqrt(varianceWithout) / KEPT);
    }

    /**
     * One effect estimated from several sets of values: the mean, weighted by the inverse variances
     * (Graybill and Deal, Combining Unbiased Estimators, 1959). Needs an effect.
     */
    public static Effect of(Collection<Effect> effects) {
      double weights = 0;
      double mean = 0;
      double sum = 0;
      int degrees = 0;
      for (var effect : effects) {
        weights += 1 / effect.variance;
        mean += effect.mean / effect.variance;
        sum += effect.size / effect.variance;
        degrees += effect.degrees;
      }
      var all = new Effect(mean / weights, sum / weights, 1 / weights, 0, 1, degrees);
      return effects.stream()
          .map(all::without)
          .min(Comparator.comparingDouble(Effect::strength))
          .orElseThrow();
    }

    /** This effect of several sets, if the day that speaks most for it is one of a given set. */
    private Effect without(Effect part) {
      double weights = 1 / variance - 1 / part.variance + 1 / part.varianceWithout;
      double sum =
          size / variance - part.size / part.variance + part.without / part.varianceWithout;
      return new Effect(mean, size, variance, sum / weights, 1 / weights, degrees);
    }
  }

  private final List<int[]> traits;
  private final int[] days;
  private final double[] covariate;
  private final double[] asTheyAre;
  private final double[] values;
  private final Scatter scatter;

  /**
   * The values.
   *
   * @param all the values; those of the baseline first
   * @param baseline how many are the baseline's, from at least two days: spreads are taken from it
   */
  public DayValues(List<Value> all, int baseline) {
    traits =
        IntStream.range(0, all.get(0).kind().size())
            .mapToObj(i -> numbers(all.stream().map(value -> value.kind().get(i)).toList()))
            .toList();
    days = numbers(all.stream().map(Value::day).toList());
    covariate = centred(all.stream().mapToDouble(Value::covariate).toArray());
    asTheyAre = left(all.stream().mapToDouble(Value::value).toArray());
    var clipped = clipped(all, baseline);
    values = left(clipped);
    scatter = scatter(Arrays.copyOf(clipped, baseline), all.subList(0, baseline));
  }

  /**
   * How values scatter.
   *
   * @param within mean square within days
   * @param days mean square between days
   * @param each values a day, as the mean square between days counts them
   * @param degreesWithin degrees of freedom within days
   * @param degreesDays degrees of freedom between days
   */
  private record Scatter(
      double within, double days, double each, double degreesWithin, double degreesDays) {
    /**
     * The variance of a sum of values whose squared weights add up to {@code squares}, and those of
     * each day's sum of weights to {@code byDay}.
     */
    double variance(double squares, double byDay) {
      return within * squares + Math.max(0, days - within) / each * byDay;
    }

    /** The degrees of freedom of that variance (Satterthwaite, 1946). */
    int degrees(double squares, double byDay) {
      if (days <= within) {
        return (int) degreesWithin;
      }
      double ofDays = byDay / each * days;
      double ofWithin = Math.max(0, squares - byDay / each) * within;
      double sum = ofDays + ofWithin;
      return (int)
          Math.max(
              1, sum * sum / (ofDays * ofDays / degreesDays + ofWithin * ofWithin / degreesWithin));
    }
  }

  private static int[] numbers(List<?> names) {
    var known = new HashMap<Object, Integer>();
    return names.stream()
        .mapToInt(name -> known.computeIfAbsent(name, n -> known.size()))
        .toArray();
  }

  /**
   * Numbers less what the traits of their kind add, by least squares: the mean of each is taken off
   * in turn until nothing is left (alternating projections, von Neumann, 1949).
   */
  private double[] centred(double[] numbers) {
    var rest = numbers.clone();
    for (double most = 1; most > NOTHING; ) {
      most = 0;
      for (var trait : traits) {
        most = Math.max(most, centre(rest, trait));
      }
    }
    return rest;
  }

  /** Takes off the mean of each group, and returns the largest in absolute value. */
  private static double centre(double[] numbers, int[] groups) {
    var sums = new double[numbers.length];
    var counts = new int[numbers.length];
    for (int i = 0; i < numbers.length; i++) {
      sums[groups[i]] += numbers[i];
      counts[groups[i]]++;
    }
    double most = 0;
    for (int i = 0; i < numbers.length; i++) {
      double mean = sums[groups[i]] / counts[groups[i]];
      numbers[i] -= mean;
      most = Math.max(most, Math.abs(mean));
    }
    return most;
  }

  /** What kinds and the covariate leave of numbers. */
  private double[] left(double[] numbers) {
    return without(centred(numbers), covariate);
  }

  /** Numbers less their straight line on others; both are centred. */
  private static double[] without(double[] numbers, double[] others) {
    double squares = product(others, others);
    double slope = squares < NOTHING ? 0 : product(numbers, others) / squares;
    return IntStream.range(0, numbers.length)
        .mapToDouble(i -> numbers[i] - slope * others[i])
        .toArray();
  }

  private static double product(double[] a, double[] b) {
    return IntStream.range(0, a.length).mapToDouble(i -> a[i] * b[i]).sum();
  }

  /**
   * The values, none farther from what is usual of its kind than the clip allows. One of the
   * baseline that is farther tells nothing of the usual and counts as the middle.
   */
  private static double[] clipped(List<Value> all, int baseline) {
    var usual = UsualValue.of(all.subList(0, baseline));
    double most = CLIP * usual.spread();
    return IntStream.range(0, all.size())
        .mapToDouble(
            i -> {
              double value = all.get(i).value();
              double centre = usual.expected(all.get(i)).orElse(value);
              double far = value - centre;
              return most == 0 || Math.abs(far) <= most
                  ? value
                  : i < baseline ? centre : centre + Math.copySign(most, far);
            })
        .toArray();
  }

  /** The scatter of the baseline. */
  private Scatter scatter(double[] clipped, List<Value> baseline) {
    int number = clipped.length;
    var line = centred(baseline.stream().mapToDouble(Value::covariate).toArray());
    var own = without(centred(clipped), line);
    var byDay = new TreeMap<Integer, List<Double>>();
    for (int i = 0; i < number; i++) {
      byDay.computeIfAbsent(days[i], d -> new ArrayList<>()).add(own[i]);
    }
    var moments = byDay.values().stream().map(Moments::of).toList();
    int lost =
        traits.stream()
            .mapToInt(of -> (int) Arrays.stream(of).limit(number).distinct().count() - 1)
            .sum();
    double squared = moments.stream().mapToDouble(d -> (double) d.number() * d.number()).sum();
    double freedom = number - moments.size() - lost;
    double finest = FINEST * FINEST;
    if (freedom < moments.size()) {
      // Too few days with several values: all scatter counts as that of single ones.
      double degrees = Math.max(1, number - lost - 1);
      return new Scatter(Math.max(finest, product(own, own) / degrees), 0, 1, degrees, 1);
    }
    double degreesDays = moments.size() - 1.0;
    return new Scatter(
        Math.max(finest, Moments.squaresWithin(moments) / freedom),
        Moments.squaresBetween(moments) / degreesDays,
        (number - squared / number) / degreesDays,
        freedom,
        degreesDays);
  }

  /**
   * How much the values rise for each unit of an exposure; empty if the exposure hardly varies
   * within kinds: what one body tells of it would be chance.
   *
   * @param exposure one number for each value, in their order
   */
  public Optional<Effect> effect(double[] exposure) {
    var x = left(exposure);
    double squares = product(x, x);
    if (squares < LEAST_EXPOSURE) {
      return Optional.empty();
    }
    double sum = product(x, values);
    var exposed = IntStream.range(0, x.length).filter(i -> exposure[i] != 0);
    boolean isOneDay = exposed.map(i -> days[i]).distinct().count() == 1;
    var says = new double[x.length];
    var weighs = new double[x.length];
    var ofDays = new double[x.length];
    int most = 0;
    for (int i = 0; i < x.length; i++) {
      int which = isOneDay ? i : days[i];
      says[which] += x[i] * values[i];
      weighs[which] += x[i] * x[i];
      ofDays[days[i]] += x[i];
    }
    for (int i = 1; i < x.length; i++) {
      most = (says[i] - says[most]) * Math.signum(sum) > 0 ? i : most;
    }
    double rest = squares - weighs[most];
    double byDay = product(ofDays, ofDays);
    double variance = scatter.variance(squares, byDay) / (squares * squares);
    return rest < NOTHING
        ? Optional.empty()
        : Optional.of(
            new Effect(
                product(x, asTheyAre) / squares,
                sum / squares,
                variance,
                (sum - says[most]) / rest,
                variance * squares / rest,
                scatter.degrees(squares, byDay)));
  }
}
