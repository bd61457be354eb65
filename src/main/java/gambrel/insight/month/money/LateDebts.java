package gambrel.insight.month.money;

import gambrel.insight.month.bodies.MonthRecords;
import gambrel.trade.measure.Money;
import java.time.LocalDate;
import java.util.List;

/** Debts that have waited long: a month has passed since the statement went out. */
public final class LateDebts {
  /** Days after which a debt is late. */
  public static final int DAYS = 30;

  private LateDebts() {}

  /** Those that were late at the month's end, or are by now where the month is not over. */
  public static List<Debt> of(MonthRecords records) {
    var end = records.month().atEndOfMonth();
    var now = records.night().asOf().toLocalDate();
    LocalDate day = now.isBefore(end) ? now : end;
    return Debt.until(records.bodies(), records.register()).stream()
        .filter(debt -> debt.due().compareTo(Money.ZERO) > 0)
        .filter(debt -> debt.since().plusDays(DAYS).isBefore(day))
        .toList();
  }
}
