package gambrel.insight.month.bodies;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.function.Function;

/**
 * The bodies of the twelve calendar months before a month, with which the month is compared. Later
 * months do not change them, so that an old summary keeps its limits; corrections of their
 * weighings do. A loss counts only if its rail weighings were made by the month's last day.
 *
 * @param month the month that is compared
 * @param months the twelve months before it, oldest first
 */
public record Baseline(YearMonth month, List<MonthBodies> months) {
  /** The least number of bodies that limits are computed from. */
  public static final int ENOUGH = 20;

  /** Bodies killed in it, in order of kill. */
  public List<MonthBody> killed() {
    return all(MonthBodies::killed);
  }

  /** Bodies cut in it, month by month, in order of kill. */
  public List<MonthBody> cut() {
    return all(MonthBodies::cut);
  }

  /** Settled bodies cut in it, month by month, in order of kill. */
  public List<MonthBody> settled() {
    return all(MonthBodies::settled);
  }

  /** Bodies of which a loss was known by the last day of {@link #month}, month by month. */
  public List<MonthBody> of(Loss loss) {
    return all(loss::of).stream().filter(body -> loss.isKnownBy(body, lastDay())).toList();
  }

  /** The same month a year ago. */
  public MonthBodies yearAgo() {
    return months.get(0);
  }

  /** The last day of {@link #month}. */
  public LocalDate lastDay() {
    return month.atEndOfMonth();
  }

  private List<MonthBody> all(Function<MonthBodies, List<MonthBody>> bodies) {
    return months.stream().flatMap(m -> bodies.apply(m).stream()).toList();
  }
}
