package gambrel.published;

import static gambrel.published.Published.assertPrinted;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.scenes.Found;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Beef cut-out tables of the United States, in pounds. */
class AmericanBeefTest {
  @TempDir Path folder;

  /** Enters the primals of a table on the block and their cuts as packs and bins. */
  static Cutout enter(Cutout cutout, List<Map<String, String>> table) {
    for (var row : table) {
      switch (row.get("level")) {
        case "primal" -> cutout.piece(row.get("cut"), row.get("weight"));
        case "cut" -> cutout.pack(row.get("parent"), row.get("cut"), row.get("weight"));
        case "waste" -> cutout.bin(row.get("parent"), row.get("cut"), row.get("weight"));
        default -> {}
      }
    }
    return cutout;
  }

  private static String share(Found found, String item) {
    return found.cell("cuts", "of_boning_pct", "item=" + item, "step=block");
  }

  /**
   * US beef-industry retail-cut table of an 1,150-lb steer (beef_us_1150lb_steer_retail.txt). The
   * two rows of "Miscellaneous", 4.9 and 27.8 lb, are from memory.
   */
  @Test
  void anElevenHundredAndFiftyPoundSteer() {
    var table = Published.table("beef_us_1150lb_steer_retail");
    var found =
        enter(new Cutout(folder, "lb", "beef", "1150"), table)
            .hung("hot", "715")
            .hung("cold", "715")
            .found();
    assertPrinted("62.2", found.body("B1", "dressing_pct"), "dressing");
    assertPrinted("569", found.body("B1", "take_home_lb"), "retail cuts");
    assertPrinted("146", found.body("B1", "waste_lb"), "fat, bone and loss");
    var primals = Published.table("beef_us_1150lb_steer_retail", "level", "primal");
    assertEquals(6, primals.size());
    for (var primal : primals) {
      String item = Published.item(primal.get("cut"));
      assertEquals("0.000", found.cell("pieces", "loss_lb", "item=" + item), item);
      assertPrinted(
          primal.get("printed_percent_of_carcass"), share(found, item), primal.get("cut"));
    }
    // The primals are printed to a tenth and add up to 714.9.
    assertEquals("0.100", found.body("B1", "cutting_loss_lb"));
  }

  /**
   * US beef checkoff, primal and subprimal weights of a 1,300-lb steer
   * (beef_us_1300lb_steer_chuck_rib.txt); only chuck and rib were retrieved.
   */
  @Test
  void chuckAndRibOfAThirteenHundredPoundSteer() {
    var table = Published.table("beef_us_1300lb_steer_chuck_rib");
    var found =
        enter(new Cutout(folder, "lb", "beef", "1300"), table)
            .hung("hot", "806")
            .hung("cold", "806")
            .found();
    assertPrinted("62", found.body("B1", "dressing_pct"), "dressing");
    for (String primal : List.of("chuck", "rib")) {
      assertEquals("0.000", found.cell("pieces", "loss_lb", "item=" + primal), primal);
    }
    assertPrinted("29", share(found, "chuck"), "chuck");
    assertPrinted("9", share(found, "rib"), "rib");
    // Retail cuts are the primals less fat and bone.
    assertEquals("198.700", retail(found, "chuck", "35.0"));
    assertEquals("63.200", retail(found, "rib", "9.3"));
  }

  private static String retail(Found found, String primal, String waste) {
    return new BigDecimal(found.cell("cuts", "weight_lb", "item=" + primal, "level=total"))
        .subtract(new BigDecimal(waste))
        .toPlainString();
  }

  /** The same source: 639 lb of retail cuts, 62 % roasts and steaks, 38 % ground and stew meat. */
  @Test
  void retailCutsOfAThirteenHundredPoundSteer() {
    var found =
        new Cutout(folder, "lb", "beef", "1300")
            .hung("cold", "806")
            .pack("carcase", "Roasts and steaks", "396")
            .pack("carcase", "Ground beef and stew meat", "243")
            .found();
    assertEquals("639.000", found.body("B1", "take_home_lb"));
    // "21 % bone, fat and connective tissue"
    assertPrinted(
        "21",
        new BigDecimal("100")
            .subtract(new BigDecimal(found.body("B1", "take_home_of_cold_pct")))
            .toPlainString(),
        "waste");
    var ofRetail =
        new Cutout(folder, "lb", "beef", "")
            .piece("Retail cuts", "639")
            .pack("Retail cuts", "Roasts and steaks", "396")
            .pack("Retail cuts", "Ground beef and stew meat", "243")
            .found();
    assertPrinted("62", total(ofRetail, "retail-cuts-roasts-and-steaks"), "roasts and steaks");
    assertPrinted("38", total(ofRetail, "retail-cuts-ground-beef-and-stew-meat"), "ground");
  }

  private static String total(Found found, String item) {
    return found.cell("cuts", "of_boning_pct", "item=" + item, "level=total");
  }

  /** Indiana State Board of Animal Health, 1,000-lb steer (beef_us_indiana_1000lb.txt). */
  @Test
  void indianasThousandPoundSteer() {
    var cutout = new Cutout(folder, "lb", "beef", "1000").hung("hot", "590").hung("cold", "590");
    Published.table("beef_us_indiana_1000lb", "level", "cut")
        .forEach(row -> cutout.pack("carcase", row.get("cut"), row.get("weight_low")));
    var found = cutout.bin("carcase", "Bones, fat, waste and shrink", "125").found();
    assertEquals("465.000", found.body("B1", "take_home_lb"));
    assertEquals("125.000", found.body("B1", "waste_lb"));
    assertEquals("0.000", found.body("B1", "cutting_loss_lb"));
  }

  /**
   * The same source prints wholesale weights as ranges: the printed percentage lies between those
   * of the two ends, but for the chuck. It is printed 6 %; its 148 to 158 lb are 25 to 27, and with
   * 26 the column adds up to the 100 that is printed under it.
   */
  @Test
  void indianasChuckIsPrintedSixForTwentySix() {
    var low = wholesale("weight_low");
    var high = wholesale("weight_high");
    var table = Published.table("beef_us_indiana_1000lb", "level", "wholesale");
    for (var row : table) {
      String item = Published.item(row.get("cut"));
      var printed = new BigDecimal(row.get("printed_percent"));
      boolean erratum = item.equals("chuck-or-shoulder");
      boolean between =
          Published.toDigitsOf("0", share(low, item)).compareTo(printed) <= 0
              && Published.toDigitsOf("0", share(high, item)).compareTo(printed) >= 0;
      assertEquals(!erratum, between, item);
    }
    assertPrinted("25", share(low, "chuck-or-shoulder"), "chuck");
    assertPrinted("27", share(high, "chuck-or-shoulder"), "chuck");
    assertEquals(new BigDecimal("80"), Published.sum(table, "printed_percent"));
  }

  private Found wholesale(String end) {
    var cutout = new Cutout(folder.resolve(end), "lb", "beef", "1000").hung("cold", "590");
    Published.table("beef_us_indiana_1000lb", "level", "wholesale")
        .forEach(row -> cutout.piece(row.get("cut"), row.get(end)));
    return cutout.found();
  }

  /** Oklahoma Department of Agriculture, "How Much Meat?" (beef_us_oklahoma_1000lb.txt). */
  @Test
  void oklahomasThousandPoundSteer() {
    var table = Published.table("beef_us_oklahoma_1000lb", "level", "primal");
    var cutout =
        new Cutout(folder.resolve("rail"), "lb", "beef", "1000").hotOnly().hung("hot", "610");
    table.forEach(row -> cutout.pack("carcase", row.get("cut"), row.get("weight")));
    var found = cutout.found();
    assertPrinted("61", found.body("B1", "dressing_pct"), "on the rail");
    assertEquals("430.000", found.body("B1", "take_home_lb"));
    // "A further 18 %" of live is lost after the rail.
    assertEquals("180.000", found.body("B1", "cutting_loss_lb"));
  }

  /** Its percentages are of the 430 lb of retail cuts. */
  @Test
  void oklahomasSharesOfTheRetailCuts() {
    var table = Published.table("beef_us_oklahoma_1000lb", "level", "primal");
    var cutout = new Cutout(folder, "lb", "beef", "").piece("Retail", "430");
    table.forEach(row -> cutout.pack("Retail", row.get("cut"), row.get("weight")));
    var found = cutout.found();
    for (var row : table) {
      assertPrinted(
          row.get("printed_percent"),
          total(found, Cutout.id("Retail", row.get("cut"))),
          row.get("cut"));
    }
    assertEquals("0.000", found.cell("pieces", "loss_lb"));
    assertEquals(10, table.size());
  }
}
