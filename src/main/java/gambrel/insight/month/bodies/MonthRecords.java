package gambrel.insight.month.bodies;

import gambrel.trade.measure.Money;
import gambrel.trade.reckoning.Night;
import gambrel.trade.register.Register;
import gambrel.trade.shop.Settings;
import java.time.YearMonth;
import java.util.List;
import java.util.stream.Stream;

/**
 * The records that a month is drawn from.
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

  /** The records of {@code month}, if several months are wanted. */
  public static MonthRecords of(
      BodyCalendar calendar, Night night, Register register, YearMonth month) {
    var bodies = calendar.of(month);
    var baseline = new Baseline(month, calendar.before(month));
    return new MonthRecords(night, register, bodies, baseline, new RailValue(bodies, baseline));
  }

  /** The month. */
  public YearMonth month() {
    return bodies.month();
  }

  /** The shop's settings. */
  public Settings settings() {
    return night.shop().settings();
  }

  /** How many minor units of the shop's currency make its major unit. */
  public long minorUnits() {
    long units = 1;
    for (int i = Money.digits(settings().currency()); i > 0; i--) {
      units *= 10;
    }
    return units;
  }

  /**
   * The bodies cut in the month and the twelve before it whose weights hold, earliest month first:
   * a single month has few of a kind.
   */
  public List<MonthBody> lately() {
    return Stream.concat(baseline.settled().stream(), bodies.settled().stream()).toList();
  }
}
