package gambrel.insight.month.loss;

import gambrel.insight.month.bodies.BodyGroup;
import gambrel.insight.month.bodies.MonthRecords;
import gambrel.insight.month.bodies.Spread;
import gambrel.insight.month.findings.FigureName;
import gambrel.insight.month.findings.MonthFigure;
import gambrel.insight.statistics.Trend;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Exact;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What hanging costs a species: ageing shrink on days hung, over the month's bodies and those of
 * the twelve months before.
 *
 * @param species whose
 * @param trend ageing shrink, % of cold, a day
 * @param days spread of the days hung
 * @param cold spread of cold weights, in the shop's unit
 */
public record Hanging(Species species, Trend trend, Spread days, Spread cold) {
  /** The confidence of the intervals. */
  public static final double CONFIDENCE = 0.95;

  /** Every species of which enough is known. */
  public static List<Hanging> of(MonthRecords records) {
    return Stream.of(Species.values()).flatMap(s -> of(records, s).stream()).toList();
  }

  private static Optional<Hanging> of(MonthRecords records, Species species) {
    var sample = HangingSample.of(records, species);
    return sample.trend().map(trend -> new Hanging(species, trend, sample.days(), sample.cold()));
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

  /** The slope with its interval, and what one more body would lose in the usual days. */
  public List<MonthFigure> figures() {
    double middle = days.median().doubleValue();
    return List.of(
        figure(
            FigureName.AGEING_PCT_A_DAY,
            trend.slope(),
            MonthFigure.Interval.Kind.CONFIDENCE,
            trend.slopeMargin(CONFIDENCE)),
        figure(
            FigureName.AGEING_PCT_AT_MEDIAN_DAYS,
            trend.at(middle),
            MonthFigure.Interval.Kind.PREDICTION,
            trend.predictionMargin(middle, CONFIDENCE)));
  }

  private MonthFigure figure(
      FigureName name, double value, MonthFigure.Interval.Kind kind, double margin) {
    var low = Exact.ofStatistic(value - margin);
    var high = Exact.ofStatistic(value + margin);
    return MonthFigure.of(
            name, species, BodyGroup.ALL, trend.number(), Optional.of(Exact.ofStatistic(value)))
        .with(new MonthFigure.Interval(kind, low, high));
  }
}
