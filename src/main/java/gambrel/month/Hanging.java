package gambrel.month;

import gambrel.cuts.Species;
import gambrel.measure.Exact;
import gambrel.reckoning.BodyAccount;
import gambrel.shrink.Trend;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What hanging costs a species: ageing shrink on days hung, over the month's bodies and those of the
 * twelve months before.
 *
 * @param species whose
 * @param trend ageing shrink, % of cold, a day
 * @param days spread of the days hung
 * @param cold spread of cold weights, in the shop's unit
 */
public record Hanging(Species species, Trend trend, Spread days, Spread cold) {
  /** The confidence of the intervals. */
  public static final double CONFIDENCE = 0.95;

  /** Fewer bodies than this, or days closer together, make no line. */
  private static final int ENOUGH_BODIES = 8;

  private static final int ENOUGH_DAYS = 3;

  /** Every species of which enough is known. */
  public static List<Hanging> of(MonthRecords records) {
    return Stream.of(Species.values()).flatMap(s -> of(records, s).stream()).toList();
  }

  private static Optional<Hanging> of(MonthRecords records, Species species) {
    var bodies =
        Stream.concat(
                records.baseline().of(Loss.AGEING).stream(), records.bodies().killed().stream())
            .filter(a -> a.body().species() == species)
            .filter(a -> point(a).isPresent())
            .toList();
    var points = bodies.stream().map(a -> point(a).orElseThrow()).toList();
    long days = points.stream().map(Trend.Point::x).distinct().count();
    if (points.size() < ENOUGH_BODIES || days < ENOUGH_DAYS) {
      return Optional.empty();
    }
    return Trend.of(points)
        .map(
            trend ->
                new Hanging(
                    species,
                    trend,
                    Spread.of(points.stream().map(Trend.Point::x).toList()).orElseThrow(),
                    Spread.of(bodies.stream().map(Hanging::cold).toList()).orElseThrow()));
  }

  private static Optional<Trend.Point> point(BodyAccount account) {
    var days = account.balance().daysHung();
    var lost = Loss.AGEING.percent(account);
    return days.isEmpty() || lost.isEmpty()
        ? Optional.empty()
        : Optional.of(new Trend.Point(BigFraction.of(days.get()), lost.get()));
  }

  private static BigFraction cold(BodyAccount account) {
    return account.balance().rail().ageing().orElseThrow().cold().fraction();
  }

  /** Whether a day on the rail surely costs weight: the slope's 95 % interval lies above zero. */
  public boolean isSure() {
    return trend.slope() > trend.slopeMargin(CONFIDENCE);
  }

  /** Per cent of cold weight lost a day, to four decimals. */
  public BigFraction percentADay() {
    return decimal(trend.slope());
  }

  /** A number of the line as an exact one, to four decimals. */
  public static BigFraction decimal(double value) {
    return Exact.fraction(BigDecimal.valueOf(value).setScale(4, RoundingMode.HALF_UP));
  }

  /** What a day costs a body of middle weight, in the shop's unit of weight. */
  public BigFraction weightADay() {
    return cold.median().multiply(percentADay()).divide(100);
  }
}
