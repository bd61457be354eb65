package gambrel.trade.account;

import gambrel.trade.measure.ByteOrder;
import gambrel.trade.measure.Money;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What a customer was charged on all statements together, and has paid.
 *
 * @param customer the customer's id
 * @param statements the statements in force, oldest first
 * @param other payments that name none of their bodies; negative if more was paid back
 */
public record CustomerAccount(String customer, List<Statement> statements, Money other) {
  private static final Comparator<Statement> OLDEST_FIRST =
      Comparator.comparing(Statement::since).thenComparing(Statement::body, ByteOrder.IDS);

  /**
   * A statement in force.
   *
   * @param body the body that it is about
   * @param since the day on which its first revision was issued: its age counts from there
   * @param money its charges and tax, and the payments that name its body
   */
  public record Statement(String body, LocalDate since, CustomerMoney money) {}

  /** Sorts the statements. */
  public CustomerAccount {
    statements = statements.stream().sorted(OLDEST_FIRST).toList();
  }

  /** Charges without tax. */
  public Money charges() {
    return sum(CustomerMoney::net);
  }

  /** Tax on the charges. */
  public Money tax() {
    return sum(CustomerMoney::tax);
  }

  /** All payments. */
  public Money paid() {
    return sum(CustomerMoney::paid).plus(other);
  }

  /** What is left to pay; below zero if the shop owes it. */
  public Money due() {
    return sum(CustomerMoney::due).minus(other);
  }

  /** The statements about other bodies. */
  public List<Statement> without(String body) {
    return statements.stream().filter(statement -> !statement.body().equals(body)).toList();
  }

  private Money sum(Function<CustomerMoney, Money> amount) {
    return Money.sum(statements.stream().map(statement -> amount.apply(statement.money())));
  }

  /**
   * The day of the oldest statement that is not paid in full. What the shop owes on a statement,
   * and payments that name none of the bodies, go to the oldest first. Empty if nothing is due, and
   * if all that is due was paid back to a customer without a statement.
   */
  public Optional<LocalDate> oldest() {
    if (due().compareTo(Money.ZERO) <= 0) {
      return Optional.empty();
    }
    var left = other;
    for (var statement : statements) {
      left = left.minus(least(statement.money().due(), Money.ZERO));
    }
    for (var statement : statements) {
      var due = statement.money().due();
      left = left.minus(due.compareTo(Money.ZERO) > 0 ? due : Money.ZERO);
      if (due.compareTo(Money.ZERO) > 0 && left.compareTo(Money.ZERO) < 0) {
        return Optional.of(statement.since());
      }
    }
    return statements.stream().findFirst().map(Statement::since);
  }

  private static Money least(Money one, Money other) {
    return one.compareTo(other) < 0 ? one : other;
  }
}
