package gambrel.month;

import gambrel.balance.Drawings;
import gambrel.balance.Drawn;
import gambrel.reckoning.Night;
import gambrel.register.Register;
import java.time.YearMonth;

/** Everything that a month's findings are drawn from; what is drawn is kept with it. */
public final class MonthRecords implements Drawn.Subject {
  private final Night night;
  private final Register register;
  private final MonthBodies bodies;
  private final Baseline baseline;
  private final RailValue rail;
  private final Drawings drawings = new Drawings();

  private MonthRecords(Night night, Register register, MonthBodies bodies, Baseline baseline) {
    this.night = night;
    this.register = register;
    this.bodies = bodies;
    this.baseline = baseline;
    this.rail = new RailValue(bodies, baseline);
  }

  /** The records of {@code month}. */
  public static MonthRecords of(Night night, Register register, YearMonth month) {
    return of(new BodyCalendar(night), night, register, month);
  }

  /** The records of {@code month}, where several months are wanted. */
  public static MonthRecords of(
      BodyCalendar calendar, Night night, Register register, YearMonth month) {
    return new MonthRecords(
        night, register, calendar.of(month), new Baseline(calendar, month));
  }

  /** The month. */
  public YearMonth month() {
    return bodies.month();
  }

  /** The night's figures. */
  public Night night() {
    return night;
  }

  /** Every statement, tonight's too. */
  public Register register() {
    return register;
  }

  /** The month's bodies. */
  public MonthBodies bodies() {
    return bodies;
  }

  /** The twelve months before. */
  public Baseline baseline() {
    return baseline;
  }

  /** What weight on the rail is worth. */
  public RailValue rail() {
    return rail;
  }

  @Override
  public Drawings drawings() {
    return drawings;
  }
}
