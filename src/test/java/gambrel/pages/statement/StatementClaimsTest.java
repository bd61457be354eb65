package gambrel.pages.statement;

import static gambrel.pages.statement.FarmShop.answer;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.pages.views.Answer;
import gambrel.pages.views.PrintedRows;
import gambrel.pages.views.StatementView;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A statement says what the weighings show: no more, and nothing that its hold denies. */
class StatementClaimsTest {
  @TempDir private Path folder;

  private FarmShop shop() {
    return new FarmShop(folder);
  }

  private static List<String> keys(StatementView view) {
    return view.answers().stream().map(Answer::key).toList();
  }

  /** A draft answers only what the weighings alone can answer. */
  private static void assertSettlesNothing(StatementView view) {
    assertTrue(view.draft().isPresent());
    assertFalse(keys(view).contains("why") || keys(view).contains("normal"), keys(view)::toString);
    assertEquals("That is not settled yet.", answer(view, "owe").get(0));
    assertTrue(view.flow().isEmpty());
    assertTrue(
        view.answers().stream().noneMatch(a -> a.lead().matches("(Yes|Nothing)\\b.*")),
        view.answers()::toString);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "05T10:00,B1,rump,30", // more out than in
        "05T10:00,B1,nothing,5", // a row set aside
        "04T10:00,B1,aged,99999", // more weight missing than is accepted
        "05T10:00,B1,trim,1,M1" // a late batch
      })
  void aDraftAssertsNothingThatItsReasonDenies(String row) {
    var shop = shop().add("batches.csv", "M1,Mince,2026-03-10,").steer();
    var cells = row.split(",");
    shop.row(cells[0], cells[1], cells[2], cells[3], row.endsWith("M1") ? "M1" : "");
    var view = shop.statement("B1", "c-ann");
    assertSettlesNothing(view);
    assertEquals(List.of("We are still checking that."), answer(view, "mine"));
    assertTrue(view.pending().toString().indexOf("new statement") < 0);
  }

  @Test
  void aDraftStillTellsWhatElseIsInABatch() {
    var shop = shop().add("batches.csv", "M1,Beef mince,,rice flour").steer();
    shop.row("05T09:10", "B1", "trim", "0.5", "M1").row("05T11:00", "", "mince", "9", "M1");
    assertEquals(
        List.of("We are still checking that.", "Beef mince, also in it: rice flour."),
        answer(shop.statement("B1", "c-ann"), "mine"));
  }

  @Test
  void sharesThatDoNotAddUpAreNotPrinted() {
    var shop =
        shop()
            .add("bodies.csv", "B1,beef,steer,2026-03-02,180,,20,,1,Blue 7,,")
            .add("shares.csv", "B1,c-ann,1/2\nB1,c-bob,1/4")
            .add("charges.csv", "kill,Kill,head,100,,,,")
            .weighed("B1");
    var view = shop.statement("B1", "c-ann");
    assertSettlesNothing(view);
    assertFalse(view.toString().contains("1/2"), view::toString);
    assertTrue(answer(view, "packs").get(0).endsWith("your part (not settled yet), by weight."));
  }

  @Test
  void theSumOfADraftIsCalledNotSettled() {
    var shop = shop().add("charges.csv", "kill,Kill,head,100,,,,").steer();
    shop.row("05T10:00", "B1", "rump", "30").add("payments.csv", "c-ann,B1,2026-03-06,120");
    var sums = PrintedRows.sums(shop.statement("B1", "c-ann").charges().orElseThrow());
    var last = sums.get(sums.size() - 1);
    assertEquals(
        "To pay, not settled yet: -20.00", FarmShop.plain(last.label() + ": " + last.amount()));
  }

  @Test
  void anOwnerWhosePacksAllNameSomebodyElseHasNothingYet() {
    var shop = shop().add("bodies.csv", "B1,beef,steer,2026-03-02,180,,20,c-ann,1,,,");
    shop.row("02T09:00", "B1", "hot", "100").row("03T09:00", "B1", "cold", "98");
    shop.row("05T09:00", "B1", "rump", "97.5", "", "c-bob");
    assertEquals(
        "Nothing has been packed so far.", answer(shop.statement("B1", "c-ann"), "packs").get(0));
  }

  @Test
  void halfOfABodyLeftWholeIsNotCalledTheCarcase() {
    var shop = shop().add("bodies.csv", "L1,lamb,lamb,2026-03-02,210,,8,,1,,whole,");
    shop.add("shares.csv", "L1,c-ann,1/2\nL1,c-bob,1/2");
    shop.row("02T09:00", "L1", "hot", "100").row("03T09:00", "L1", "cold", "98");
    var view = shop.statement("L1", "c-ann");
    assertEquals(
        List.of("49.0 kg: your half, by weight.", "It leaves us uncut."), answer(view, "packs"));
    assertEquals("All of it was weighed as this animal’s alone.", answer(view, "mine").get(1));
  }

  @Test
  void aCondemnedAnimalHasNoOffalInTheBoxes() {
    var shop = shop().add("bodies.csv", "L1,lamb,lamb,2026-03-02,210,,8,c-ann,1,,condemned,");
    shop.row("02T09:00", "L1", "hot", "100").row("03T09:00", "L1", "cold", "98");
    var view = shop.row("02T10:00", "L1", "liver", "1").statement("L1", "c-ann");
    assertEquals(2, answer(view, "packs").size(), answer(view, "packs")::toString);
    assertTrue(view.boxes().isEmpty());
  }

  private StatementView cow(String region, String age, String item) {
    var money = Map.of("au", "AUD", "uk", "GBP", "us", "USD");
    return cow(region, money.get(region), age, item);
  }

  private StatementView cow(String region, String currency, String age, String item) {
    var shop = new FarmShop(folder.resolve(region + currency + age + item)).in(region, currency);
    shop.add("codes.csv", "bone-in," + item + ",pack");
    shop.add("bodies.csv", "B1,beef,cow,2026-03-02,180,," + age + ",c-ann,1,,,").weighed("B1");
    return shop.row("05T09:07", "B1", "bone-in", "1").statement("B1", "c-ann");
  }

  @ParameterizedTest
  @ValueSource(strings = {"au", "uk", "us"})
  void theRuleOnTheBackboneStandsWithTheCutsThatHaveIt(String region) {
    for (String age : List.of("44", "")) {
      var view = cow(region, age, "t-bone");
      String rule = view.cautions().get(0);
      assertTrue(rule.startsWith("T-bone steak: cuts of these names have backbone in them."), rule);
      assertTrue(rule.contains(age.isEmpty() ? "not known" : "Age when killed: 44 months."), rule);
      assertTrue(rule.contains("30 months"), rule);
      assertFalse(rule.contains("is removed") || rule.contains("does not go home"), rule);
      assertTrue(view.cautions().toString().matches("(?s).*[Ll]icensed people decide.*"), rule);
    }
  }

  @Test
  void withoutSuchCutsTheRuleIsACautionAndForYoungCattleThereIsNone() {
    var boneless = cow("us", "44", "striploin");
    assertFalse(boneless.cautions().get(0).contains("have backbone"), boneless.cautions().get(0));
    assertTrue(boneless.cautions().get(0).contains("must be removed"), boneless.cautions().get(0));
    var young = cow("us", "29", "t-bone");
    assertFalse(young.cautions().toString().contains("30 months"), young.cautions()::toString);
  }

  /** A Canadian shop names its cuts as the United States do, and has the rules of Canada. */
  @ParameterizedTest
  @CsvSource({"us, USD, true", "us, CAD, false", "uk, EUR, true", "uk, NOK, false"})
  void lawIsQuotedOnlyWhereTheMoneyIsOfTheRegion(String region, String currency, boolean quoted) {
    String cautions = String.join(" ", cow(region, currency, "44", "t-bone").cautions());

    assertEquals(quoted, cautions.contains(region.equals("us") ? "9 CFR" : "999/2001"), cautions);
    assertEquals(!quoted, cautions.contains("ask your food authority"), cautions);
    assertTrue(cautions.contains("30 months"), cautions);
    assertFalse(cautions.contains("states and territories"), cautions);
  }
}
