package gambrel.pages.statement;

import static gambrel.pages.statement.FarmShop.answer;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.pages.views.Answer;
import gambrel.pages.views.Fact;
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
        List.of("packs", "owe", "why", "mine", "rest"),
        view.answers().stream().map(Answer::key).toList());
  }

  @Test
  void whetherItIsMyAnimal() {
    var view = shop().steer().statement("B1", "c-ann");
    assertEquals("Beef, steer", view.heading());
    assertEquals(
        List.of(
            new Fact("Ear tag or brand", "Blue 7"),
            new Fact("Killed", "Monday 2 March 2026"),
            new Fact("Our number", "B1"),
            new Fact("Hung", "3 days")),
        view.animal());
  }

  @Test
  void howManyPacksOfWhatWeight() {
    assertEquals(
        List.of(
            "4 packs, 76.00 kg to take home.", "70.00 kg of that is meat; 6.00 kg is bone or fat."),
        answer(shop().steer().statement("B1", "c-ann"), "packs"));
  }

  @Test
  void whatOffalComesOnTop() {
    var shop = shop().steer().row("02T10:00", "B1", "liver", "4.5");
    var lines = answer(shop.statement("B1", "c-ann"), "packs");
    assertEquals("Offal comes on top: 1 pack, 4.50 kg.", lines.get(2));
  }

  @Test
  void whyItIsLessThanTheLiveWeight() {
    assertEquals(
        List.of(
            "180 kg alive became 76.00 kg in the boxes.",
            "The carcase, without head, hide, feet, blood and gut, was 55.6% of the live weight.",
            "Meat is mostly water, and some of it dries off in the chiller and while it hangs."),
        answer(shop().steer().statement("B1", "c-ann"), "why"));
  }

  @Test
  void withAboutWhereTheLiveWeightWasAGuess() {
    var shop = shop().add("bodies.csv", "B1,beef,steer,2026-03-02,180,yes,20,c-ann,1,,,");
    var view = shop.weighed("B1").statement("B1", "c-ann");
    assertTrue(answer(view, "why").get(0).startsWith("About 180 kg alive"));
    assertTrue(answer(view, "why").get(1).contains("about 55.6%"));
    assertEquals("Alive, about", view.flow().orElseThrow().rows().get(0).label());
  }

  @Test
  void fromTheRailWhereThereIsNoLiveWeight() {
    var shop = shop().add("bodies.csv", "B1,beef,steer,2026-03-02,,,20,c-ann,1,,,");
    var why = answer(shop.weighed("B1").statement("B1", "c-ann"), "why");
    assertEquals("100.0 kg on the rail, hot, became 76.00 kg in the boxes.", why.get(0));
    assertEquals("We have no live weight.", why.get(1));
  }

  @Test
  void thatAllComesFromThisAnimalAlone() {
    assertEquals(
        List.of("Yes.", "All of it was weighed as this animal's alone."),
        answer(shop().steer().statement("B1", "c-ann"), "mine"));
  }

  @Test
  void whereTheRestIs() {
    var shop = shop().steer().row("05T09:06", "B1", "waste", "0.4");
    assertEquals(
        List.of(
            "As far as it was weighed:",
            "Liver: no weight known",
            "Other offal: no weight known",
            "Bone: 6.00 kg packed, 15.00 kg not taken home",
            "Fat: 5.00 kg, not taken home",
            "Waste: 0.40 kg, not taken home",
            "Hide: taken off at slaughter, no weight known",
            "Head and feet: taken off at slaughter, no weight known"),
        answer(shop.statement("B1", "c-ann"), "rest"));
  }

  @Test
  void thatBonesWereNotWeighedWhereTheShopWeighsNoBins() {
    var shop = shop().add("shop.properties", "bins=no").steer();
    var view = shop.statement("B1", "c-ann");
    var rest = answer(view, "rest");
    assertTrue(rest.contains("Bone: 6.00 kg packed; the rest not weighed"), rest::toString);
    assertTrue(rest.contains("Fat: no weight known"), rest::toString);
    var rows = view.flow().orElseThrow().rows();
    var last = rows.get(rows.size() - 1);
    assertEquals("Bone, fat, waste and bench loss, not weighed", last.label());
    assertEquals("22.00 kg", FarmShop.plain(last.weight()));
  }

  @Test
  void thatNotAllWasWeighedWhereTheShopWeighsSomeBins() {
    var shop = shop().add("shop.properties", "bins=partly").steer();
    var rest = answer(shop.statement("B1", "c-ann"), "rest");
    assertTrue(
        rest.contains("Fat: 5.00 kg, not taken home; there may be more, not weighed"),
        rest::toString);
  }

  @Test
  void thatTheHideIsBoughtWhereAChargeSaysSo() {
    var shop = shop().add("charges.csv", "hide,Hide bought,head,-20,,,,").steer();
    var rest = answer(shop.statement("B1", "c-ann"), "rest");
    assertTrue(rest.contains("Hide: bought by the shop: see the charges"), rest::toString);
  }

  /** Pork has no hide in its cut table, and no head that dressing takes off. */
  @Test
  void aPigKeepsItsSkinAndItsHeadIsListedAsOffal() {
    var shop =
        shop()
            .add("bodies.csv", "P1,pork,,2026-03-02,120,,,c-ann,1,,,")
            .add("codes.csv", "head,head,pack");
    shop.row("02T09:00", "P1", "hot", "80").row("03T09:00", "P1", "cold", "78");
    shop.row("05T09:00", "P1", "mince", "60").row("05T09:01", "P1", "bone", "17");
    shop.row("05T09:02", "P1", "head", "5");
    var rest = answer(shop.statement("P1", "c-ann"), "rest");
    assertTrue(rest.contains("Other offal: 5.00 kg, packed"), rest::toString);
    assertTrue(rest.stream().noneMatch(line -> line.matches("(Hide|Skin|Head).*")), rest::toString);
  }
}
