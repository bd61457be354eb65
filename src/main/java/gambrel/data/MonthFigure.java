package gambrel.data;

import gambrel.month.Spread;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * A figure of a month, ready for {@code data/month-figures.csv}.
 *
 * @param figure its name
 * @param whose whose bodies, or empty for all
 * @param species or empty
 * @param group which bodies of them, or empty
 * @param bodies how many it is of
 * @param value the figure
 * @param unit of it
 * @param baseline how many bodies the twelve months before had
 * @param before the same figure of theirs
 * @param spread of theirs, body by body
 * @param interval what lower and upper are, or empty
 * @param lower end of the interval
 * @param upper end of the interval
 */
public record MonthFigure(
    String figure,
    String whose,
    String species,
    String group,
    int bodies,
    Optional<BigDecimal> value,
    String unit,
    int baseline,
    Optional<BigDecimal> before,
    Optional<Spread> spread,
    String interval,
    Optional<BigDecimal> lower,
    Optional<BigDecimal> upper) {
  /** Column names after the month's. */
  static final String COLUMNS =
      "figure,whose,species,group,bodies,value,unit,baseline_bodies,baseline_value,"
          + "baseline_lower_quartile,baseline_median,baseline_upper_quartile,interval,lower,upper";

  /** A figure without an interval. */
  static MonthFigure plain(
      String figure,
      String whose,
      String species,
      String group,
      int bodies,
      Optional<BigDecimal> value,
      String unit,
      int baseline,
      Optional<BigDecimal> before,
      Optional<Spread> spread) {
    return new MonthFigure(
        figure,
        whose,
        species,
        group,
        bodies,
        value,
        unit,
        baseline,
        before,
        spread,
        "",
        Optional.empty(),
        Optional.empty());
  }

  List<String> cells(String month) {
    return new Row()
        .text(month)
        .text(figure)
        .text(whose)
        .text(species)
        .text(group)
        .number(bodies)
        .optional(value)
        .text(unit)
        .number(baseline)
        .optional(before)
        .percent(spread.map(Spread::lower))
        .percent(spread.map(Spread::median))
        .percent(spread.map(Spread::upper))
        .text(interval)
        .optional(lower)
        .optional(upper)
        .cells();
  }
}
