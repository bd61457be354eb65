package gambrel.pages.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.trade.cuts.Facts;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Kind;
import gambrel.trade.cuts.Species;
import java.util.List;
import org.junit.jupiter.api.Test;

class CutNamesTest {
  private static final String GERMAN = "leg=Keule\npork.leg=Schinken\n";
  private static final Item LEG = item("leg", "Leg", false);

  private static Item item(String id, String name, boolean ownName) {
    return new Item(id, "carcase", name, Kind.MEAT, 1, List.of(), ownName, Facts.INHERITED);
  }

  private static String name(Species species, Item item, String shops) {
    return new Wording.CutNames(List.of(GERMAN), List.of(shops)).of(species, item);
  }

  @Test
  void asTheLanguageHasIt() {
    assertEquals("Keule", name(Species.LAMB, LEG, GERMAN));
  }

  @Test
  void asTheLanguageHasItForTheSpecies() {
    assertEquals("Schinken", name(Species.PORK, LEG, GERMAN));
  }

  @Test
  void asTheRegionHasItWhereTheLanguageHasNoName() {
    assertEquals("Ribs", name(Species.LAMB, item("ribs", "Ribs", false), GERMAN));
  }

  @Test
  void asTheShopNamedItInEveryLanguage() {
    assertEquals("Hill leg", name(Species.LAMB, item("leg", "Hill leg", true), GERMAN));
  }

  @Test
  void asTheShopNamedItInThisLanguageBeforeAll() {
    String shops = GERMAN + "lamb.leg=Bergkeule\n";
    assertEquals("Bergkeule", name(Species.LAMB, item("leg", "Hill leg", true), shops));
    assertEquals("Hill leg", name(Species.GOAT, item("leg", "Hill leg", true), shops));
  }
}
