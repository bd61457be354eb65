package gambrel.published;

import static gambrel.published.Published.assertPrinted;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** From live weight to take-home (chains_live_to_takehome.txt). */
class LiveToTakeHomeTest {
  private static final String CHAINS = "chains_live_to_takehome";

  @TempDir Path folder;

  private static String printed(String example, String stage, String column) {
    return Published.table(CHAINS, "example", example).stream()
        .filter(row -> row.get("stage").equals(stage))
        .findFirst()
        .orElseThrow()
        .get(column);
  }

  private static String weight(String example, String stage) {
    return printed(example, stage, "weight");
  }

  private static void assertPercent(String example, String stage, String computed) {
    assertPrinted(printed(example, stage, "printed_percent"), computed, example + ' ' + stage);
  }

  /** An extension-service worked example, reprinted widely; its publisher is not named. */
  @Test
  void aTwelveHundredPoundSteer() {
    String steer = "chain_beef_1200";
    var found =
        new Cutout(folder, "lb", "beef", weight(steer, "live"))
            .hung("hot", weight(steer, "hot_carcass"))
            .hung("cold", weight(steer, "chilled_carcass"))
            .pack("carcase", "All cuts", weight(steer, "take_home"))
            .found();
    assertPercent(steer, "hot_carcass", found.body("B1", "dressing_pct"));
    assertPercent(steer, "chilled_carcass", found.body("B1", "chill_shrink_pct"));
    assertPercent(steer, "take_home", found.body("B1", "take_home_of_cold_pct"));
  }

  /**
   * Meat & Livestock Australia, "A single animal produces over 1500 portions of cooked beef". What
   * is lost after the boning room, in shop and kitchen, is nothing that a boning room weighs.
   */
  @Test
  void aFourHundredAndFiftyKilogramSteer() {
    String steer = "chain_mla_450";
    var found =
        new Cutout(folder, "kg", "beef", weight(steer, "live"))
            .hotOnly()
            .hung("hot", weight(steer, "hot_standard_carcase"))
            .pack("carcase", "Saleable meat", weight(steer, "saleable_meat"))
            .found();
    assertPercent(steer, "hot_standard_carcase", found.body("B1", "dressing_pct"));
    assertPercent(steer, "saleable_meat", found.body("B1", "take_home_of_hot_pct"));
    assertEquals("69.300", found.body("B1", "cutting_loss_kg"));
  }

  /** The meat of the same animal as it is sold: 90 % of the saleable meat. */
  @Test
  void whatIsRetailedOfTheSaleableMeat() {
    String steer = "chain_mla_450";
    var found =
        new Cutout(folder, "kg", "beef", "")
            .piece("Saleable meat", weight(steer, "saleable_meat"))
            .pack("Saleable meat", "Retailed", weight(steer, "retailed"))
            .found();
    assertPercent(
        steer,
        "retailed",
        found.cell("cuts", "of_boning_pct", "item=saleable-meat-retailed", "level=own"));
  }

  /** Pennsylvania State University Extension, and Mississippi State University Extension P3489. */
  @ParameterizedTest
  @CsvSource({
    "psu_hog, pork, carcass",
    "psu_steer, beef, carcass",
    "psu_lamb, lamb, carcass",
    "msstate_steer, beef, hot_carcass"
  })
  void dressingPercentages(String example, String species, String stage) {
    var found =
        new Cutout(folder, "lb", species, weight(example, "live"))
            .hung("hot", weight(example, stage))
            .found();
    assertPercent(example, stage, found.body("B1", "dressing_pct"));
  }
}
