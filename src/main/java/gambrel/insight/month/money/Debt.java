package gambrel.insight.month.money;

import gambrel.insight.month.figures.Evidence;
import gambrel.insight.month.figures.Finding;
import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.month.figures.MonthRecords;
import gambrel.trade.account.CustomerAccount;
import gambrel.trade.measure.Money;
import gambrel.trade.reckoning.Night;
import gambrel.trade.register.RegisterRow;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * An issued statement and what is left to pay on it.
 *
 * @param statement its latest revision
 * @param since the day of its first revision: a debt's age counts from there
 * @param due what is left to pay, see {@link CustomerAccount#open}; not below zero
 */
public record Debt(RegisterRow statement, LocalDate since, Money due) {
  /** Days after which a debt is late. */
  private static final int LATE_DAYS = 30;

  /** Oldest first. */
  private static final Comparator<Debt> ORDER =
      Comparator.comparing(Debt::since)
          .thenComparing(debt -> debt.statement().customer())
          .thenComparing(debt -> debt.statement().body());

  /** Received for the statement: charges and tax less what is due. */
  public Money received() {
    return statement.charges().plus(statement.tax()).minus(due);
  }

  /** The sum of an amount over some debts. */
  public static Money sum(List<Debt> debts, Function<Debt, Money> amount) {
    return Money.sum(debts.stream().map(amount));
  }

  /**
   * The debts that were late at the month's end, or on the night's day if the month is not over;
   * oldest first.
   */
  public static List<Debt> late(MonthRecords records) {
    return unpaid(records).stream().filter(debt -> debt.days(records) > LATE_DAYS).toList();
  }

  /** Its age in days at the month's end, or on the night's day if the month is not over. */
  long days(MonthRecords records) {
    var end = records.lastDay();
    var today = records.night().asOf().toLocalDate();
    return ChronoUnit.DAYS.between(since, today.isBefore(end) ? today : end);
  }

  /** The debts that are late; empty if there is none. */
  public static Optional<Finding> finding(MonthRecords records) {
    var late = late(records);
    var total = sum(late, Debt::due);
    return late.stream()
        .findFirst()
        .map(
            oldest ->
                Finding.certain(
                    Finding.Kind.UNPAID,
                    late.size() == 1 ? "one" : customers(late).size() == 1 ? "customer" : "many",
                    late.stream().map(debt -> debt.statement().body()).distinct().toList(),
                    Map.of(
                        "customers", new Evidence.Names(customers(late)),
                        "statements", new Evidence.Count(late.size()),
                        "total", new Evidence.Cash(total),
                        "days", new Evidence.Count(LATE_DAYS),
                        "customer", new Evidence.Name(oldest.customer(records.night())),
                        "since", new Evidence.Day(oldest.since()),
                        "due", new Evidence.Cash(oldest.due())),
                    Finding.Cost.ofShop(total)));
  }

  private static List<String> customers(List<Debt> debts) {
    return debts.stream().map(debt -> debt.statement().customer()).distinct().toList();
  }

  private String customer(Night night) {
    return night.shop().customer(statement.customer()).name();
  }

  /** Every statement of the month, oldest first. */
  public static List<Debt> of(MonthRecords records) {
    return where(records, records.month()::equals);
  }

  /** The statements of the month and of earlier months that are not paid in full, oldest first. */
  public static List<Debt> unpaid(MonthRecords records) {
    return where(records, month -> !month.isAfter(records.month())).stream()
        .filter(debt -> debt.due().compareTo(Money.ZERO) > 0)
        .toList();
  }

  private static List<Debt> where(MonthRecords records, Predicate<YearMonth> belongs) {
    var night = records.night();
    var left = new HashMap<List<String>, Money>();
    for (var account : records.accounts()) {
      account
          .open()
          .forEach(o -> left.put(List.of(account.customer(), o.statement().body()), o.left()));
    }
    return records.register().latest().stream()
        .filter(row -> belongs.test(month(night, row)))
        .map(
            row ->
                new Debt(
                    row,
                    records.register().since(row).toLocalDate(),
                    left.getOrDefault(List.of(row.customer(), row.body()), Money.ZERO)))
        .sorted(ORDER)
        .toList();
  }

  /** The month of the statement's body, or of the statement itself if the body has been deleted. */
  private static YearMonth month(Night night, RegisterRow row) {
    return Optional.ofNullable(night.bodies().get(row.body()))
        .flatMap(MonthBody::lastDay)
        .map(YearMonth::from)
        .orElseGet(() -> YearMonth.from(row.issued()));
  }
}
