package gambrel.pages.statement;

import static gambrel.pages.statement.FarmShop.answer;
import static gambrel.pages.statement.FarmShop.plain;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.pages.views.CutsView;
import gambrel.pages.views.Fact;
import gambrel.pages.views.FlowView;
import gambrel.pages.views.PrintedRows;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StatementKindsTest {
  @TempDir private Path folder;

  private FarmShop shop() {
    return new FarmShop(folder);
  }

  /** {@code name, note | packs | weight} of every line. */
  private static List<String> lines(CutsView boxes) {
    return PrintedRows.of(boxes).stream()
        .map(
            row ->
                plain(
                    row.name()
                        + (row.note().isEmpty() ? "" : ", " + row.note())
                        + " | "
                        + row.packs()
                        + " | "
                        + row.weight()))
        .toList();
  }

  private static List<String> flow(FlowView flow) {
    return flow.rows().stream()
        .map(row -> plain(row.label() + ": " + row.weight() + " " + row.share()).strip())
        .toList();
  }

  @Test
  void aWholeOwnerListsItsCutsInTheOrderOfTheCarcase() {
    var boxes = shop().steer().statement("B1", "c-ann").boxes().orElseThrow();
    assertEquals(
        List.of("Rump steak | 1 | 10.00", "Mince | 2 | 60.00", "Dog bones | 1 | 6.00"),
        lines(boxes));
    assertEquals("In the boxes, in all", boxes.total().orElseThrow().name());
    assertEquals("4", boxes.total().orElseThrow().packs());
    assertEquals("76.00", boxes.total().orElseThrow().weight());
  }

  @Test
  void aWholeOwnerDrawsWhereEachKiloWent() {
    assertEquals(
        List.of(
            "Alive: 180 kg 100.0%",
            "Came off at slaughter: 80.0 kg 44.4%",
            "On the rail, hot: 100.0 kg 55.6%",
            "Lost in the chiller: 2.0 kg 1.2%",
            "Weight into the boning room: 98.0 kg 54.4%",
            "Take-home, without offal: 76.00 kg 42.2%",
            "Bone, not taken home: 15.00 kg 8.3%",
            "Fat, not taken home: 5.00 kg 2.8%",
            "Bench loss (drip, evaporation, not weighed): 2.00 kg 1.1%"),
        flow(shop().steer().statement("B1", "c-ann").flow().orElseThrow()));
  }

  @Test
  void anAnimalWeighedAgainBeforeCuttingShowsWhatItLostWhileItHung() {
    var rows =
        flow(
            shop()
                .steer()
                .row("05T08:00", "B1", "aged", "97")
                .statement("B1", "c-ann")
                .flow()
                .orElseThrow());
    assertTrue(rows.contains("Lost while it hung: 1.0 kg 0.5%"), rows::toString);
    assertTrue(rows.contains("Weight into the boning room: 97.0 kg 53.9%"), rows::toString);
  }

  @Test
  void anAnimalTrimmedOnTheRailShowsTheTrimmingApart() {
    var view = shop().steer().row("02T12:00", "B1", "waste", "1.5").statement("B1", "c-ann");
    var rows = flow(view.flow().orElseThrow());
    assertTrue(rows.contains("Trimmed off on the rail: 1.5 kg 0.9%"), rows::toString);
    assertTrue(rows.contains("Lost in the chiller: 0.5 kg 0.3%"), rows::toString);
    assertTrue(plain(view.flow().orElseThrow().notes().get(0)).contains("leave out 1.50 kg"));
  }

  @Test
  void anAnimalNeverOnTheRailStartsAtTheBlock() {
    var shop = shop().add("bodies.csv", "B1,beef,steer,2026-03-02,,,20,c-ann,1,,,");
    shop.row("05T08:00", "B1", "block", "50").row("05T09:00", "B1", "rump", "49.5");
    var view = shop.statement("B1", "c-ann");
    assertEquals(
        "50.00 kg into the boning room became 49.5 kg to take home.", answer(view, "why").get(0));
    assertTrue(view.flow().orElseThrow().notes().get(0).contains("not weighed on the rail"));
  }

  @Test
  void halfAnAnimalShowsTheHalfAndNeverTheOtherOwner() {
    var shop =
        shop()
            .add("bodies.csv", "B1,beef,steer,2026-03-02,180,,20,,1,Blue 7,,")
            .add("shares.csv", "B1,c-ann,1/2\nB1,c-bob,1/2")
            .weighed("B1");
    var view = shop.statement("B1", "c-ann");
    assertEquals(
        List.of(
            "38.0 kg: your half, by weight.",
            "38.00 kg meat and bone.",
            "The whole, before it was divided: 4 packs, 76.0 kg."),
        answer(view, "packs"));
    assertEquals(
        List.of(
            "The whole animal: 180 kg alive became 76.0 kg to take home.",
            "That is 77.6% of the hanging weight (98.0 kg, cold).",
            "Of the take-home, 38.00 kg is yours; the drawing is of the whole."),
        answer(view, "why"));
    var boxes = view.boxes().orElseThrow();
    assertEquals("Your half", boxes.title());
    assertEquals("Packs in all", boxes.packs());
    assertEquals(
        List.of("Rump steak | 1 | 5.00", "Mince | 2 | 30.00", "Dog bones | 1 | 3.00"),
        lines(boxes));
    assertEquals("", boxes.total().orElseThrow().packs());
    assertTrue(answer(view, "mine").contains("The other shares are not on this page."));
    assertFalse(view.toString().contains("Teasel"));
    assertFalse(view.toString().contains("c-bob"));
  }

  @Test
  void aSharerWithPacksByNameShowsThemFirst() {
    var shop =
        shop()
            .add("bodies.csv", "B1,beef,steer,2026-03-02,180,,20,,1,Blue 7,,")
            .add("shares.csv", "B1,c-ann,1/2\nB1,c-bob,1/2")
            .weighed("B1")
            .row("05T10:00", "B1", "rump", "2", "", "c-ann");
    var boxes = shop.statement("B1", "c-ann").boxes().orElseThrow();
    assertEquals(
        List.of("Packed for you by name", "Your half"),
        boxes.blocks().get(0).get(0).groups().stream().map(CutsView.Group::title).toList());
    assertEquals(
        List.of(
            "Rump steak | 1 | 2.00",
            "Rump steak | 1 | 5.00",
            "Mince | 2 | 30.00",
            "Dog bones | 1 | 3.00"),
        lines(boxes));
  }

  @Test
  void somebodyWithPacksByNameOnlyTellsNothingOfTheAnimalsOwner() {
    var view =
        shop().steer().row("05T10:00", "B1", "rump", "2", "", "c-bob").statement("B1", "c-bob");
    assertEquals(List.of("1 pack, 2.0 kg in your boxes."), answer(view, "packs"));
    assertEquals(
        List.of("Nothing.", "The charges of this animal are its owner’s."), answer(view, "owe"));
    assertEquals(List.of(), answer(view, "why"));
    assertEquals(List.of(), answer(view, "rest"));
    assertTrue(view.flow().isEmpty() && view.charges().isEmpty());
    for (var secret : List.of("Blue 7", "Lowry", "c-ann", "180")) {
      assertFalse(view.toString().contains(secret), secret);
    }
  }

  @Test
  void itsOwnerSaysThatPacksWentToSomebodyElseByName() {
    var view =
        shop().steer().row("05T10:00", "B1", "rump", "2", "", "c-bob").statement("B1", "c-ann");
    assertTrue(
        answer(view, "mine")
            .contains(
                "2.00 kg of the animal was packed for somebody else by name and is not on this"
                    + " page."));
  }

  @Test
  void aMobSpeaksOfAnimals() {
    var shop = shop().add("bodies.csv", "L1,beef,,2026-03-02,200,,8,c-ann,4,,,");
    var view = shop.weighed("L1").statement("L1", "c-ann");
    assertEquals("Beef, 4 head", view.heading());
    assertEquals(
        List.of(
            "Yes: it comes from your 4 animals together.",
            "All of it was weighed as these animals’ alone."),
        answer(view, "mine"));
  }

  @Test
  void anAnimalLeftWholeHasNoPacks() {
    var shop = shop().add("bodies.csv", "L1,lamb,lamb,2026-03-02,210,,8,c-ann,1,,whole,");
    shop.row("02T09:00", "L1", "hot", "100").row("03T09:00", "L1", "cold", "98");
    var view = shop.statement("L1", "c-ann");
    assertEquals("The carcase as it hung, 98.0 kg.", answer(view, "packs").get(0));
    assertEquals("210 kg alive became a carcase of 98.0 kg.", answer(view, "why").get(0));
    assertEquals(List.of("Whole carcase, as it hung |  | 98.0"), lines(view.boxes().orElseThrow()));
    assertTrue(view.keeping().isEmpty());
  }

  @Test
  void aCondemnedAnimalGivesNothingHome() {
    var shop = shop().add("bodies.csv", "L1,lamb,lamb,2026-03-02,210,,8,c-ann,1,,condemned,");
    shop.row("02T09:00", "L1", "hot", "100").row("03T09:00", "L1", "cold", "98");
    var view = shop.statement("L1", "c-ann");
    assertEquals("There is nothing to take home. We are sorry.", answer(view, "packs").get(0));
    assertEquals(
        List.of(
            "Nothing of a condemned animal may go home.", "The carcase, 98.0 kg, was condemned."),
        answer(view, "rest"));
    assertTrue(view.flow().isEmpty() && view.boxes().isEmpty() && view.keeping().isEmpty());
  }

  @Test
  void aMinceOfThisAnimalAloneCountsItsPacks() {
    var shop = shop().add("batches.csv", "M1,Beef mince,,").steer();
    shop.row("05T09:10", "B1", "trim", "1", "M1").row("05T11:00", "", "mince", "0.98", "M1");
    var boxes = lines(shop.statement("B1", "c-ann").boxes().orElseThrow());
    assertEquals("Beef mince | 1 | 0.98", boxes.get(3));
  }

  @Test
  void aMinceWithOthersSaysWithHowManyAndNeverWhose() {
    var shop = shop().add("batches.csv", "M1,Beef mince,,").steer();
    shop.add("bodies.csv", "B2,beef,steer,2026-03-02,180,,20,c-bob,1,,,").weighed("B2");
    shop.row("05T09:10", "B1", "trim", "0.5", "M1").row("05T09:10", "B2", "trim", "1.5", "M1");
    shop.row("05T11:00", "", "mince", "1.96", "M1");
    var view = shop.statement("B1", "c-ann");
    assertEquals(
        List.of(
            "All but what is named here.",
            "Beef mince: made together with meat of one other animal, and shared by the meat"
                + " that went in."),
        answer(view, "mine"));
    assertEquals(
        "76.5 kg in your boxes: 4 packs, and your part of Beef mince.",
        answer(view, "packs").get(0));
    assertFalse(view.toString().contains("B2"));
  }

  @Test
  void sausagesTellWhatElseIsInThemAndWhatTheyWeighPacked() {
    var shop = shop().add("batches.csv", "S1,Beef sausages,,rice flour; salt").steer();
    shop.add("charges.csv", "make,Making sausages,tub,3,,,,");
    shop.row("05T09:10", "B1", "trim", "1.5", "S1").row("05T10:00", "", "water", "0.5", "S1");
    shop.row("05T11:00", "", "sausages", "1.96", "S1");
    var view = shop.statement("B1", "c-ann");
    assertTrue(answer(view, "mine").contains("Beef sausages, also in it: rice flour, salt."));
    assertEquals(
        List.of(
            "5 packs, 78.0 kg in your boxes.",
            "77.47 kg meat and bone, 0.49 kg seasoning and water."),
        answer(view, "packs"));
    assertEquals(
        "Beef sausages, 1.47 kg meat, 0.49 kg seasoning and water | 1 | 1.96",
        lines(view.boxes().orElseThrow()).get(3));
    assertTrue(
        answer(view, "why")
            .contains("On top of the take-home, your boxes hold 0.49 kg seasoning and water."));
    assertEquals(
        List.of(
            "Making sausages: charged on the meat that went in, which is not the weight packed."),
        view.charges().orElseThrow().notes());
  }

  @Test
  void anAnimalWithAHamInCureSaysWhatIsToComeAndWhen() {
    var shop = shop().add("batches.csv", "H1,Smoked ham,2026-04-10,salt").steer();
    shop.row("05T09:10", "B1", "trim", "1.5", "H1");
    var view = shop.statement("B1", "c-ann");
    assertTrue(
        answer(view, "packs").contains("A batch is not weighed out yet: see “Still to come”."));
    assertEquals(
        new Fact(
            "Smoked ham",
            "1.50\u00a0kg of your meat went in. Due 10 April 2026. You will get a new statement"
                + " when it is weighed out."),
        view.pending().get(0));
    var rows = flow(view.flow().orElseThrow());
    assertTrue(rows.contains("In a batch, not weighed out: 1.50 kg 0.8%"), rows::toString);
  }

  @Test
  void cattleOfThirtyMonthsAndMoreWarnsOfRiskMaterial() {
    for (var age : List.of("29", "30", "")) {
      var shop = new FarmShop(folder.resolve("age" + age));
      shop.add("bodies.csv", "B1,beef,cow,2026-03-02,180,," + age + ",c-ann,1,,,").weighed("B1");
      var cautions =
          shop.statement("B1", "c-ann").cautions().stream().collect(Collectors.joining(" "));
      assertEquals(!age.equals("29"), cautions.contains("30 months or more"), age);
    }
  }
}
