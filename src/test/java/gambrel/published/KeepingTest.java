package gambrel.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import gambrel.files.folder.BuiltInTables;
import gambrel.trade.cuts.Foods.Food;
import gambrel.trade.cuts.Foods.Span;
import gambrel.trade.cuts.Region;
import gambrel.trade.cuts.Species;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How food keeps and is cooked, as the cold storage chart and the temperature table print it. */
class KeepingTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "steaks|steaks (beef, veal, lamb, pork)",
        "chops|chops",
        "roasts|roasts",
        "mince|ground beef/veal/pork/lamb",
        "sausage|raw sausage",
        "bacon|bacon",
        "offal|variety meats",
      })
  void foodKeepsAsLongAsTheChartSays(String id, String printed) {
    var row = Published.table("fsis_storage_times", "food", printed).get(0);
    for (var food : foods(Region.AU, id)) {
      assertEquals(row.get("refrigerator_at_or_below_40F_4C"), text(food.fridgeDays(), "day"), id);
      assertEquals(
          row.get("freezer_at_or_below_0F_minus18C"), text(food.freezerMonths(), "month"), id);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "steaks|beef, pork, veal, lamb steaks, chops, roasts",
        "chops|beef, pork, veal, lamb steaks, chops, roasts",
        "roasts|beef, pork, veal, lamb steaks, chops, roasts",
        "mince|ground meats (beef, pork, veal, lamb)",
        "sausage|ground meats (beef, pork, veal, lamb)",
        "ham|fresh or smoked ham, uncooked",
      })
  void americanFoodIsCookedAndRestedAsTheTableSays(String id, String printed) {
    var row = Published.table("fsis_cooking_temperatures", "food", printed).get(0);
    for (var food : foods(Region.US, id)) {
      assertEquals(Optional.of(new BigDecimal(row.get("min_F"))), food.cooked(), id);
      assertEquals(row.get("rest"), food.minutes().map(m -> m + " min").orElse(""), id);
    }
  }

  /**
   * Food Safety Information Council, Safe cooking temperatures (foodsafety.asn.au): minced meat,
   * sausages, roasts that are stuffed, rolled or boned, meat pumped with brine, offal; as a guide,
   * whole cuts of red meat medium rare and pork steaks, with a rest of 3 to 5 minutes.
   */
  @ParameterizedTest
  @CsvSource({
    "steaks, LAMB, 63, 3",
    "steaks, PORK, 70, 3",
    "chops, BEEF, 63, 3",
    "chops, PORK, 70, 3",
    "roasts, BEEF, 75,",
    "mince, PORK, 75,",
    "sausage, VEAL, 75,",
    "ham, PORK, 75,",
    "offal, LAMB, 75,",
    "bacon, PORK,,"
  })
  void australianFoodIsCookedAsTheCouncilSays(
      String id, Species species, BigDecimal degrees, Integer minutes) {
    var food = food(Region.AU, id, species);
    assertEquals(Optional.ofNullable(degrees), food.cooked());
    assertEquals(Optional.ofNullable(minutes), food.minutes());
  }

  /** Food Standards Agency, Cooking your food: 70 °C for 2 minutes (the value from memory). */
  @ParameterizedTest
  @CsvSource({"steaks", "chops", "roasts", "mince", "sausage", "ham", "offal"})
  void britishFoodHasSeventyDegreesForTwoMinutes(String id) {
    for (var food : foods(Region.UK, id)) {
      assertEquals(Optional.of(BigDecimal.valueOf(70)), food.cooked());
      assertEquals(Optional.of(2), food.minutes());
    }
  }

  @Test
  void aFoodWithoutARowForASpeciesHasNoAdviceForIt() {
    var tree = BuiltInTables.cuts(Region.AU).of(Species.GAME);
    assertEquals(Optional.empty(), BuiltInTables.foods(Region.AU).of(tree, "mince"));
  }

  /** The heads of the chart's columns. */
  @Test
  void aFridgeHasFourDegreesAndAFreezerMinusEighteen() {
    assertEquals(BigDecimal.valueOf(4), BuiltInTables.foods(Region.AU).fridge());
    assertEquals(BigDecimal.valueOf(-18), BuiltInTables.foods(Region.UK).freezer());
    assertEquals(BigDecimal.valueOf(40), BuiltInTables.foods(Region.US).fridge());
    assertEquals(BigDecimal.ZERO, BuiltInTables.foods(Region.US).freezer());
  }

  @Test
  void whatTheSourcesDoNotGiveIsEmpty() {
    assertEquals(Optional.empty(), food(Region.UK, "ham", Species.PORK).fridgeDays());
    assertEquals(Optional.empty(), food(Region.US, "bacon", Species.PORK).cooked());
  }

  private static List<Food> foods(Region region, String id) {
    var foods =
        BuiltInTables.foods(region).all().stream().filter(food -> food.id().equals(id)).toList();
    assertFalse(foods.isEmpty());
    return foods;
  }

  private static Food food(Region region, String id, Species species) {
    return foods(region, id).stream()
        .filter(food -> food.species().contains(species))
        .findFirst()
        .orElseThrow();
  }

  private static String text(Optional<Span> span, String unit) {
    var s = span.orElseThrow();
    return (s.least() == s.most() ? "" + s.most() : s.least() + "-" + s.most())
        + " "
        + unit
        + (s.most() == 1 ? "" : "s");
  }
}
