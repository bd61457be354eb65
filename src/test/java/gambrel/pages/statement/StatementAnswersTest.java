package gambrel.pages.statement;

import static gambrel.pages.statement.FarmShop.answer;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.pages.views.Answer;
import gambrel.pages.views.Fact;
import gambrel.pages.views.StatementView;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StatementAnswersTest {
  @TempDir private Path folder;

  private FarmShop shop() {
    return new FarmShop(folder);
  }

  @Test
  void inTheOrderInWhichCustomersAsk() {
    var view = shop().steer().statement("B1", "c-ann");
    assertEquals(
        List.of("packs", "owe", "why", "normal", "mine"),
        view.answers().stream().map(Answer::key).toList());
  }

  @Test
  void whetherItIsMyAnimal() {
    var view = shop().steer().statement("B1", "c-ann");
    assertEquals("Beef, steer", view.heading());
    assertEquals(
        List.of(
            new Fact("Ear tag or mark", "Blue 7"),
            new Fact("Killed", "2 March 2026"),
            new Fact("Our number", "B1"),
            new Fact("Hung", "3 days")),
        view.animal());
  }

  @Test
  void howManyPacksOfWhatWeight() {
    assertEquals(
        List.of("4 packs, 76.0 kg in your boxes.", "76.00 kg meat and bone."),
        answer(shop().steer().statement("B1", "c-ann"), "packs"));
  }

  @Test
  void howMuchOfItIsOffal() {
    var shop = shop().steer().row("02T10:00", "B1", "liver", "4.56");
    assertEquals(
        List.of("5 packs, 80.6 kg in your boxes.", "76.00 kg meat and bone, 4.56 kg offal."),
        answer(shop.statement("B1", "c-ann"), "packs"));
  }

  @Test
  void whyItIsLessThanTheLiveWeight() {
    assertEquals(
        List.of(
            "180 kg alive became 76.0 kg to take home.",
            "That is 77.6% of the hanging weight (98.0 kg, cold)."),
        answer(shop().steer().statement("B1", "c-ann"), "why"));
  }

  @Test
  void withAboutWhereTheLiveWeightWasAGuess() {
    var shop = shop().add("bodies.csv", "B1,beef,steer,2026-03-02,180,yes,20,c-ann,1,,,");
    var view = shop.weighed("B1").statement("B1", "c-ann");
    assertTrue(answer(view, "why").get(0).startsWith("About 180 kg alive"));
    assertEquals("Alive, about", view.flow().orElseThrow().rows().get(0).label());
  }

  @Test
  void fromTheRailWhereThereIsNoLiveWeight() {
    var shop = shop().add("bodies.csv", "B1,beef,steer,2026-03-02,,,20,c-ann,1,,,");
    var why = answer(shop.weighed("B1").statement("B1", "c-ann"), "why");
    assertEquals("100.0 kg on the rail, hot, became 76.0 kg to take home.", why.get(0));
    assertEquals("We have no live weight.", why.get(2));
  }

  @Test
  void thatAllComesFromThisAnimalAlone() {
    assertEquals(
        List.of("Yes.", "All of it was weighed as this animal’s alone."),
        answer(shop().steer().statement("B1", "c-ann"), "mine"));
  }

  private static String notes(StatementView view) {
    return FarmShop.plain(view.flow().orElseThrow().notes().get(0));
  }

  @Test
  void whatBecameOfWhatThePictureDoesNotDraw() {
    var shop = shop().add("charges.csv", "hide,Hide bought,head,-20,,,,").steer();
    assertEquals(
        "Of what came off at slaughter: hide bought by the shop (see the charges). Not weighed:"
            + " liver, head and feet, other offal, blood and the rest. 6.00 kg of the take-home is"
            + " bone or fat, packed on its own. Percentages are rounded so that they add up.",
        notes(shop.statement("B1", "c-ann")));
    shop.row("02T10:00", "B1", "liver", "4.5");
    assertTrue(
        notes(shop.statement("B1", "c-ann"))
            .startsWith(
                "Of what came off at slaughter: 4.50 kg offal packed · hide bought by the shop"
                    + " (see the charges). Not weighed: head and feet, other"
                    + " offal, blood and the rest."));
  }

  /** The round is of kind piece: meat on the bone, and none of the six kilos of bone. */
  @Test
  void aPiecePackedWholeIsNeitherBoneNorFat() {
    var shop = shop().add("codes.csv", "round,butt,pack").steer();
    var view = shop.row("05T09:06", "B1", "round", "2").statement("B1", "c-ann");
    assertEquals(
        List.of("5 packs, 78.0 kg in your boxes.", "78.00 kg meat and bone."),
        answer(view, "packs"));
    assertTrue(notes(view).contains(" 6.00 kg of the take-home is bone or fat"), notes(view));
    assertTrue(
        view.keeping().orElseThrow().rows().stream()
            .anyMatch(row -> row.get(0).equals("Roasts and other cuts")));
  }

  @Test
  void aPiecePackedWholeAloneLeavesNothingToSayOfBone() {
    var shop = shop().add("codes.csv", "round,butt,pack");
    shop.add("bodies.csv", "B1,beef,steer,2026-03-02,180,,20,c-ann,1,Blue 7,,");
    shop.row("02T09:00", "B1", "hot", "100").row("03T09:00", "B1", "cold", "98");
    shop.row("05T09:00", "B1", "round", "75").row("05T09:04", "B1", "bone", "21");
    assertFalse(notes(shop.statement("B1", "c-ann")).contains("bone or fat"));
  }

  /** Five kilos of bone more than went in hold the steer. */
  private FarmShop held(FarmShop shop) {
    return shop.steer().row("05T09:10", "B1", "bone", "5");
  }

  @Test
  void whereTheRestIsOnADraftThatDrawsNothing() {
    var shop = held(shop()).row("05T09:06", "B1", "waste", "0.4");
    assertEquals(
        List.of(
            "This much of it was weighed.",
            "Out of the boning room: bone 6.00 kg packed, 20.00 kg not taken home · fat 5.00 kg not"
                + " taken home · waste 0.40 kg not taken home.",
            "Not weighed: liver, hide, head and feet, other offal, blood and the" + " rest."),
        answer(shop.statement("B1", "c-ann"), "rest"));
  }

  @Test
  void thatBonesWereNotWeighedWhereTheShopWeighsNoBins() {
    var shop = shop().add("shop.properties", "bins=no").steer();
    var rows = shop.statement("B1", "c-ann").flow().orElseThrow().rows();
    var last = rows.get(rows.size() - 1);
    assertEquals("Bone, fat, waste and bench loss, not weighed", last.label());
    assertEquals("22.00 kg", FarmShop.plain(last.weight()));
  }

  @Test
  void thatNotAllWasWeighedWhereTheShopWeighsSomeBins() {
    var shop = shop().add("shop.properties", "bins=partly").steer();
    var rows = shop.statement("B1", "c-ann").flow().orElseThrow().rows();
    assertEquals(
        "Bench loss, and bone, fat and waste not weighed", rows.get(rows.size() - 1).label());
  }

  /**
   * A pig's skin has no row in the cut table: it is scalded and left on, or taken off unweighed.
   */
  @Test
  void doNotSayWhetherAPigKeptItsSkin() {
    var shop =
        shop()
            .add("bodies.csv", "P1,pork,,2026-03-02,120,,,c-ann,1,,,")
            .add("codes.csv", "head,head,pack");
    shop.row("02T09:00", "P1", "hot", "80").row("03T09:00", "P1", "cold", "78");
    shop.row("05T09:00", "P1", "mince", "60").row("05T09:01", "P1", "bone", "17");
    shop.row("05T09:02", "P1", "head", "5");
    assertEquals(
        "Of what came off at slaughter: 5.00 kg offal packed. Not weighed, if it came off:"
            + " liver, skin, blood and the rest. Percentages are rounded so that they add up.",
        notes(shop.statement("P1", "c-ann")));
  }
}
