package gambrel.month;

import gambrel.reckoning.Night;
import gambrel.register.Register;
import java.time.YearMonth;

/**
 * Everything that a month's findings are drawn from.
 *
 * @param night the night's figures
 * @param register every statement, tonight's too
 * @param bodies the month's bodies
 * @param baseline the twelve months before
 * @param rail what weight on the rail is worth
 */
public record MonthRecords(
    Night night, Register register, MonthBodies bodies, Baseline baseline, RailValue rail) {

  /** The records of {@code month}. */
  public static MonthRecords of(Night night, Register register, YearMonth month) {
    return of(new BodyCalendar(night), night, register, month);
  }

  /** The records of {@code month}, where several months are wanted. */
  public static MonthRecords of(
      BodyCalendar calendar, Night night, Register register, YearMonth month) {
    var bodies = calendar.of(month);
    var baseline = new Baseline(calendar, month);
    return new MonthRecords(night, register, bodies, baseline, new RailValue(bodies, baseline));
  }

  /** The month. */
  public YearMonth month() {
    return bodies.month();
  }
}
