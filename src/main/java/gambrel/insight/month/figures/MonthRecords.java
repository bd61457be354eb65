package gambrel.insight.month.figures;

import gambrel.trade.account.CustomerAccount;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Money;
import gambrel.trade.reckoning.Night;
import gambrel.trade.register.Accounts;
import gambrel.trade.register.Register;
import gambrel.trade.shop.Settings;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The records that a month's report is drawn from.
 *
 * @param night the night's figures
 * @param register every statement, including tonight's
 * @param accounts the customers' accounts on the night, as {@link Accounts} has them
 * @param bodies the month's bodies
 * @param baseline the bodies of the twelve calendar months before, with which the month is compared
 * @param values what weight is worth on the last day of the month
 */
public record MonthRecords(
    Night night,
    Register register,
    List<CustomerAccount> accounts,
    MonthBodies bodies,
    MonthBodies baseline,
    ItemValues values) {
  /** The least number of bodies of the baseline that limits are computed from. */
  public static final int ENOUGH = 20;

  /** The records of one month. */
  public static MonthRecords of(Night night, Register register, YearMonth month) {
    return of(MonthBody.all(night), night, register, Accounts.of(night, register), month);
  }

  /** The records of a month, from all bodies as {@link MonthBody#all} reads them. */
  public static MonthRecords of(
      List<MonthBody> all,
      Night night,
      Register register,
      List<CustomerAccount> accounts,
      YearMonth month) {
    var first = month.minusMonths(12);
    var both = MonthBodies.of(night, all, first, month);
    return new MonthRecords(
        night,
        register,
        accounts,
        both.between(month, month),
        both.between(first, month.minusMonths(1)),
        new ItemValues(both));
  }

  /** The month. */
  public YearMonth month() {
    return bodies.month();
  }

  /** The bodies of the twelve months that end with the month. */
  public MonthBodies year() {
    return bodies.between(month().minusMonths(11), month());
  }

  /** The same month a year ago. */
  public MonthBodies yearAgo() {
    return bodies.between(month().minusMonths(12), month().minusMonths(12));
  }

  /** The last day of the month. */
  public LocalDate lastDay() {
    return month().atEndOfMonth();
  }

  /** The shop's settings. */
  public Settings settings() {
    return night.shop().settings();
  }

  /** What a weight on the rail, in the shop's unit, is worth; empty where values are missing. */
  public Optional<Money> worth(Species species, BigFraction weight) {
    return values.onRail(species).map(r -> Money.of(r.multiply(weight), settings().currency()));
  }

  /** The settled bodies cut in the twelve months before and in the month, those before first. */
  public List<MonthBody> settledOfAll() {
    return Stream.concat(baseline.settled().stream(), bodies.settled().stream()).toList();
  }

  /** The settled bodies of every species, in the month and in the twelve months before. */
  public List<Compared<List<MonthBody>>> settled() {
    return Compared.bySpecies(bodies.settled(), baseline.settled());
  }

  /**
   * The bodies of every species with a loss: those of the month, and those of the twelve months
   * before whose rail weighings were made by the month's last day. Later months do not change them,
   * so that an old summary keeps its limits; corrections of their weighings do.
   */
  public List<Compared<List<MonthBody>>> with(BodyFigure loss) {
    return Compared.bySpecies(loss.in(bodies), known(loss, loss.in(baseline)));
  }

  /**
   * The same for a chart. It also shows bodies that hung on unweighed, and those of the month that
   * are held: a scale that drifts is found by what it does to all.
   */
  public List<Compared<List<MonthBody>>> charted(BodyFigure loss) {
    var before = known(loss, loss.charted(baseline, true));
    return Compared.bySpecies(loss.charted(bodies, false), before);
  }

  private List<MonthBody> known(BodyFigure loss, List<MonthBody> before) {
    return before.stream().filter(body -> loss.isKnownBy(body, lastDay())).toList();
  }
}
