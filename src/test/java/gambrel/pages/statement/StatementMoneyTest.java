package gambrel.pages.statement;

import static gambrel.pages.statement.FarmShop.answer;
import static gambrel.pages.statement.FarmShop.plain;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.pages.views.ChargesView;
import gambrel.pages.views.PrintedRows;
import gambrel.pages.views.StatementView;
import gambrel.trade.account.CustomerAccount;
import gambrel.trade.account.CustomerMoney;
import gambrel.trade.measure.Money;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StatementMoneyTest {
  @TempDir private Path folder;

  private FarmShop shop() {
    return new FarmShop(folder);
  }

  private static List<String> rows(ChargesView charges) {
    return PrintedRows.of(charges).stream()
        .map(r -> plain(String.join(" | ", r.description(), r.quantity(), r.price(), r.amount())))
        .toList();
  }

  private static List<String> sums(ChargesView charges) {
    return PrintedRows.sums(charges).stream()
        .map(sum -> plain(sum.label() + ": " + sum.amount()))
        .toList();
  }

  @Test
  void withTaxOnTopAddsIt() {
    var view =
        shop()
            .add("charges.csv", "kill,Slaughter,head,120,10,,,\ncut,Cutting,hot,1.5,10,,,")
            .add("payments.csv", "c-ann,B1,2026-03-04,100")
            .steer()
            .statement("B1", "c-ann");
    var charges = view.charges().orElseThrow();
    assertEquals(
        List.of("Slaughter | 1 head | 120.00 | 120.00", "Cutting | 100 kg | 1.50 | 150.00"),
        rows(charges));
    assertEquals(
        List.of(
            "Before tax: 270.00",
            "GST 10% on 270.00, rounded line by line: 27.00",
            "Total: 297.00",
            "Paid 4 March 2026: -100.00",
            "Still to pay: 197.00"),
        sums(charges));
    assertEquals(
        List.of("$197.00 still to pay.", "You have paid $100.00. Thank you."), answer(view, "owe"));
  }

  @Test
  void withTaxIncludedSaysHowMuchOfItIsTax() {
    var view =
        shop()
            .add("shop.properties", "tax_included=yes")
            .add("charges.csv", "kill,Slaughter,head,110,10,,,")
            .steer()
            .statement("B1", "c-ann");
    assertEquals(
        List.of("of which GST 10% on 100.00, rounded line by line: 10.00", "Still to pay: 110.00"),
        sums(view.charges().orElseThrow()));
  }

  @Test
  void ofSeveralRatesNamesTheRateOfEachLineAndTheTaxOfEachRate() {
    var charges =
        shop()
            .add("charges.csv", "kill,Slaughter,head,120,10,,,\ncut,Cutting,hot,1.5,,,,")
            .steer()
            .statement("B1", "c-ann")
            .charges()
            .orElseThrow();
    assertEquals(
        List.of("Slaughter (GST 10%)", "Cutting (GST 0%)"),
        PrintedRows.of(charges).stream().map(ChargesView.Row::description).toList());
    assertEquals(
        List.of(
            "Before tax: 270.00",
            "GST 0% on 150.00, rounded line by line: 0.00",
            "GST 10% on 120.00, rounded line by line: 12.00",
            "Total: 282.00",
            "Still to pay: 282.00"),
        sums(charges));
  }

  @Test
  void beyondWhatIsOwedIsACredit() {
    var view =
        shop()
            .add("charges.csv", "kill,Slaughter,head,100,,,,\nhide,Hide bought,head,-20,,,,")
            .add("payments.csv", "c-ann,B1,2026-03-04,90")
            .steer()
            .statement("B1", "c-ann");
    assertEquals("Nothing. We owe you $10.00.", answer(view, "owe").get(0));
    assertEquals(
        List.of("Paid 4 March 2026: -90.00", "We owe you: 10.00"),
        sums(view.charges().orElseThrow()));
    assertEquals(
        List.of("", "What we buy from you", ""),
        view.charges().orElseThrow().sections().stream().map(ChargesView.Section::title).toList());
  }

  @Test
  void paidInFullIsNothing() {
    var view =
        shop()
            .add("charges.csv", "kill,Slaughter,head,100,,,,")
            .add("payments.csv", "c-ann,B1,2026-03-04,100")
            .steer()
            .statement("B1", "c-ann");
    assertEquals("Nothing on this statement: it is paid in full.", answer(view, "owe").get(0));
  }

  /** A shop in Australia that prints its tax number, and when and how to pay. */
  private FarmShop withTerms(String... lines) {
    var shop = shop().add("shop.properties", "tax_number=12 345\ntax_number_name=ABN");
    shop.add("shop.properties", "pay_by_days=14\npay_to=Bank 012-345; Account 678");
    List.of(lines).forEach(line -> shop.add("shop.properties", line));
    return shop.add("charges.csv", "kill,Slaughter,head,100,10,,,").steer();
  }

  private static StatementView numbered(FarmShop shop) {
    var planned = shop.planned("B1", "c-ann", Optional.empty()).numbered(17);
    return shop.statement(planned, Optional.of(List.of()));
  }

  @Test
  void saysItsNumberAndWhenAndHowToPay() {
    var view = numbered(withTerms());
    assertEquals(List.of("Issued 20 March 2026", "Number 17 · Revision 1"), view.issue());
    assertEquals(
        List.of(
            "$110.00 to pay by 3 April 2026.",
            "How to pay: Bank 012-345, Account 678; reference 17."),
        answer(view, "owe"));
  }

  @Test
  void isATaxInvoiceWhereTheRegionsTaxOfficeAsksForOne() {
    var view = numbered(withTerms());
    assertEquals("Tax invoice and take-home statement", view.kind());
    assertTrue(view.shop().lines().get(0).endsWith("ABN 12 345"), view.shop()::toString);
    assertEquals("Lowry Road 1, Hilltop", view.address());
    assertEquals("VAT invoice and take-home statement", numbered(withTerms("region=uk")).kind());
    assertEquals("Take-home statement", numbered(withTerms("region=us")).kind());
  }

  @Test
  void isNoTaxInvoiceWithoutATaxNumberOrWithoutTax() {
    var untaxed = shop().add("charges.csv", "kill,Slaughter,head,100,,,,").steer();
    assertEquals("Take-home statement", untaxed.statement("B1", "c-ann").kind());
    untaxed.add("shop.properties", "tax_number=12 345");
    assertEquals("Take-home statement", untaxed.statement("B1", "c-ann").kind());
  }

  @Test
  void ofWhichNothingIsDueSaysNotHowToPay() {
    var view = numbered(withTerms().add("payments.csv", "c-ann,B1,2026-03-04,110"));
    assertEquals(
        List.of(
            "Nothing on this statement: it is paid in full.", "You have paid $110.00. Thank you."),
        answer(view, "owe"));
  }

  private static CustomerAccount account(long others, long unnamed) {
    var here = new CustomerMoney(new Money(10_000), new Money(1000), Money.ZERO);
    var there = new CustomerMoney(new Money(others), Money.ZERO, Money.ZERO);
    var day = LocalDate.parse("2026-03-01");
    return new CustomerAccount(
        "c-ann",
        List.of(
            new CustomerAccount.Statement("B1", day, here),
            new CustomerAccount.Statement("B0", day, there)),
        new Money(unnamed));
  }

  private List<String> owed(CustomerAccount account) {
    var shop = withTerms();
    var planned = shop.planned("B1", "c-ann", Optional.empty()).numbered(17).owing(account);
    return answer(shop.statement(planned, Optional.of(List.of())), "owe");
  }

  @Test
  void saysWhatIsOwedOnOtherStatementsAndInSum() {
    assertEquals(
        "With 1 other statement ($20.00), other payments (-$5.00) you owe us $125.00 in all.",
        owed(account(2000, 500)).get(2));
    assertEquals(2, owed(account(0, 0)).size());
  }

  @Test
  void saysOnceWhatIsOwedOnOtherStatementsAlone() {
    var shop = withTerms().add("payments.csv", "c-ann,B1,2026-03-04,110");
    var planned = shop.planned("B1", "c-ann", Optional.empty()).numbered(17);
    var paid = new CustomerMoney(new Money(10_000), new Money(1000), new Money(11_000));
    var there = new CustomerMoney(new Money(2000), Money.ZERO, Money.ZERO);
    var day = LocalDate.parse("2026-03-01");
    var account =
        new CustomerAccount(
            "c-ann",
            List.of(
                new CustomerAccount.Statement("B1", day, paid),
                new CustomerAccount.Statement("B0", day, there)),
            Money.ZERO);
    assertEquals(
        List.of(
            "Nothing on this statement: it is paid in full.",
            "You have paid $110.00. Thank you.",
            "You owe us $20.00 on 1 other statement."),
        answer(shop.statement(planned.owing(account), Optional.of(List.of())), "owe"));
  }

  @Test
  void isNotToBePaidAgainWhereOtherPaymentsCoverIt() {
    assertEquals(
        List.of(
            "Nothing more: your other payments cover it.",
            "With other payments (-$120.00) we owe you $10.00 in all."),
        owed(account(0, 12_000)));
  }

  @Test
  void saysWhyItCountsOtherPacksThanTheBoxes() {
    var shop = shop().add("charges.csv", "vac,Vacuum packs,pack,1,,,,");
    shop.add("batches.csv", "M1,Beef mince,,").steer();
    shop.row("05T09:10", "B1", "trim", "1", "M1").row("05T11:00", "", "mince", "0.98", "M1");
    shop.row("05T10:00", "B1", "rump", "0.5", "", "c-bob");
    var view = shop.statement("B1", "c-ann");
    assertEquals("5 packs, 77.0 kg in your boxes.", answer(view, "packs").get(0));
    assertEquals("5 packs", PrintedRows.of(view.charges().orElseThrow()).get(0).quantity());
    assertEquals(
        List.of(
            "The packs charged by number leave out those of Beef mince. They include 1 pack that"
                + " went to somebody else by name."),
        view.charges().orElseThrow().notes());
  }

  @Test
  void ofAShopWithoutAPriceListIsNothing() {
    var view = shop().steer().statement("B1", "c-ann");
    assertEquals(List.of("Nothing."), answer(view, "owe"));
    assertTrue(view.charges().isEmpty());
  }

  @Test
  void tellsWhatIsFreeAndWhatIsTheLeastCharged() {
    var view =
        shop()
            .add("charges.csv", "hang,Hanging,day,4,,2,,\ncut,Cutting,cold,1,,,150,")
            .add("charges.csv", "rest,Long hanging,day,4,,10,,")
            .steer()
            .statement("B1", "c-ann");
    assertEquals(
        List.of(
            "Hanging | 1 day (the first 2 are free) | 4.00 | 4.00",
            "Cutting | 150 kg (the least we charge) | 1.00 | 150.00"),
        rows(view.charges().orElseThrow()));
  }

  @Test
  void ofAShareIsTheSharesPartWithTheWholeBeside() {
    var view =
        shop()
            .add("charges.csv", "kill,Slaughter,head,101,,,,\nshare,Sharing,share,18,,,,")
            .add("bodies.csv", "B1,beef,steer,2026-03-02,180,,20,,1,Blue 7,,")
            .add("shares.csv", "B1,c-ann,1/2\nB1,c-bob,1/2")
            .weighed("B1")
            .statement("B1", "c-ann");
    var charges = view.charges().orElseThrow();
    assertEquals("Your half, AUD", charges.money());
    assertEquals(
        List.of("101.00", ""),
        PrintedRows.of(charges).stream().map(ChargesView.Row::whole).toList());
    assertEquals(
        List.of("50.50", "18.00"),
        PrintedRows.of(charges).stream().map(ChargesView.Row::amount).toList());
    assertEquals("$68.50 still to pay.", answer(view, "owe").get(0));
  }

  @Test
  void namesAChargeThatCannotBeWorkedOutYet() {
    var view =
        shop()
            .add("charges.csv", "live,Weighing alive,live,1,,,,")
            .add("bodies.csv", "B1,beef,steer,2026-03-02,,,20,c-ann,1,Blue 7,,")
            .weighed("B1")
            .statement("B1", "c-ann");
    assertEquals(
        List.of("A charge cannot be worked out yet: Weighing alive."),
        view.draft().orElseThrow().reasons());
    assertTrue(answer(view, "owe").contains("Not worked out yet: Weighing alive."));
  }
}
