package gambrel.files.folder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Region;
import gambrel.trade.cuts.Species;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Which items a text names, and which it may mean. */
class ItemNamesTest {
  private static final String LETTERS = "abcdefghijklmnopqrstuvwxyz";

  private static final Set<String> TWINS =
      Set.of(
          "bone as tbone",
          "dog bones as hog bones",
          "feet as fett",
          "hide as side",
          "side as hide");

  private static final Map<Region, Set<String>> TWINS_OF_REGION =
      Map.of(
          Region.AU,
          Set.of(
              "neck bones as neck boned",
              "neck bones as neck boneds",
              "op rib as ox rib",
              "rib set as rib sht",
              "rind as hind",
              "round steak as ground steak",
              "rump as drump"),
          Region.UK,
          Set.of(
              "hand as hind",
              "hand shank as and shank",
              "neck bones as neck boned",
              "neck bones as neck boneds",
              "ribs as ris",
              "rind as hind",
              "rump as drump",
              "shoulder (lmc) as shoulder (lmb)"),
          Region.US,
          Set.of(
              "fat as flat",
              "leaf fat as lean fat",
              "rib roast, small end as rib roast, small and",
              "rib as ribs",
              "rib as ris",
              "ground beef as round beef",
              "round as ground",
              "sirloin tip roast as sirloin top roast",
              "sirloin tip steak as sirloin top steak",
              "top sirloin as tip sirloin",
              "top sirloin roast as tip sirloin roast",
              "top sirloin steak as tip sirloin steak"));

  /** Of these the strangers would ask. */
  private static final Map<Region, Set<String>> TAKEN_FOR_ANOTHER =
      Map.of(
          Region.UK, Set.of("lamb Stewing Lamb as stewing-dice", "pork SPARE RIBS as spare-ribs"));

  private static ItemNames names(Region region) {
    return new ItemNames(BuiltInTables.cuts(region), region);
  }

  private static List<String> ids(List<Item> items) {
    return items.stream().map(Item::id).distinct().toList();
  }

  /** What a text may become by one slip of the keys: a letter more, less, other or exchanged. */
  private static Set<String> slips(String text) {
    var slips = new LinkedHashSet<String>();
    for (int at = 0; at <= text.length(); at++) {
      String before = text.substring(0, at);
      String after = text.substring(at);
      for (char letter : LETTERS.toCharArray()) {
        slips.add(before + letter + after);
        if (!after.isEmpty()) {
          slips.add(before + letter + after.substring(1));
        }
      }
      if (!after.isEmpty()) {
        slips.add(before + after.substring(1));
      }
      if (after.length() > 1) {
        slips.add(before + after.charAt(1) + after.charAt(0) + after.substring(2));
      }
    }
    slips.remove(text);
    return slips;
  }

  /** But for the twins: a slip that is another item's whole name cannot be told from it. */
  @ParameterizedTest
  @EnumSource
  void aNameWithOneSlipNamesNoOtherItem(Region region) {
    var names = names(region);
    var wrong = new TreeSet<String>();
    for (var tree : BuiltInTables.cuts(region).all()) {
      for (var item : tree.items()) {
        String name = item.name().toLowerCase(Locale.ROOT);
        for (String slip : slips(name)) {
          var found = ids(names.named(slip, Set.of(tree.species())));
          if (found.size() == 1 && !found.contains(item.id())) {
            wrong.add(name + " as " + slip);
          }
        }
      }
    }
    var twins = new TreeSet<>(TWINS_OF_REGION.get(region));
    twins.addAll(TWINS);
    assertEquals(twins, wrong);
  }

  @ParameterizedTest
  @CsvSource({
    "PORK, Rusk mix",
    "LAMB, Ham",
    "BEEF, Chump",
    "BEEF, Skin",
    "PORK, Shin",
    "PORK, Rid",
    "LAMB, Lion",
    "BEEF, Rump stake",
    "BEEF, Topsde",
    "LAMB, Sholdr",
  })
  void aNearOrShortWordNamesNothing(Species species, String text) {
    assertEquals(List.of(), names(Region.UK).named(text, Set.of(species)));
  }

  @ParameterizedTest
  @CsvSource({
    "BEEF, RUMP STEAKS, rump-steak",
    "BEEF, steak rump, rump-steak",
    "BEEF, Diced Beef, stewing-dice",
    "LAMB, Leg (boneless), leg-boneless",
    "BEEF, Short loin bone-in, short-loin",
    "BEEF, Lamb neck, neck",
    "PORK, BAUCH, belly",
    "LAMB, epaule, shoulder",
    "LAMB, ÉPAULE D'AGNEAU, shoulder",
    "PORK, Longe de porc, loin",
    "LAMB, PIG LEG, leg",
  })
  void theWordsOfANameInAnyOrderNameItsItem(Species species, String text, String id) {
    assertEquals(List.of(id), ids(names(Region.UK).named(text, Set.of(species))));
  }

  @Test
  void ofTwoSpeciesBothItemsWithOneNameAreNamed() {
    assertEquals(
        List.of("hide", "rind"),
        ids(names(Region.UK).named("Skin", Set.of(Species.LAMB, Species.PORK))));
  }

  @ParameterizedTest
  @CsvSource({
    "LAMB, BRST RLD, breast-rolled",
    "LAMB, SHLDR B/LESS RLD, shoulder-boneless",
    "LAMB, LN CHPS, loin-chop",
    "LAMB, KID, kidney",
    "LAMB, LIV, liver",
    "LAMB, HRT, heart",
    "PORK, SAUS, sausages",
    "PORK, BLY SLCS, belly-slices",
    "PORK, LEG JT, leg-roast",
    "BEEF, RUMP STK, rump-steak",
    "BEEF, RUMP STK B/IN, rump-steak-bone-in",
    "BEEF, TOPSDE JT, topside-roast",
    "BEEF, SLVRSDE RST, silverside-roast",
    "BEEF, FLLT STK, tenderloin-steak",
    "BEEF, MNC, mince",
    "BEEF, BRSKT, brisket",
    "BEEF, OXTL, tail",
    "BEEF, BNS, bone",
    "BEEF, RIB STK, rib-eye-bone-in",
    "BEEF, Gulasch, stewing-dice",
    "PORK, Eisbein, hock",
    "PORK, Schälrippchen, spare-ribs",
  })
  void aNameWithShortWordsOrEndsOfThemIsNearItsItem(Species species, String text, String id) {
    var near = ids(names(Region.UK).nearest(text, Set.of(species)));
    assertTrue(near.contains(id), near::toString);
  }

  /** Names of twelve letters, and short forms, as labels have them (common practice). */
  @ParameterizedTest
  @CsvSource({
    "BEEF, FEATHER BLAD, oyster-blade",
    "BEEF, SILVERSIDE J, silverside",
    "BEEF, SIRLOIN STK, striploin-steak",
    "BEEF, TOP RUMP JNT, thick-flank-roast",
    "LAMB, BREAST ROLL, breast-rolled",
    "LAMB, NECK SLICED, neck-chop",
    "PORK, LEG JNT, leg-roast",
    "PORK, BELY SLICES, belly-slices",
    "BEEF, SHIN SLICED, ",
    "BEEF, FORE RIB JNT, ",
    "LAMB, SHOULDER JNT, ",
    "LAMB, BEST END CUT, ",
    "BEEF, STEAK, ",
  })
  void aNameCutShortIsClearOnlyIfNoOtherIsNearlyAsLikeIt(Species species, String text, String id) {
    assertEquals(Optional.ofNullable(id), names(Region.UK).clear(text, species).map(Item::id));
  }

  /** A rump steak is what the page calls so, though a German sirloin steak has the name too. */
  @Test
  void whatPagesCallAnItemComesBeforeItsOtherNames() {
    assertEquals(
        List.of("rump-steak"), ids(names(Region.UK).named("RUMP STEAK", Set.of(Species.BEEF))));
  }

  /** B/I, BNLS and rolled, as the trade writes them (common practice). */
  @ParameterizedTest
  @CsvSource({
    "BEEF, SIRLOIN B/I, striploin-bone-in",
    "BEEF, SIRLOIN BNLS, striploin",
    "BEEF, BRISKET ON THE BONE, brisket",
    "BEEF, BRISKET B&R, brisket-roll",
    "BEEF, SHIN BONELESS, shin-shank-meat",
    "BEEF, RUMP STEAK OFF BONE, rump-steak",
    "LAMB, LEG BNLS, leg-boneless",
    "LAMB, LEG ROLLED, leg-boneless",
    "LAMB, LEG B/I, leg",
    "PORK, SHLDR B/LESS, shoulder-boneless",
    "PORK, BELLY BNLS RIND ON, belly",
    "PORK, BELLY B/I, belly",
  })
  void whatIsSaidOfTheBoneMustAgreeWithTheItem(Species species, String text, String id) {
    assertEquals(List.of(id), ids(names(Region.UK).named(text, Set.of(species))));
  }

  @ParameterizedTest
  @CsvSource({"BEEF, SHORT RIBS BNLS", "LAMB, RACK BNLS", "PORK, SPARE RIBS BNLS"})
  void aCutThatIsAlwaysOnTheBoneIsNotNamedBoneless(Species species, String text) {
    assertEquals(List.of(), names(Region.UK).named(text, Set.of(species)));
  }

  /** Whoever wrote them did not know the words of the program, and said what they mean. */
  @ParameterizedTest
  @EnumSource
  void ofLabelsOfStrangersMostAreKnownAndHardlyOneIsTakenForAnotherCut(Region region) {
    var names = names(region);
    var wrong = new TreeSet<String>();
    int asked = 0;
    int known = 0;
    for (var label : BuiltInTables.rows("labels/" + region.id())) {
      var species = Species.valueOf(label.get("species").toUpperCase(Locale.ROOT));
      var meant = Set.of(label.get("items").split("[|]"));
      var named = ids(names.named(label.get("label"), Set.of(species)));
      asked += named.size() == 1 ? 0 : 1;
      known += named.size() == 1 && meant.contains(named.get(0)) ? 1 : 0;
      if (named.size() == 1 && !meant.contains(named.get(0))) {
        wrong.add(label.get("species") + ' ' + label.get("label") + " as " + named.get(0));
      }
    }
    assertEquals(TAKEN_FOR_ANOTHER.getOrDefault(region, Set.of()), wrong);
    assertTrue(known > 2 * asked, "known " + known + ", asked " + asked);
  }

  @ParameterizedTest
  @CsvSource({"Lamb, true", "PIG, true", "Schwein, true", "leg of lamb, false", "hot, false"})
  void aTextOfASpeciesAloneIsKnown(String text, boolean is) {
    assertEquals(is, ItemNames.isOfSpecies(text));
  }
}
