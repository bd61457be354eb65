package gambrel.insight.month.money;

import gambrel.insight.month.bodies.MonthBodies;
import gambrel.insight.month.bodies.MonthBody;
import gambrel.insight.month.bodies.MonthRecords;
import gambrel.trade.measure.Money;
import gambrel.trade.reckoning.Night;
import gambrel.trade.register.Register;
import gambrel.trade.register.RegisterRow;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * An issued statement and its payments.
 *
 * @param statement its latest revision
 * @param since the day of its first revision: a debt's age counts from there
 * @param month the month that it belongs to
 * @param paid what has been paid
 */
public record Debt(RegisterRow statement, LocalDate since, YearMonth month, Money paid) {
  /** Days after which a debt is late. */
  public static final int LATE_DAYS = 30;

  /** Oldest first. */
  private static final Comparator<Debt> ORDER =
      Comparator.comparing(Debt::since)
          .thenComparing(debt -> debt.statement().customer())
          .thenComparing(debt -> debt.statement().body());

  /** Charges and tax less payments; negative where the shop owes the customer. */
  public Money due() {
    return statement.charges().plus(statement.tax()).minus(paid);
  }

  /** The sum of an amount over some debts. */
  public static Money sum(List<Debt> debts, Function<Debt, Money> amount) {
    return debts.stream().map(amount).reduce(Money.ZERO, Money::plus);
  }

  /**
   * The debts that were late at the month's end, or on the night's day if the month is not over;
   * oldest first.
   */
  public static List<Debt> late(MonthRecords records) {
    var end = records.month().atEndOfMonth();
    var today = records.night().asOf().toLocalDate();
    var day = today.isBefore(end) ? today : end;
    return until(records.bodies(), records.register()).stream()
        .filter(debt -> debt.due().compareTo(Money.ZERO) > 0)
        .filter(debt -> debt.since().plusDays(LATE_DAYS).isBefore(day))
        .toList();
  }

  /** Every statement of {@code month}, oldest first. */
  public static List<Debt> of(MonthBodies month, Register register) {
    return where(month.night(), register, month.month()::equals);
  }

  /** Every statement of {@code month} and of earlier months, oldest first. */
  public static List<Debt> until(MonthBodies month, Register register) {
    return where(month.night(), register, m -> !m.isAfter(month.month()));
  }

  private static List<Debt> where(Night night, Register register, Predicate<YearMonth> belongs) {
    return register.latest().stream()
        .filter(row -> belongs.test(month(night, row)))
        .map(row -> of(night, register, row))
        .sorted(ORDER)
        .toList();
  }

  private static Debt of(Night night, Register register, RegisterRow row) {
    return new Debt(
        row,
        register.since(row).toLocalDate(),
        month(night, row),
        night.paid(row.customer(), row.body()));
  }

  /** The month of the statement's body, or of the statement itself if the body has been deleted. */
  private static YearMonth month(Night night, RegisterRow row) {
    return Optional.ofNullable(night.bodies().get(row.body()))
        .flatMap(MonthBody::lastDay)
        .map(YearMonth::from)
        .orElseGet(() -> YearMonth.from(row.issued()));
  }
}
