package gambrel.insight.month.bodies;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.function.Function;

/**
 * The bodies of the twelve calendar months before a month, against which the month is held. It is
 * fixed for the month: what later months bring does not enter, so that an old summary keeps its
 * limits. Corrections, which change what was weighed then, do enter.
 *
 * <p>Bodies belong to their months as in {@link MonthBodies}; a rail weighing later than the
 * month's last day is as yet unknown to it.
 *
 * @param month the month that it is the baseline of
 * @param months its months, oldest first
 */
public record Baseline(YearMonth month, List<MonthBodies> months) {
  /** Fewer bodies than this carry no limits. */
  public static final int ENOUGH = 20;

  static final int MONTHS = 12;

  /** Bodies killed in it, in order of kill. */
  public List<MonthBody> killed() {
    return all(MonthBodies::killed);
  }

  /** Bodies cut in it, month by month, those killed first first. */
  public List<MonthBody> cut() {
    return all(MonthBodies::cut);
  }

  /** Those cut in it whose weights hold and are all there. */
  public List<MonthBody> settled() {
    return all(MonthBodies::settled);
  }

  /** Bodies of which a loss was known by the month's last day, month by month. */
  public List<MonthBody> of(Loss loss) {
    return all(loss::of).stream().filter(body -> loss.isKnownBy(body, lastDay())).toList();
  }

  /** The same month a year ago. */
  public MonthBodies yearAgo() {
    return months.get(0);
  }

  /** The last day of which anything is known to the month. */
  public LocalDate lastDay() {
    return month.atEndOfMonth();
  }

  private List<MonthBody> all(Function<MonthBodies, List<MonthBody>> which) {
    return months.stream().flatMap(m -> which.apply(m).stream()).toList();
  }
}
