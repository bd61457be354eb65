package gambrel.published;

import static gambrel.published.Published.assertPrinted;
import static java.math.RoundingMode.HALF_UP;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.scenes.Found;
import java.math.BigDecimal;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pork and lamb cut-outs of the United States, and primal shares. */
class PorkAndLambTest {
  private static final BigDecimal SEVENTY_FIVE = new BigDecimal("75");

  @TempDir Path folder;

  private Found hog() {
    return AmericanBeefTest.enter(
            new Cutout(folder, "lb", "pork", "250"), Published.table("pork_us_184lb_carcass"))
        .hung("hot", "184")
        .hung("cold", "184")
        .found();
  }

  private static String share(Found found, String item) {
    return found.cell("cuts", "of_boning_pct", "item=" + item, "step=block");
  }

  /** National Pork Producers Council, hog carcass breakdown (pork_us_184lb_carcass.txt). */
  @Test
  void aHundredAndEightyFourPoundPorkCarcass() {
    var found = hog();
    assertPrinted("73.6", found.body("B1", "dressing_pct"), "dressing");
    assertPrinted("140", found.body("B1", "take_home_lb"), "pork");
    for (var primal : Published.table("pork_us_184lb_carcass", "level", "primal")) {
      String item = Published.item(primal.get("cut"));
      if (!item.equals("miscellaneous")) {
        assertEquals("0.000", found.cell("pieces", "loss_lb", "item=" + item), item);
        assertPrinted(primal.get("printed_percent"), share(found, item), item);
      }
    }
    // "Shrink and miscellaneous loss" is what nobody weighs; skin, fat and bone include it.
    String loss = found.cell("pieces", "loss_lb", "item=miscellaneous");
    assertEquals("1.800", loss);
    assertPrinted(
        "44",
        new BigDecimal(found.body("B1", "waste_lb")).add(new BigDecimal(loss)).toPlainString(),
        "skin, fat and bone");
  }

  /** The same source prints 22 % where 39.2 of 184 lb are 21.3. */
  @Test
  void theHogsMiscellaneousIsPrintedTwentyTwoForTwentyOne() {
    var miscellaneous = Published.table("pork_us_184lb_carcass", "cut", "Miscellaneous").get(0);
    assertEquals("22", miscellaneous.get("printed_percent"));
    assertPrinted("21.3", share(hog(), "miscellaneous"), "miscellaneous");
    // So forced, the printed column adds up to 100.
    assertEquals(
        new BigDecimal("100"),
        Published.sum(
            Published.table("pork_us_184lb_carcass", "level", "primal"), "printed_percent"));
  }

  /**
   * Kansas State University, "Lamb Processing Options for Consumers": shares of the 75-lb hot
   * carcass, a cooler shrink of 3 % (lamb_us_kstate_75lb_cutout.txt). Pounds are rounded, so a
   * share comes back within its last digit.
   */
  @Test
  void aSeventyFivePoundLamb() {
    var table = Published.table("lamb_us_kstate_75lb_cutout", "section", "returned_meat");
    var cutout = new Cutout(folder, "lb", "lamb", "").hotOnly().hung("hot", "75");
    table.forEach(row -> cutout.pack("carcase", row.get("cut"), row.get("approx_lb")));
    var found = cutout.hung("cold", "72.75").found();
    assertEquals("3.000", found.body("B1", "chill_shrink_pct"));
    for (var row : table) {
      String weight =
          found.cell("cuts", "weight_lb", "item=" + Published.item(row.get("cut")), "level=own");
      var share = new BigDecimal(weight).movePointRight(2).divide(SEVENTY_FIVE, 3, HALF_UP);
      Published.assertWithinLastDigit(row.get("percent"), share.toPlainString(), row.get("cut"));
    }
  }

  /**
   * Kansas State University, primal shares of beef, pork and lamb carcasses
   * (kstate_primal_shares_beef_pork.txt): entered as pounds of a hundred, they close.
   */
  @ParameterizedTest
  @ValueSource(strings = {"beef", "pork"})
  void primalSharesOfACarcass(String species) {
    var table = Published.table("kstate_primal_shares_beef_pork", "species", species);
    var cutout = new Cutout(folder, "lb", species, "").hung("cold", "100");
    for (var row : table) {
      cutout
          .piece(row.get("primal"), row.get("printed_percent_of_carcass"))
          .pack(row.get("primal"), "all", row.get("printed_percent_of_carcass"));
    }
    var found = cutout.found();
    assertEquals("0.000", found.body("B1", "cutting_loss_lb"));
    for (var row : table) {
      String item = Published.item(row.get("primal"));
      assertPrinted(row.get("printed_percent_of_carcass"), share(found, item), item);
      assertEquals("0.000", found.cell("pieces", "loss_lb", "item=" + item), item);
    }
  }

  /** The shares of the same lamb's primals, from the same source. */
  @Test
  void primalSharesOfALamb() {
    var table = Published.table("lamb_us_kstate_75lb_cutout", "section", "primal_share");
    var cutout = new Cutout(folder, "lb", "lamb", "").hung("cold", "100");
    table.forEach(row -> cutout.pack("carcase", row.get("cut"), row.get("percent")));
    var found = cutout.found();
    assertEquals("0.000", found.body("B1", "cutting_loss_lb"));
    assertEquals("100.000", found.body("B1", "take_home_of_cold_pct"));
  }
}
