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
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
            List.of("10 July 2026", "Ann Lowry", "B7", "110.00"),
            List.of("6 August 2026", "Bob Teasel", "B8", "132.00")),
        unpaid(august));
    assertEquals("242.00", total(august));
    assertEquals(1, unpaid(summary("2026-07", register)).size());
  }

  /** 26 statements of 1.00 to 26.00: the 25th and the 26th come to 51.00. */
  @Test
  void ofManyUnpaidStatementsTheLatestStandInOneLine() {
    var rows = new ArrayList<RegisterRow>();
    for (int day = 1; day <= 26; day++) {
      String issued = String.format(Locale.ROOT, "2026-07-%02d", day);
      rows.add(statement("c-ann", "P" + (100 + day), 1, issued, day * 100L, 0));
    }
    var july = summary("2026-07", new Register(rows));
    assertEquals(25, unpaid(july).size());
    assertEquals(List.of("24 July 2026", "Ann Lowry", "P124", "24.00"), unpaid(july).get(23));
    assertEquals(List.of("", "Later statements: 2", "", "51.00"), unpaid(july).get(24));
    assertEquals("351.00", total(july));
  }

  @Test
  void aPaymentCountsFromItsDayOn() {
    var register = new Register(List.of(statement("c-ann", "B7", 1, "2026-07-10", 10_000, 1_000)));
    shop.add("payments.csv", "c-ann,B7,2026-09-01,60.00");
    shop.add("payments.csv", "c-ann,B7,2026-12-01,50.00");
    assertEquals("50.00", total(summary("2026-07", register)));
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
    return String.join(" ", pages).contains("Paid and unpaid are as of the night that printed");
  }

  @Test
  void onlyTheLatestRevisionIsOwedButSinceTheFirst() {
    var register =
        new Register(
            List.of(
                statement("c-ann", "B7", 1, "2026-07-10", 10_000, 0),
                statement("c-ann", "B7", 2, "2026-07-20", 9_000, 0)));
    assertEquals(
        List.of(List.of("10 July 2026", "Ann Lowry", "B7", "90.00")),
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
    var totals = SmallShop.rows(summary("2026-07", register), "statements");
    assertTrue(totals.contains(List.of("Tax on them", "$10.00")));
    assertTrue(totals.contains(List.of("Paid of them", "$115.00")));
    assertTrue(totals.contains(List.of("Still unpaid of them", "$0.00")));
    assertTrue(totals.contains(List.of("Owed to customers", "$5.00")));
  }

  @Test
  void weightsOfAMonthAddUpWhatBelongsToIt() {
    var july = summary("2026-07", SmallShop.NOTHING_ISSUED);
    var heads = SmallShop.tables(july, "sums").get(0).heads().get(0);
    assertEquals(List.of("Customers' bodies"), List.of(heads.get(1).text()));
    assertEquals(2, heads.size());
    assertEquals(
        List.of(
            List.of("Bodies killed", "2"),
            List.of("On the rail, hot", "408.0\u00a0kg"),
            List.of("Bodies cut", "1"),
            List.of("Into the boning room", "200.0\u00a0kg"),
            List.of("Take-home", "156.0\u00a0kg"),
            List.of("Bone, not taken home", "40.0\u00a0kg")),
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

  /** The limit is 3 % of 200; U is the root of a third of 0.5² and twice 0.02²: 0.289. */
  @Test
  void aHeldBodySaysWhyWithItsFiguresAndWhatToDo() {
    shop.beef("B9", "2026-07-20", "").hung("B9", "2026-07-20", "204", "200");
    shop.cut("B9", "2026-07-22", "100", "40");
    var held = summary("2026-07", SmallShop.NOTHING_ISSUED).held();
    assertEquals(1, held.size());
    assertEquals("B9, beef", held.get(0).body());
    assertEquals("Fold End Boning Room", held.get(0).customer());
    assertEquals(
        "60.00\u00a0kg is missing in the boning room, 30.0% of the weight into it:"
            + " more than the shop's limit of 6.00\u00a0kg and the scales' uncertainty of"
            + " 0.289\u00a0kg.",
        held.get(0).reason());
    assertTrue(held.get(0).advice().contains("releases.csv"));
  }

  @Test
  void aMissingRailWeightIsNamed() {
    shop.beef("B9", "2026-07-20", "c-ann").row("rail", "2026-07-20T08:00", "B9", "hot", "204");
    shop.cut("B9", "2026-07-22", "156", "40");
    var held = summary("2026-07", SmallShop.NOTHING_ISSUED).held().get(0);
    assertEquals("Weight missing from the rail: cold.", held.reason());
  }

  @Test
  void rowsSetAsideAreNamedByTicketAndNeverByFile() {
    shop.add("exports/day.csv", "bench,901,2026-07-09T09:40:00,B7,nothing,1.00,");
    shop.add("exports/day.csv", "bench,,2026-07-09T09:41:00,B7,nothing,2.00,");
    var july = summary("2026-07", SmallShop.NOTHING_ISSUED);
    assertEquals(
        "2 weighings of it were set aside: bench 901, a row without a ticket number.",
        july.held().get(0).reason());
    assertFalse(july.toString().contains("exports"));
  }

  private List<List<String>> batches(String month) {
    return SmallShop.rows(summary(month, SmallShop.NOTHING_ISSUED), "batches");
  }

  /** The rows of the table of unpaid statements without their total. */
  private static List<List<String>> unpaid(SummaryView month) {
    return SmallShop.rows(month, "unpaid").stream().filter(row -> row.size() == 4).toList();
  }

  private static String total(SummaryView month) {
    var rows = SmallShop.rows(month, "unpaid");
    return rows.get(rows.size() - 1).get(1);
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
