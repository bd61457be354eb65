package gambrel.pages.statement;

import static gambrel.pages.statement.FarmShop.plain;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.pages.views.TextTable;
import gambrel.trade.measure.Money;
import gambrel.trade.measure.Weight;
import gambrel.trade.register.Figures.Change;
import gambrel.trade.register.RegisterRow;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StatementRevisionTest {
  private static final RegisterRow FIRST =
      new RegisterRow(
          "c-ann",
          "B1",
          1,
          LocalDateTime.parse("2026-03-07T02:00:00"),
          Weight.ZERO,
          Money.ZERO,
          Money.ZERO,
          Money.ZERO,
          Optional.empty(),
          "statements/c-ann/B1-r1.pdf",
          "",
          "",
          Optional.empty(),
          List.of());

  @TempDir private Path folder;

  private TextTable changes(Optional<List<Change>> changes) {
    var shop = new FarmShop(folder).add("batches.csv", "M1,Beef mince,,").steer();
    shop.row("05T09:10", "B1", "trim", "1", "M1").row("05T11:00", "", "mince", "0.98", "M1");
    return shop.statement(shop.planned("B1", "c-ann", Optional.of(FIRST)), changes)
        .changes()
        .orElseThrow();
  }

  @Test
  void saysWhatItReplaces() {
    assertEquals(
        "This is revision 2. It replaces revision 1 of 7 March 2026; please use this one. No"
            + " weight, count or percentage has changed.",
        changes(Optional.of(List.of())).lead());
  }

  @Test
  void listsWhatChangedByTheNamesOfThings() {
    var view =
        changes(
            Optional.of(
                List.of(
                    new Change("take_home", "75.900", "76.900"),
                    new Change("item:rump-steak", "9.000", "10.000"),
                    new Change("packs:rump-steak", "", "1"),
                    new Change("batch:M1", "open", "0.900"),
                    new Change("body:take_home", "75.900", "76.900"),
                    new Change("body:chill_shrink_pct", "2.512", "2.000"),
                    new Change("body:rail_trim", "1.500", ""))));
    assertEquals(
        List.of(
            "Take-home, without offal: 75.90 kg > 76.90 kg",
            "Rump steak: 9.00 kg > 1 pack, 10.00 kg",
            "Beef mince: meat in it: still to come > 0.90 kg",
            "Trimmed off on the rail: 1.50 kg > –"),
        view.rows().stream()
            .map(r -> plain(r.get(0) + ": " + r.get(1) + " > " + r.get(2)))
            .toList());
  }

  @Test
  void printsTakeHomeOfTheHangingWeightAsThePageDoes() {
    var rows =
        changes(
                Optional.of(
                    List.of(
                        new Change("body:take_home_of_cold_pct", "77.449", "78.461"),
                        new Change("body:hot", "99.500", "100.000"))))
            .rows();
    assertEquals(List.of("Take-home, % of cold", "77.4%", "78.5%"), rows.get(0));
    assertEquals("99.5 kg", plain(rows.get(1).get(1)));
    assertEquals("100.0 kg", plain(rows.get(1).get(2)));
  }

  @Test
  void hasNoTableWhereNothingThatIsPrintedHasChanged() {
    var view = changes(Optional.of(List.of(new Change("body:meat_of_cold_pct", "70.001", "70"))));
    assertEquals(List.of(), view.rows());
    assertTrue(view.lead().endsWith("No figure that this page prints has changed."), view.lead());
  }

  /** The page says how much of the take-home is bone or fat. */
  @Test
  void listsTheMeatWhereSomeOfTheTakeHomeCountsAsAnotherKind() {
    var meat = new Change("body:meat_home", "60.000", "70.000");
    var row = changes(Optional.of(List.of(meat))).rows().get(0);
    assertEquals(
        "Take-home of the whole, counted as meat: 60.00 kg > 70.00 kg",
        plain(row.get(0) + ": " + row.get(1) + " > " + row.get(2)));
    var home = new Change("body:take_home", "66.900", "76.900");
    assertEquals(List.of(), changes(Optional.of(List.of(meat, home))).rows());
  }

  @Test
  void saysWhyWithTheReasonsOfCorrectionsAndReleasesSince() {
    var shop = new FarmShop(folder).steer();
    shop.add("corrections.csv", "bench,5,2026-03-05,net,9,Hetty,2026-03-06T09:00,too early");
    shop.add("corrections.csv", "bench,6,2026-03-05,net,31,Hetty,2026-03-08T09:00,misread label");
    shop.add("releases.csv", "B1,Hetty,2026-03-09T09:00,a tub was tipped,release");
    var planned = shop.planned("B1", "c-ann", Optional.of(FIRST));
    var lead = shop.statement(planned, Optional.empty()).changes().orElseThrow().lead();
    assertTrue(
        lead.contains("Why: misread label (Dog bones, ticket 6). Why: a tub was tipped."), lead);
    assertTrue(!lead.contains("too early"), lead);
  }

  @Test
  void saysSoWhereTheEarlierFiguresAreLost() {
    var view = changes(Optional.empty());
    assertTrue(view.lead().endsWith("so we cannot list what changed."));
    assertEquals(List.of(), view.rows());
  }

  @Test
  void isADraftWithItsReasonsInPlainWords() {
    var shop =
        new FarmShop(folder)
            .add("bodies.csv", "B1,beef,steer,2026-03-02,180,,20,c-ann,1,Blue 7,,")
            .add("charges.csv", "live,Weighing alive,live,1,,,,\nhang,Odd,hot,1,,,,");
    shop.row("02T09:00", "B1", "hot", "100").row("05T09:00", "B1", "rump", "90");
    var view = shop.statement("B1", "c-ann");
    var draft = view.draft().orElseThrow();
    assertTrue(draft.sentence().startsWith("DRAFT. We are still checking this statement"));
    assertEquals(
        List.of("A weight from the rail is missing: cold, after chilling."), draft.reasons());
    assertEquals(List.of("Not issued yet"), view.issue());
    assertTrue(view.page().foot().startsWith("DRAFT"));
  }

  /** U is the root of a third of 0.5² for the rail and seven times 0.02² for the bench: 0.290. */
  @Test
  void isADraftThatNamesALossWithItsSizeAndUncertainty() {
    var shop = new FarmShop(folder).steer().at("2026-03-30T02:00:00Z");
    shop.row("05T09:10", "B1", "bone", "5");
    var draft = shop.statement("B1", "c-ann").draft().orElseThrow();
    assertEquals(
        List.of(
            "More was weighed out of the boning room than into it: 3.00 kg more. The uncertainty of"
                + " the scales is 0.290 kg."),
        draft.reasons().stream().map(FarmShop::plain).toList());
  }

  @Test
  void isADraftThatSaysWhichStatementStands() {
    var shop = new FarmShop(folder).steer();
    shop.row("05T09:10", "B1", "bone", "5");
    var draft =
        shop.statement(shop.planned("B1", "c-ann", Optional.of(FIRST)), Optional.of(List.of()))
            .draft()
            .orElseThrow();
    assertEquals(
        "Until then revision 1 of 7 March 2026 stands.",
        draft.reasons().get(draft.reasons().size() - 1));
  }
}
