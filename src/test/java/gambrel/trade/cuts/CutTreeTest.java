package gambrel.trade.cuts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.Shuffle;
import gambrel.trade.measure.FileWord;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CutTreeTest {
  private static final Item CARCASE =
      new Item("carcase", "", "Carcase", Kind.CARCASE, 1, List.of());

  /** carcase > (loin > (tenderloin, striploin > steak), brisket, mince). */
  private final CutTree tree =
      CutTree.of(
          Species.BEEF,
          List.of(
              CARCASE,
              item("loin", "carcase"),
              item("brisket", "carcase"),
              item("tenderloin", "loin"),
              item("striploin", "loin"),
              item("mince", "carcase"),
              item("steak", "striploin")));

  @Test
  void itemsFollowWhatTheyComeFromAndSiblingsKeepTheirOrder() {
    assertEquals(
        List.of("carcase", "loin", "tenderloin", "striploin", "steak", "brisket", "mince"),
        ids(tree.items()));
    assertEquals(List.of("tenderloin", "striploin"), ids(tree.children("loin")));
    assertEquals(List.of(), tree.children("mince"));
    assertEquals(3, tree.order("striploin"));
    assertEquals(CARCASE, tree.items().get(0));
  }

  @Test
  void aPathRunsFromTheRootToTheItem() {
    assertEquals(List.of("carcase", "loin", "striploin", "steak"), ids(tree.path("steak")));
    assertEquals(List.of("carcase"), ids(tree.path("carcase")));
  }

  @Test
  void anItemIsUnderItselfAndAllItComesFromAndNothingElse() {
    assertTrue(tree.isUnder("steak", "steak"));
    assertTrue(tree.isUnder("steak", "loin"));
    assertTrue(tree.isUnder("steak", "carcase"));
    assertFalse(tree.isUnder("steak", "tenderloin"));
    assertFalse(tree.isUnder("brisket", "loin"));
    assertFalse(tree.isUnder("loin", "steak"));
  }

  @Test
  void anUnknownItemIsNowhere() {
    assertEquals(Optional.empty(), tree.find("wing"));
    assertEquals(List.of(), tree.children("wing"));
    assertFalse(tree.isUnder("wing", "carcase"));
    assertFalse(tree.isUnder("wing", "wing"));
    assertNamed("wing", () -> tree.order("wing"));
    assertNamed("wing", () -> tree.path("wing"));
  }

  @Test
  void aReplacedItemKeepsItsPlaceAndWhatComesFromIt() {
    var renamed = new Item("loin", "carcase", "Hind loin", Kind.PIECE, 2, List.of("1550"));
    var changed = extended(tree, List.of(renamed));
    assertEquals(ids(tree.items()), ids(changed.items()));
    assertEquals(Optional.of(renamed), changed.find("loin"));
    assertEquals("loin", tree.find("loin").orElseThrow().name());
  }

  @Test
  void aMovedItemComesLastInItsNewPlaceAndTakesAlongWhatComesFromIt() {
    var changed = extended(tree, List.of(item("striploin", "carcase")));
    assertEquals(
        List.of("carcase", "loin", "tenderloin", "brisket", "mince", "striploin", "steak"),
        ids(changed.items()));
    assertFalse(changed.isUnder("steak", "loin"));
  }

  @Test
  void newItemsComeLastInTheOrderListed() {
    var changed =
        extended(
            tree,
            List.of(
                item("pastrami", "brisket"), item("soup", "carcase"), item("corned", "brisket")));
    assertEquals(List.of("pastrami", "corned"), ids(changed.children("brisket")));
    assertEquals(List.of("loin", "brisket", "mince", "soup"), ids(changed.children("carcase")));
  }

  @Test
  void aListMayNameAPartBeforeThePartItComesFrom() {
    var changed = extended(tree, List.of(item("slice", "rib"), item("rib", "carcase")));
    assertEquals(List.of("carcase", "rib", "slice"), ids(changed.path("slice")));
  }

  @Test
  void aListMayTurnParentAndChildRound() {
    var changed = extended(tree, List.of(item("loin", "striploin"), item("striploin", "carcase")));
    assertEquals(
        List.of("carcase", "striploin", "loin", "tenderloin"), ids(changed.path("tenderloin")));
  }

  @Test
  void anItemWithoutItsParentIsLeftOutWithAllThatHangsOnIt() {
    var extension =
        tree.extend(List.of(item("slice", "rib"), item("rib", "nowhere"), item("soup", "carcase")));
    assertEquals(List.of("slice NO_PARENT", "rib NO_PARENT"), flaws(extension));
    assertTrue(extension.tree().find("soup").isPresent());
    assertEquals(Optional.empty(), extension.tree().find("slice"));
  }

  @Test
  void anItemThatWouldComeFromItselfIsLeftOutAndTheOldOneStands() {
    var extension =
        tree.extend(
            List.of(
                item("loin", "steak"),
                item("brisket", "brisket"),
                item("hen", "egg"),
                item("egg", "hen"),
                item("chick", "egg")));
    assertEquals(
        List.of("loin CYCLE", "brisket CYCLE", "hen CYCLE", "egg CYCLE", "chick NO_PARENT"),
        flaws(extension));
    assertEquals(tree.items(), extension.tree().items());
  }

  @Test
  void ofTwoItemsWithOneIdTheFirstCounts() {
    var extension = tree.extend(List.of(item("soup", "carcase"), item("soup", "loin")));
    assertEquals(List.of("soup TWICE"), flaws(extension));
    assertEquals("carcase", extension.tree().find("soup").orElseThrow().parent());
  }

  @Test
  void onlyTheCarcaseIsARoot() {
    var extension =
        tree.extend(
            List.of(
                item("pig", ""),
                new Item("carcase", "", "Body", Kind.MEAT, 1, List.of()),
                item("soup", "pig")));
    assertEquals(List.of("pig ROOT", "carcase ROOT", "soup NO_PARENT"), flaws(extension));
    assertEquals(List.of("carcase ROOT"), flaws(tree.extend(List.of(item("carcase", "loin")))));

    var renamed = new Item("carcase", "", "Body", Kind.CARCASE, 1, List.of());
    assertEquals(renamed, extended(tree, List.of(renamed)).items().get(0));
  }

  @Test
  void anIllegalTreeIsRefusedNamingTheItem() {
    assertNamed("carcase", () -> CutTree.of(Species.BEEF, List.of()));
    assertNamed("loin", () -> CutTree.of(Species.BEEF, List.of(item("loin", "carcase"))));
    assertNamed("loin", () -> CutTree.of(Species.BEEF, List.of(CARCASE, item("loin", "side"))));
    assertNamed("side", () -> CutTree.of(Species.BEEF, List.of(CARCASE, item("side", ""))));
    assertNamed("loin", () -> CutTree.of(Species.BEEF, List.of(CARCASE, item("loin", "loin"))));
  }

  @Test
  void anItemNeedsAnIdANameAndACount() {
    assertNamed("Loin", () -> new Item(" ", "carcase", "Loin", Kind.MEAT, 1, List.of()));
    assertNamed("loin", () -> new Item("loin", "carcase", "", Kind.MEAT, 1, List.of()));
    assertNamed("loin", () -> new Item("loin", "carcase", "Loin", Kind.MEAT, 0, List.of()));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void inAnyTreeBeingUnderMeansBeingOnThePathHoweverItIsListed(long seed) {
    var random = new SplittableRandom(seed);
    var items = new ArrayList<>(List.of(CARCASE));
    for (int i = 0; i < 60; i++) {
      items.add(item("part-" + i, items.get(random.nextInt(items.size())).id()));
    }
    Shuffle.inPlace(items, random);
    var grown = CutTree.of(Species.GAME, items);
    assertEquals(items.size(), grown.items().size());
    for (var below : items) {
      for (var above : items) {
        assertEquals(
            grown.path(below.id()).contains(above),
            grown.isUnder(below.id(), above.id()),
            below.id() + " under " + above.id());
      }
    }
  }

  private static Item item(String id, String parent, Facts facts) {
    return new Item(id, parent, id, Kind.MEAT, 1, List.of(), true, facts);
  }

  private static Facts facts(String food, boolean bone) {
    return new Facts(
        Optional.of(food), Optional.of(bone), Optional.empty(), Optional.empty(), Optional.empty());
  }

  @Test
  void aFactThatAnItemLeavesEmptyIsThatOfTheNearestItemAbove() {
    var grown =
        extended(
            tree,
            List.of(
                item("rib", "carcase", facts("roasts", true)),
                item("slice", "rib", Facts.INHERITED),
                item("dice", "slice", facts("mince", false))));
    assertEquals(Optional.of("roasts"), grown.facts("slice").food());
    assertTrue(grown.facts("slice").isOnBone());
    assertEquals(Optional.of("mince"), grown.facts("dice").food());
    assertFalse(grown.facts("dice").isOnBone());
    assertFalse(grown.facts("slice").isMinced());
  }

  @Test
  void anItemThatMovesHasTheFactsOfItsNewParent() {
    var grown =
        extended(
            tree,
            List.of(
                item("rib", "carcase", facts("roasts", true)),
                item("slice", "rib", Facts.INHERITED)));
    assertTrue(grown.facts("slice").isOnBone());
    var moved = extended(grown, List.of(item("slice", "carcase", Facts.INHERITED)));
    assertEquals(Facts.INHERITED, moved.facts("slice"));
  }

  @Test
  void anUnknownItemHasNoFacts() {
    assertEquals(Facts.INHERITED, tree.facts("nothing"));
    assertEquals(Facts.Offal.OTHER, tree.facts("nothing").offalLine());
  }

  @Test
  void treesChangeForOneSpeciesOnly() {
    var trees =
        new CutTrees(
            Stream.of(Species.values())
                .collect(Collectors.toMap(s -> s, s -> CutTree.of(s, List.of(CARCASE)))));
    var changed = trees.with(extended(trees.of(Species.PORK), List.of(item("loin", "carcase"))));
    assertEquals(2, changed.of(Species.PORK).items().size());
    assertEquals(1, trees.of(Species.PORK).items().size());
    assertEquals(1, changed.of(Species.BEEF).items().size());
    assertEquals(List.of(Species.values()), changed.all().stream().map(CutTree::species).toList());
  }

  @Test
  void wordsOfTheShopFilesAreReadWithoutRegardToCase() {
    assertEquals(Optional.of(Species.LAMB), FileWord.find(Species.class, " Lamb "));
    assertEquals(Optional.empty(), FileWord.find(Species.class, "poultry"));
    assertEquals("beef", Species.BEEF.id());
    assertEquals(Optional.of(Kind.ADDED), FileWord.find(Kind.class, "added"));
    assertEquals(Optional.empty(), FileWord.find(Kind.class, ""));
    assertEquals("offal", Kind.OFFAL.id());
    assertEquals(Optional.of(Region.UK), FileWord.find(Region.class, "UK"));
    assertEquals("us", Region.US.id());
  }

  private static Item item(String id, String parent) {
    return new Item(id, parent, id, Kind.MEAT, 1, List.of());
  }

  /** The tree with items that all fit. */
  private static CutTree extended(CutTree tree, List<Item> items) {
    var extension = tree.extend(items);
    assertEquals(List.of(), extension.rejected());
    return extension.tree();
  }

  private static List<String> ids(List<Item> items) {
    return items.stream().map(Item::id).toList();
  }

  private static List<String> flaws(Extension extension) {
    return extension.rejected().stream().map(r -> r.item().id() + " " + r.flaw()).toList();
  }

  private static void assertNamed(String name, Runnable refused) {
    var thrown = assertThrows(IllegalArgumentException.class, refused::run);
    assertTrue(thrown.getMessage().contains(name), thrown.getMessage());
  }
}
