package gambrel.files.folder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Kind;
import gambrel.trade.cuts.Region;
import gambrel.trade.cuts.Species;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class BuiltInCutsTest {

  static Stream<Arguments> trees() {
    return Arrays.stream(Region.values())
        .flatMap(
            r -> BuiltInTables.cuts(r).all().stream().map(t -> Arguments.of(r, t.species(), t)));
  }

  @ParameterizedTest(name = "{0} {1}")
  @MethodSource("trees")
  void everyBodySplitsIntoSidesAndQuarters(Region region, Species species, CutTree tree) {
    assertEquals("carcase", tree.items().get(0).id());
    assertEquals(Kind.CARCASE, tree.items().get(0).kind());
    assertPart(tree, "side", "carcase", 2);
    assertPart(tree, "hindquarter", "side", 2);
    assertPart(tree, "forequarter", "side", 2);
    for (var hand : List.of("left", "right")) {
      assertPart(tree, hand + "-side", "carcase", 1);
      assertPart(tree, hand + "-hindquarter", hand + "-side", 1);
      assertPart(tree, hand + "-forequarter", hand + "-side", 1);
    }
  }

  @ParameterizedTest(name = "{0} {1}")
  @MethodSource("trees")
  void oneScaleCodeServesAllSpecies(Region region, Species species, CutTree tree) {
    assertKinds(tree, Kind.MEAT, "mince", "sausages", "burgers", "stewing-dice");
    assertKinds(tree, Kind.TRIM, "trim");
    assertKinds(tree, Kind.BONE, "bone", "marrow-bones", "stock-bones", "dog-bones");
    assertKinds(tree, Kind.FAT, "fat", "kidney-fat");
    assertKinds(tree, Kind.WASTE, "waste", "condemned");
    assertKinds(tree, Kind.OFFAL, "liver", "heart", "kidney", "head");
  }

  @ParameterizedTest(name = "{0} {1}")
  @MethodSource("trees")
  void noTwoLinesOfAPageReadTheSame(Region region, Species species, CutTree tree) {
    var seen = new HashSet<String>();
    for (var item : tree.items()) {
      assertTrue(seen.add(item.name()), item.name());
      assertTrue(item.id().matches("[a-z]+(-[a-z]+)*"), item.id());
    }
  }

  @ParameterizedTest(name = "{0} {1}")
  @MethodSource("trees")
  void pagesListMeatFromTheHindquarterOnThenBoneFatWasteAndOffal(
      Region region, Species species, CutTree tree) {
    var order =
        Stream.of(
                "hindquarter",
                "forequarter",
                "left-side",
                "right-side",
                "sausages",
                "mince",
                "trim",
                "bone",
                "fat",
                "waste",
                "condemned",
                "liver")
            .map(tree::order)
            .toList();
    assertEquals(order.stream().sorted().toList(), order);
  }

  @ParameterizedTest(name = "{0} {1}")
  @MethodSource("trees")
  void aPartOfWhichABodyHasSeveralHangsOnAPartOfWhichItHasSeveral(
      Region region, Species species, CutTree tree) {
    for (var item : tree.items()) {
      if (item.count() > 1 && !item.id().equals("side")) {
        assertNotEquals(1, tree.find(item.parent()).orElseThrow().count(), item.id());
      }
    }
  }

  @ParameterizedTest(name = "{0} {1}")
  @MethodSource("trees")
  void offalIsNeverUnderAPartThatHangs(Region region, Species species, CutTree tree) {
    for (var item : tree.items()) {
      if (item.kind() == Kind.OFFAL) {
        assertFalse(tree.isUnder(item.id(), "side"), item.id());
      }
    }
  }

  @ParameterizedTest(name = "{0} {1}")
  @MethodSource("trees")
  void aStandardCodeNamesOneItemAndWasSeenInPrint(Region region, Species species, CutTree tree)
      throws IOException {
    var printed = codesSeenInPrint(species);
    var used = new HashMap<String, String>();
    for (var item : tree.items()) {
      for (var code : item.unece()) {
        assertTrue(printed.contains(code), item.id() + " " + code);
        assertNull(used.put(code, item.id()), code);
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "BEEF, t-bone, steaks, true, true, false",
    "BEEF, tenderloin-steak, steaks, false, false, false",
    "BEEF, op-rib, roasts, true, true, false",
    "BEEF, short-ribs, roasts, true, false, false",
    "BEEF, mince, mince, false, false, true",
    "BEEF, cured-sausage, , false, false, false",
    "BEEF, jerky, , false, false, false",
    "BEEF, tongue, offal, false, false, false",
    "VEAL, loin-chop, chops, true, true, false",
    "VEAL, chops, chops, true, true, false",
    "LAMB, cutlet, chops, true, false, false",
    "LAMB, backstrap, roasts, false, false, false",
    "PORK, sausages, sausage, false, false, true",
    "PORK, streaky-bacon, bacon, false, false, false",
    "PORK, ham-hock, ham, true, false, false",
    "PORK, trim, mince, false, false, false",
    "PORK, bone, , false, false, false",
  })
  void factsAreTheSameInEveryRegion(
      Species species, String id, String food, boolean bone, boolean vertebra, boolean minced) {
    for (var region : Region.values()) {
      var tree = BuiltInTables.cuts(region).of(species);
      var facts = tree.facts(id);
      assertEquals(
          Optional.ofNullable(food), BuiltInTables.foods(region).of(tree, id).map(f -> f.id()), id);
      assertEquals(bone, facts.isOnBone(), id);
      assertEquals(vertebra, facts.hasVertebra(), id);
      assertEquals(minced, facts.isMinced(), id);
    }
  }

  @ParameterizedTest(name = "{0} {1}")
  @MethodSource("trees")
  void everyFoodThatARowNamesIsKnown(Region region, Species species, CutTree tree) {
    var known = BuiltInTables.foods(Region.AU).all().stream().map(food -> food.id()).toList();
    for (var item : tree.items()) {
      item.facts().food().ifPresent(food -> assertTrue(known.contains(food), item.id()));
    }
  }

  @ParameterizedTest(name = "{0} {1}")
  @MethodSource("trees")
  void whatHasVertebraeIsOnTheBone(Region region, Species species, CutTree tree) {
    for (var item : tree.items()) {
      var facts = tree.facts(item.id());
      assertTrue(facts.isOnBone() || !facts.hasVertebra(), item.id());
    }
  }

  @Test
  void foodsOfASpeciesThatTheSourceLeavesOutAreNotKnown() {
    var goat = BuiltInTables.cuts(Region.AU).of(Species.GOAT);
    assertEquals(Optional.empty(), BuiltInTables.foods(Region.AU).of(goat, "loin-chop"));
  }

  @ParameterizedTest
  @CsvSource({
    "BEEF, carcase, Carcase, Carcase, Carcass",
    "BEEF, topside, Topside, Topside, Top round",
    "BEEF, silverside, Silverside, Silverside, Bottom round",
    "BEEF, thick-flank, Round (thick flank), Thick flank, Sirloin tip (knuckle)",
    "BEEF, rump-steak, Rump steak, Rump steak, Top sirloin steak",
    "BEEF, striploin-steak, Porterhouse steak, Sirloin steak, Strip steak",
    "BEEF, tenderloin, Eye fillet, Fillet, Tenderloin",
    "BEEF, mince, Mince, Mince, Ground beef",
    "LAMB, cutlet, Cutlets, Cutlets, Rib chops",
    "PORK, leg, Leg, Leg, Fresh ham",
    "PORK, collar-butt, Scotch (collar butt), Collar (neck end), Boston butt",
  })
  void namesAreThoseOfTheRegionsTrade(Species species, String id, String au, String uk, String us) {
    assertEquals(au, name(Region.AU, species, id));
    assertEquals(uk, name(Region.UK, species, id));
    assertEquals(us, name(Region.US, species, id));
  }

  @Test
  void aShortLoinGoesHomeAsTBonesOrAsTenderloinAndStriploin() {
    for (var region : Region.values()) {
      var beef = BuiltInTables.cuts(region).of(Species.BEEF);
      for (var id : List.of("t-bone", "tenderloin", "striploin")) {
        assertEquals("short-loin", beef.find(id).orElseThrow().parent());
      }
      assertTrue(beef.isUnder("striploin-steak", "hindquarter"));
    }
  }

  @Test
  void aPrimalComesFromTheQuarterThatTheRegionsBreakLeavesItOn() {
    assertQuarter(Species.BEEF, "wing-rib", "hindquarter", "hindquarter", "forequarter");
    assertQuarter(Species.BEEF, "thin-skirt", "hindquarter", "hindquarter", "forequarter");
    assertQuarter(Species.LAMB, "rack", "hindquarter", "forequarter", "forequarter");
    assertQuarter(Species.LAMB, "flap", "forequarter", "forequarter", "hindquarter");
  }

  @Test
  void boneInJointsCountAsMeat() {
    var trees = BuiltInTables.cuts(Region.AU);
    assertKinds(trees.of(Species.BEEF), Kind.MEAT, "t-bone", "op-rib", "osso-bucco", "short-ribs");
    assertKinds(trees.of(Species.LAMB), Kind.MEAT, "leg", "shoulder", "rack", "shank", "neck");
    assertKinds(trees.of(Species.PORK), Kind.MEAT, "leg", "loin", "belly", "ham", "hock");
  }

  private static void assertPart(CutTree tree, String id, String parent, int count) {
    var part = tree.find(id).orElseThrow();
    assertEquals(parent, part.parent(), id);
    assertEquals(count, part.count(), id);
    assertEquals(Kind.CARCASE, part.kind(), id);
  }

  private static void assertKinds(CutTree tree, Kind kind, String... ids) {
    for (var id : ids) {
      assertEquals(kind, tree.find(id).map(Item::kind).orElseThrow(), id);
    }
  }

  private static void assertQuarter(Species species, String id, String au, String uk, String us) {
    assertTrue(BuiltInTables.cuts(Region.AU).of(species).isUnder(id, au), id);
    assertTrue(BuiltInTables.cuts(Region.UK).of(species).isUnder(id, uk), id);
    assertTrue(BuiltInTables.cuts(Region.US).of(species).isUnder(id, us), id);
  }

  private static String name(Region region, Species species, String id) {
    return BuiltInTables.cuts(region).of(species).find(id).orElseThrow().name();
  }

  /** The list names, for each code, the publication in which it was seen. */
  private static Set<String> codesSeenInPrint(Species species) throws IOException {
    var format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    var codes = new HashSet<String>();
    var path = "/gambrel/cuts/codes-seen-in-print.csv";
    try (var in = BuiltInCutsTest.class.getResourceAsStream(path);
        var parser = format.parse(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      for (var row : parser) {
        if (row.get("species").equals(species.id())) {
          codes.add(row.get("code"));
        }
      }
    }
    return codes;
  }
}
