package gambrel.scenes;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * {@code accounts.csv}: Ann's B1 is issued on 12 March for 100, her B2 on 20 March for 50, both
 * without tax.
 */
class AccountsTest extends SceneTest {
  private static final String PAYMENTS = "customer,body,date,amount";

  @BeforeEach
  void twoStatements() {
    scene.simpleBody();
    scene.file(
        "charges.csv",
        "charge,description,basis,price,body",
        "a,Cutting,head,100,B1",
        "b,Cutting,head,50,B2");
    scene.nextNight("12T02:00");
    scene.body("B2,beef,2026-03-09,ann,560");
    scene.weigh(
        """
        09T10:00 B2 hot  carcase 300
        10T10:00 B2 cold carcase 294
        12T10:00 B2 pack rump    294
        """);
    scene.nextNight("20T02:00");
  }

  /** Ann's row after these payments, without her id. */
  private String account(String... payments) {
    scene.file("payments.csv", PAYMENTS).add("payments.csv", payments);
    return row("ann", scene.nextNight("25T02:00"));
  }

  private static String row(String customer, Found found) {
    var row = found.rows("accounts", "customer=" + customer).get(0);
    return String.join(
        " ",
        row.get("statements"),
        row.get("charges"),
        row.get("tax"),
        row.get("paid"),
        row.get("due"),
        row.get("oldest"));
  }

  @Test
  void unpaidStatementsAddUpAndTheFirstIsTheOldest() {
    assertEquals("2 150.00 0.00 0.00 150.00 2026-03-12", account());
  }

  @Test
  void aPaymentForABodyPaysItsStatement() {
    assertEquals("2 150.00 0.00 100.00 50.00 2026-03-20", account("ann,B1,2026-03-21,100"));
    assertEquals("2 150.00 0.00 50.00 100.00 2026-03-12", account("ann,B2,2026-03-21,50"));
  }

  @Test
  void aPaymentForNoBodyGoesToTheOldest() {
    assertEquals("2 150.00 0.00 99.99 50.01 2026-03-12", account("ann,,2026-03-21,99.99"));
    assertEquals("2 150.00 0.00 100.00 50.00 2026-03-20", account("ann,,2026-03-21,100"));
  }

  @Test
  void whatWasOverpaidOnOneStatementGoesToTheOldest() {
    assertEquals("2 150.00 0.00 149.99 0.01 2026-03-12", account("ann,B2,2026-03-21,149.99"));
    assertEquals("2 150.00 0.00 150.00 0.00 ", account("ann,B2,2026-03-21,150"));
    assertEquals("2 150.00 0.00 160.00 -10.00 ", account("ann,B2,2026-03-21,160"));
  }

  /** A deposit for an animal that is not cut yet. */
  @Test
  void aPaymentForABodyWithoutAStatementGoesToTheOldest() {
    assertEquals("2 150.00 0.00 100.00 50.00 2026-03-20", account("ann,B9,2026-03-21,100"));
  }

  @Test
  void whatWasPaidBackIsDueAgain() {
    assertEquals(
        "2 150.00 0.00 140.00 10.00 2026-03-12",
        account("ann,B1,2026-03-13,100", "ann,B2,2026-03-21,50", "ann,,2026-03-22,-10"));
  }

  @Test
  void aPaymentOfTomorrowIsNotPaid() {
    assertEquals("2 150.00 0.00 0.00 150.00 2026-03-12", account("ann,B1,2026-03-26,100"));
  }

  @Test
  void aCustomerWithAPaymentAloneHasAnAccount() {
    scene.file("payments.csv", PAYMENTS, "bob,,2026-03-21,30", "cat,,2026-03-26,30");
    var found = scene.nextNight("25T02:00");
    assertEquals("0 0.00 0.00 30.00 -30.00 ", row("bob", found));
    assertEquals(2, found.rows("accounts").size());
  }

  @Test
  void aRevisionCountsOnceAndItsDebtIsAsOldAsTheFirst() {
    scene.correct("bench", "3", "net", "119.9", "21");
    scene.file("charges.csv", "charge,description,basis,price,body", "a,Cutting,head,70,B1");
    assertEquals("2 120.00 0.00 0.00 120.00 2026-03-12", account());
  }
}
