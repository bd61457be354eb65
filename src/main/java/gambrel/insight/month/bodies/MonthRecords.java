package gambrel.insight.month.bodies;

import gambrel.trade.measure.Money;
import gambrel.trade.reckoning.Night;
import gambrel.trade.register.Register;
import gambrel.trade.shop.Settings;
import java.math.BigInteger;
import java.time.YearMonth;
import java.util.List;
import java.util.stream.Stream;

/**
 * The records that a month's report is drawn from.
 *
 * @param night the night's figures
 * @param register every statement, including tonight's
 * @param bodies the month's bodies
 * @param baseline the bodies of the twelve months before
 * @param rail what weight on the rail is worth
 */
public record MonthRecords(
    Night night, Register register, MonthBodies bodies, Baseline baseline, RailValue rail) {

  /** The records of one month. */
  public static MonthRecords of(Night night, Register register, YearMonth month) {
    return of(new BodyCalendar(night), night, register, month);
  }

  /** The records of a month, from a calendar that several months share. */
  public static MonthRecords of(
      BodyCalendar calendar, Night night, Register register, YearMonth month) {
    var bodies = calendar.of(month);
    var baseline = calendar.before(month);
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
    return BigInteger.TEN.pow(Money.digits(settings().currency())).longValueExact();
  }

  /** The settled bodies cut in the twelve months before and in the month, earliest month first. */
  public List<MonthBody> settledOfAll() {
    return Stream.concat(baseline.settled().stream(), bodies.settled().stream()).toList();
  }

  /** The settled bodies of every species, in the month and in the twelve months before. */
  public List<Compared<List<MonthBody>>> settled() {
    return Compared.bySpecies(bodies.settled(), baseline.settled());
  }
}
