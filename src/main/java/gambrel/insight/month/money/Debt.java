package gambrel.insight.month.money;

import gambrel.insight.month.bodies.BodyCalendar;
import gambrel.insight.month.bodies.MonthBodies;
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
 * An issued statement and what has been paid of it by now.
 *
 * @param statement its latest revision
 * @param since the day of its first revision: a revision does not make a debt younger
 * @param month the month that it belongs to
 * @param paid by now
 */
public record Debt(RegisterRow statement, LocalDate since, YearMonth month, Money paid) {
  /** Oldest first. */
  private static final Comparator<Debt> ORDER =
      Comparator.comparing(Debt::since)
          .thenComparing(debt -> debt.statement().customer())
          .thenComparing(debt -> debt.statement().body());

  /** Charges and tax less payments; negative where the shop owes the customer. */
  public Money due() {
    return statement.charges().plus(statement.tax()).minus(paid);
  }

  /** An amount of some debts in sum. */
  public static Money sum(List<Debt> debts, Function<Debt, Money> amount) {
    return debts.stream().map(amount).reduce(Money.ZERO, Money::plus);
  }

  /** Every statement of {@code month}, oldest first. */
  public static List<Debt> of(MonthBodies month, Register register) {
    return where(month.night(), register, month.month()::equals);
  }

  /** Every statement of {@code month} and before, oldest first. */
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

  /** The month of the statement's body; of the statement itself where the body is gone. */
  private static YearMonth month(Night night, RegisterRow row) {
    return Optional.ofNullable(night.bodies().get(row.body()))
        .flatMap(BodyCalendar::of)
        .orElseGet(() -> YearMonth.from(row.issued()));
  }
}
