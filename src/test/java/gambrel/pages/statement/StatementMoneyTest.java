package gambrel.pages.statement;

import static gambrel.pages.statement.FarmShop.answer;
import static gambrel.pages.statement.FarmShop.plain;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.pages.views.ChargesView;
import gambrel.pages.views.StatementView;
import java.nio.file.Path;
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
    return charges.rows().stream()
        .map(r -> plain(String.join(" | ", r.description(), r.quantity(), r.price(), r.amount())))
        .toList();
  }

  private static List<String> sums(ChargesView charges) {
    return charges.sums().stream().map(sum -> plain(sum.label() + ": " + sum.amount())).toList();
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
            "Charges: 270.00",
            "GST 10%: 27.00",
            "Total: 297.00",
            "Paid 4 March 2026: -100.00",
            "Still to pay: 197.00"),
        sums(charges));
    assertEquals(
        List.of(
            "$197.00 still to pay.",
            "Charges are $270.00 and GST is $27.00.",
            "You have paid $100.00. Thank you."),
        answer(view, "owe"));
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
        List.of("Total: 110.00", "of which GST 10%: 10.00", "Still to pay: 110.00"),
        sums(view.charges().orElseThrow()));
    assertEquals("Charges are $110.00, which includes $10.00 of GST.", answer(view, "owe").get(1));
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
        List.of("Total: 80.00", "Paid 4 March 2026: -90.00", "We owe you: 10.00"),
        sums(view.charges().orElseThrow()));
  }

  @Test
  void paidInFullIsNothing() {
    var view =
        shop()
            .add("charges.csv", "kill,Slaughter,head,100,,,,")
            .add("payments.csv", "c-ann,B1,2026-03-04,100")
            .steer()
            .statement("B1", "c-ann");
    assertEquals("Nothing: it is paid in full.", answer(view, "owe").get(0));
  }

  private static List<String> paying(StatementView view) {
    return view.charges().orElseThrow().paying().stream()
        .map(fact -> plain(fact.label() + ": " + fact.text()))
        .toList();
  }

  @Test
  void saysItsNumberAndWhenAndHowToPay() {
    var shop =
        shop()
            .add("shop.properties", "tax_number=12 345\ntax_number_name=ABN\npay_by_days=14")
            .add("shop.properties", "pay_to=Bank 012-345; Account 678")
            .add("charges.csv", "kill,Slaughter,head,100,,,,")
            .steer();
    var view =
        shop.statement(
            shop.planned("B1", "c-ann", Optional.empty()).numbered(17), Optional.of(List.of()));
    assertEquals(List.of("Issued 20 March 2026", "Revision 1", "Number 17"), view.issue());
    assertEquals(
        List.of("ABN: 12 345", "To pay by: 3 April 2026", "How to pay: Bank 012-345, Account 678"),
        paying(view));
  }

  @Test
  void ofWhichNothingIsDueSaysNotHowToPay() {
    var view =
        shop()
            .add("shop.properties", "tax_number=12 345\npay_by_days=14\npay_to=Bank 012-345")
            .add("charges.csv", "kill,Slaughter,head,100,,,,")
            .add("payments.csv", "c-ann,B1,2026-03-04,100")
            .steer()
            .statement("B1", "c-ann");
    assertEquals(List.of("Tax number: 12 345"), paying(view));
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
    assertEquals("Your 1/2, AUD", charges.money());
    assertEquals(
        List.of("101.00", ""), charges.rows().stream().map(ChargesView.Row::whole).toList());
    assertEquals(
        List.of("50.50", "18.00"), charges.rows().stream().map(ChargesView.Row::amount).toList());
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
