package gambrel.month;

import gambrel.reckoning.BodyAccount;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * The bodies of the twelve calendar months before a month, against which the month is held. It is
 * fixed for the month: what later months bring does not enter, so that an old summary keeps its
 * limits. Corrections, which change what was weighed then, do enter.
 *
 * <p>Bodies belong to their months as in {@link MonthBodies}; a rail weighing later than the month's
 * last day is as yet unknown to it.
 */
public final class Baseline {
  /** Fewer bodies than this carry no limits. */
  public static final int ENOUGH = 20;

  static final int MONTHS = 12;

  private final YearMonth month;
  private final List<MonthBodies> before = new ArrayList<>();

  /** The baseline of {@code month}. */
  public Baseline(BodyCalendar calendar, YearMonth month) {
    this.month = month;
    for (int i = MONTHS; i > 0; i--) {
      before.add(calendar.of(month.minusMonths(i)));
    }
  }

  /** The month that it is the baseline of. */
  public YearMonth month() {
    return month;
  }

  /** Bodies killed in it, in order of kill. */
  public List<BodyAccount> killed() {
    return all(MonthBodies::killed);
  }

  /** Bodies cut in it, month by month, those killed first first. */
  public List<BodyAccount> cut() {
    return all(MonthBodies::cut);
  }

  /** Bodies of which a loss was known by the month's last day, month by month. */
  public List<BodyAccount> of(Loss loss) {
    return all(loss::of).stream()
        .filter(account -> loss.isKnownBy(account.balance(), lastDay()))
        .toList();
  }

  /** Its months, oldest first. */
  public List<MonthBodies> months() {
    return List.copyOf(before);
  }

  /** The same month a year ago. */
  public MonthBodies yearAgo() {
    return before.get(0);
  }

  /** The last day of which anything is known to the month. */
  public LocalDate lastDay() {
    return month.atEndOfMonth();
  }

  private List<BodyAccount> all(Function<MonthBodies, List<BodyAccount>> which) {
    return before.stream().flatMap(m -> which.apply(m).stream()).toList();
  }
}
