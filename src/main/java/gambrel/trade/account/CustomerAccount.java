package gambrel.trade.account;

import gambrel.trade.measure.ByteOrder;
import gambrel.trade.measure.Money;
import java.time.LocalDate;
import java.util.ArrayList;
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
  /** Who has owed longest first, then who owes most; who owes nothing comes last. */
  public static final Comparator<CustomerAccount> LONGEST_OWING_FIRST =
      Comparator.comparing((CustomerAccount account) -> account.oldest().orElse(LocalDate.MAX))
          .thenComparing(CustomerAccount::due, Comparator.reverseOrder())
          .thenComparing(CustomerAccount::customer, ByteOrder.IDS);

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
   * A statement that is not paid in full.
   *
   * @param statement the statement
   * @param left what is left to pay on it, more than zero
   */
  public record Open(Statement statement, Money left) {}

  /**
   * The statements that are not paid in full, oldest first; together they come to what is due. What
   * the shop owes on a statement, and payments that name none of the bodies, go to the oldest
   * first. Money that was paid back is due on the oldest. None if nothing is due, or if the
   * customer has no statement.
   */
  public List<Open> open() {
    var spare = other;
    for (var statement : statements) {
      spare = spare.minus(least(statement.money().due(), Money.ZERO));
    }
    var open = new ArrayList<Open>();
    for (var statement : statements) {
      var due = statement.money().due();
      if (due.compareTo(Money.ZERO) > 0) {
        var left = due.minus(spare);
        if (left.compareTo(Money.ZERO) > 0) {
          open.add(new Open(statement, left));
          spare = Money.ZERO;
        } else {
          spare = spare.minus(due);
        }
      }
    }
    if (spare.compareTo(Money.ZERO) < 0 && !statements.isEmpty()) {
      open.add(new Open(statements.get(0), Money.ZERO.minus(spare)));
    }
    return open;
  }

  private static Money least(Money one, Money other) {
    return one.compareTo(other) < 0 ? one : other;
  }

  /** The day of the oldest statement that is not paid in full; empty if there is none. */
  public Optional<LocalDate> oldest() {
    return open().stream().findFirst().map(open -> open.statement().since());
  }
}
