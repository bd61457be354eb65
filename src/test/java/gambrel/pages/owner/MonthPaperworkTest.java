package gambrel.pages.owner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.insight.month.MonthReport;
import gambrel.insight.month.figures.MonthRecords;
import gambrel.pages.render.PrintedPages;
import gambrel.pages.views.SummaryView;
import gambrel.trade.measure.Money;
import gambrel.trade.measure.Weight;
import gambrel.trade.register.Register;
import gambrel.trade.register.RegisterRow;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MonthPaperworkTest {
  private static final String NOW = "2026-09-15T02:00:00Z";

  @TempDir private Path folder;
  private SmallShop shop;

  @BeforeEach
  void startAShopWithABodyCutInEachMonth() {
    shop = new SmallShop(folder);
    shop.beef("B7", "2026-07-06", "c-ann").hung("B7", "2026-07-06", "204", "200");
    shop.cut("B7", "2026-07-09", "156", "40");
    shop.beef("B8", "2026-07-30", "c-bob").hung("B8", "2026-07-30", "204", "200");
    shop.cut("B8", "2026-08-05", "156", "40");
  }

  @Test
  void unpaidStatementsOfTheMonthAndBeforeComeOldestFirst() {
    var register =
        new Register(
            List.of(
                statement("c-bob", "B8", 1, "2026-08-06", 12_000, 1_200),
                statement("c-ann", "B7", 1, "2026-07-10", 10_000, 1_000)));
    var august = summary("2026-08", register);
    assertEquals(
        List.of(
            List.of("Ann Lowry", "10 July 2026", "B7", "110.00"),
            List.of("Bob Teasel", "6 August 2026", "B8", "132.00")),
        unpaid(august));
    assertEquals("242.00", owed(august));
    assertEquals(1, unpaid(summary("2026-07", register)).size());
  }

  @Test
  void aCustomerWhoOwesForSeveralBodiesHasOneLine() {
    var register =
        new Register(
            List.of(
                statement("c-ann", "B8", 1, "2026-08-06", 12_000, 0),
                statement("c-ann", "B7", 1, "2026-07-10", 10_000, 0)));
    assertEquals(
        List.of(List.of("Ann Lowry", "10 July 2026", "B7, B8", "220.00")),
        unpaid(summary("2026-08", register)));
  }

  /** 220 are owed for July and August; 120 that name no body pay July and 20 of August. */
  @Test
  void aPaymentThatNamesNoBodyPaysTheOldestFirst() {
    var register =
        new Register(
            List.of(
                statement("c-ann", "B8", 1, "2026-08-06", 12_000, 0),
                statement("c-ann", "B7", 1, "2026-07-10", 10_000, 0)));
    shop.add("payments.csv", "c-ann,,2026-09-01,120.00");
    assertEquals("0.00", owed(summary("2026-07", register)));
    assertEquals("100.00", owed(summary("2026-08", register)));
  }

  @Test
  void aPaymentCountsFromItsDayOn() {
    var register = new Register(List.of(statement("c-ann", "B7", 1, "2026-07-10", 10_000, 1_000)));
    shop.add("payments.csv", "c-ann,B7,2026-09-01,60.00");
    shop.add("payments.csv", "c-ann,B7,2026-12-01,50.00");
    assertEquals("50.00", owed(summary("2026-07", register)));
    assertEquals(List.of(), unpaid(summary(register, "2026-12-02T02:00:00Z")));
  }

  /** The day at the head is the last weighing's, whatever is paid later. */
  @Test
  void thePageSaysThatPaymentsAreAsOfTheNightOfPrinting() {
    var register = new Register(List.of(statement("c-ann", "B7", 1, "2026-07-10", 10_000, 1_000)));
    shop.add("payments.csv", "c-ann,B7,2026-09-01,110.00");
    var unpaid = summary(register, "2026-08-30T02:00:00Z");
    var paid = summary(register, "2026-09-02T02:00:00Z");
    assertEquals(unpaid.known(), paid.known());
    assertEquals(1, unpaid(unpaid).size());
    assertEquals(List.of(), unpaid(paid));
    assertTrue(saysOfWhichNight("2026-08-30T02:00:00Z", register), "with a list of unpaid ones");
    assertTrue(saysOfWhichNight("2026-09-02T02:00:00Z", register), "with sums alone");
    assertFalse(saysOfWhichNight(NOW, SmallShop.NOTHING_ISSUED));
  }

  private boolean saysOfWhichNight(String moment, Register register) {
    var night = shop.at(moment);
    var pages =
        PrintedPages.of(
            new OwnerDocuments(night.shop().settings())
                .summary(MonthReport.of(MonthRecords.of(night, register, YearMonth.of(2026, 7)))));
    return String.join(" ", pages).contains("Received and owed are as of the night that printed");
  }

  @Test
  void onlyTheLatestRevisionIsOwedButSinceTheFirst() {
    var register =
        new Register(
            List.of(
                statement("c-ann", "B7", 1, "2026-07-10", 10_000, 0),
                statement("c-ann", "B7", 2, "2026-07-20", 9_000, 0)));
    assertEquals(
        List.of(List.of("Ann Lowry", "10 July 2026", "B7", "90.00")),
        unpaid(summary("2026-07", register)));
  }

  @Test
  void theSumsOfAMonthAreOfItsOwnStatements() {
    var register =
        new Register(
            List.of(
                statement("c-bob", "B8", 1, "2026-08-06", 12_000, 1_200),
                statement("c-ann", "B7", 1, "2026-07-10", 10_000, 1_000)));
    shop.add("payments.csv", "c-ann,B7,2026-07-11,115.00");
    assertEquals(
        List.of(
            List.of("Rate of tax not kept", "100.00", "10.00", "", ""),
            List.of("Total, 1 statement", "100.00", "10.00", "110.00", "0.00")),
        SmallShop.rows(summary("2026-07", register), "accounts"));
  }

  /** On 15 September the debt of 10 July is 67 days old, that of 6 August 40. */
  @Test
  void debtsAreToldByAge() {
    var register =
        new Register(
            List.of(
                statement("c-bob", "B8", 1, "2026-08-06", 12_000, 1_200),
                statement("c-ann", "B7", 1, "2026-07-10", 10_000, 1_000)));
    shop.beef("B9", "2026-09-01", "c-ann").hung("B9", "2026-09-01", "204", "200");
    assertEquals(
        List.of("0.00", "132.00", "110.00", "0.00", "242.00"),
        SmallShop.rows(summary("2026-09", register), "ages").get(0).subList(1, 6));
  }

  @Test
  void weightsOfAMonthAddUpWhatBelongsToIt() {
    var july = summary("2026-07", SmallShop.NOTHING_ISSUED);
    assertEquals(
        List.of(List.of("Customers’ bodies", "1", "204.0", "200.0", "156.0")),
        SmallShop.rows(july, "sums"));
  }

  @Test
  void aBatchBelongsToTheMonthOfItsLastRow() {
    shop.add("batches.csv", "M1,Beef mince,");
    shop.beef("B9", "2026-07-06", "c-ann").hung("B9", "2026-07-06", "51", "50");
    shop.row("bench", "2026-07-31T09:00", "B9", "trim", "48", "M1");
    shop.row("bench", "2026-08-01T09:00", "", "mince", "47.04", "M1");
    assertEquals(List.of(), batches("2026-07"));
    assertEquals(
        List.of(List.of("M1", "Beef mince", "48.00", "", "47.04", "0.96", "2.0", "balances")),
        batches("2026-08"));
  }

  @Test
  void anOpenBatchSaysWhenItIsDue() {
    shop.add("batches.csv", "H1,Ham,2026-09-20");
    shop.row("bench", "2026-09-01T09:00", "B8", "trim", "2", "H1");
    var batch = batches("2026-09").get(0);
    assertEquals("open, due 20 Sep", batch.get(7));
    assertEquals(List.of("", "", ""), batch.subList(4, 7));
  }

  private List<List<String>> batches(String month) {
    return SmallShop.rows(summary(month, SmallShop.NOTHING_ISSUED), "batches");
  }

  private static List<List<String>> unpaid(SummaryView month) {
    return SmallShop.rows(month, "unpaid");
  }

  /** What is owed in sum, of the last column of the ages. */
  private static String owed(SummaryView month) {
    return SmallShop.rows(month, "ages").get(0).get(5);
  }

  private SummaryView summary(String month, Register register) {
    return SmallShop.summary(shop.at(NOW), month, register);
  }

  private SummaryView summary(Register register, String moment) {
    return SmallShop.summary(shop.at(moment), "2026-07", register);
  }

  private static RegisterRow statement(
      String customer, String body, int revision, String issued, long charges, long tax) {
    return new RegisterRow(
        customer,
        body,
        revision,
        LocalDateTime.parse(issued + "T02:00:00"),
        Weight.ofThousandths(156_000),
        new Money(charges),
        new Money(tax),
        Money.ZERO,
        revision == 1 ? Optional.empty() : Optional.of(revision - 1),
        "statements/" + customer + "/" + body + "-r" + revision + ".pdf",
        "",
        "",
        Optional.empty(),
        List.of());
  }
}
