package gambrel.trade.account;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.trade.account.CustomerAccount.Statement;
import gambrel.trade.measure.Money;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What a customer owes, and on which statements. Money is in cents. */
class CustomerAccountTest {
  private static final LocalDate FIRST = LocalDate.of(2026, 3, 1);

  /** A statement of a day of March; of what it charges something may be paid. */
  private static Statement statement(String body, int day, long charged, long paid) {
    var money = new CustomerMoney(cents(charged), Money.ZERO, cents(paid));
    return new Statement(body, FIRST.withDayOfMonth(day), money);
  }

  private static Money cents(long cents) {
    return new Money(cents);
  }

  private static CustomerAccount account(long other, Statement... statements) {
    return new CustomerAccount("ann", List.of(statements), cents(other));
  }

  /** Bodies and what is left on them: {@code B1 100}. */
  private static List<String> open(CustomerAccount account) {
    return account.open().stream()
        .map(open -> open.statement().body() + " " + open.left().minor())
        .toList();
  }

  @Test
  void aPaymentWithoutABodyGoesToTheOldestFirst() {
    var two = new Statement[] {statement("B2", 2, 100, 0), statement("B1", 1, 100, 0)};
    assertEquals(List.of("B1 100", "B2 100"), open(account(0, two)));
    assertEquals(List.of("B1 1", "B2 100"), open(account(99, two)));
    assertEquals(List.of("B2 100"), open(account(100, two)));
    assertEquals(List.of("B2 50"), open(account(150, two)));
    assertEquals(List.of(), open(account(200, two)));
    assertEquals(List.of(), open(account(201, two)));
  }

  @Test
  void whatTheShopOwesOnAStatementPaysTheOthers() {
    var account = account(0, statement("B1", 1, 100, 0), statement("B2", 2, -30, 0));
    assertEquals(List.of("B1 70"), open(account));
    assertEquals(cents(70), account.due());
  }

  @Test
  void anOverpaymentPaysTheOthers() {
    var account = account(0, statement("B1", 1, 100, 130), statement("B2", 2, 100, 0));
    assertEquals(List.of("B2 70"), open(account));
  }

  @Test
  void moneyThatWasPaidBackIsDueOnTheOldest() {
    var account = account(-20, statement("B1", 1, 100, 100), statement("B2", 2, 50, 50));
    assertEquals(List.of("B1 20"), open(account));
    assertEquals(Optional.of(FIRST), account.oldest());
  }

  @Test
  void withoutAStatementNothingIsOpen() {
    assertEquals(List.of(), open(account(-20)));
    assertEquals(Optional.empty(), account(-20).oldest());
    assertEquals(cents(20), account(-20).due());
  }

  @Test
  void theOtherStatementsLeaveOutABody() {
    var account = account(0, statement("B1", 1, 100, 0), statement("B2", 2, 50, 0));
    assertEquals(List.of("B2"), account.without("B1").stream().map(Statement::body).toList());
  }

  @Test
  void whoHasOwedLongestComesFirstAndThenWhoOwesMost() {
    var oldest = account(0, statement("B1", 1, 10, 0));
    var most = account(0, statement("B2", 2, 90, 0));
    var less = account(0, statement("B3", 2, 80, 0));
    var nothing = account(0, statement("B4", 1, 80, 80));
    assertEquals(
        List.of(oldest, most, less, nothing),
        Stream.of(nothing, less, most, oldest)
            .sorted(CustomerAccount.LONGEST_OWING_FIRST)
            .toList());
  }

  @Test
  void moneyThatWasPaidBackIsDueOnTheOldestThatIsNotPaid() {
    var account = account(-5, statement("B1", 1, 100, 100), statement("B2", 2, 10, 0));
    assertEquals(List.of("B2 15"), open(account));
  }
}
