package gambrel.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.scenes.Found;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Boning balances of trials, per cent entered as kilograms of a hundred. */
class BoningBalancesTest {
  private static final String AGEING = "beef_dry_vs_wet_ageing_subprimal";

  /** Rows of the ageing table whose printed saleable yield is more than that of its parts. */
  private static final List<String> OPEN =
      List.of(
          "strip wet 28",
          "strip wet 35",
          "top sirloin dry 14",
          "top sirloin dry 21",
          "top sirloin dry 35",
          "top sirloin wet 14",
          "top sirloin wet 21",
          "top sirloin wet 35");

  @TempDir Path folder;

  static List<Map<String, String>> groups() {
    return Published.table("beef_br_boning_mass_balance_percent");
  }

  private Found boned(Map<String, String> group) {
    return new Cutout(folder, "kg", "beef", "")
        .hung("cold", "100")
        .pack("carcase", "Prepared cuts", group.get("prepared_cuts_pct"))
        .pack("carcase", "Trimmings", group.get("trimmings_pct"))
        .bin("carcase", "Bones", group.get("bone_pct"))
        .found();
  }

  /**
   * Revista Brasileira de Zootecnia 38(11) 2009 and 39(6) 2010, abstract values
   * (beef_br_boning_mass_balance_percent.txt): what the balance leaves is the printed deboning
   * loss. The first two groups are means that add up to 100.08 and 99.93.
   */
  @ParameterizedTest
  @MethodSource("groups")
  void whatTheBalanceLeavesIsTheDeboningLoss(Map<String, String> group) {
    var found = boned(group);
    boolean closes = group.get("group").contains("22 mo");
    var off =
        Published.difference(group.get("deboning_loss_pct"), found.body("B1", "cutting_loss_kg"));
    assertTrue(off.compareTo(new BigDecimal(closes ? "0" : "0.1")) <= 0, () -> "off by " + off);
  }

  /** Quarters and flank cut of the first group are all of its side; the second's are not. */
  @Test
  void quartersAndFlankMakeTheSide() {
    assertEquals("0.000", brokenDown(groups().get(0)).body("B1", "cutting_loss_kg"));
    assertEquals("0.500", brokenDown(groups().get(1)).body("B1", "cutting_loss_kg"));
  }

  private Found brokenDown(Map<String, String> group) {
    return new Cutout(folder, "kg", "beef", "")
        .hung("cold", "100")
        .pack("carcase", "Forequarters", group.get("forequarter_pct"))
        .pack("carcase", "Hindquarters", group.get("hindquarter_pct"))
        .pack("carcase", "Side flank cut", group.get("side_flank_cut_pct"))
        .found();
  }

  static IntStream agedRows() {
    return IntStream.range(0, Published.table(AGEING).size());
  }

  /**
   * "Dry aging of beef; Review", Journal of Animal Science and Technology 58:20 (2016), table 1
   * (beef_dry_vs_wet_ageing_subprimal.txt): saleable yield of a subprimal is its steaks, stew and
   * lean trim. Each of the three and their sum are rounded to a tenth.
   */
  @ParameterizedTest
  @MethodSource("agedRows")
  void saleableYieldOfAnAgedSubprimal(int index) {
    var row = Published.table(AGEING).get(index);
    var cutout = new Cutout(folder, "kg", "beef", "").piece("Subprimal", "100");
    for (String part : List.of("main_steaks_pct", "stew_pct", "lean_trim_pct")) {
      if (!row.get(part).isEmpty()) {
        cutout.pack("Subprimal", part, row.get(part));
      }
    }
    var off =
        Published.difference(
            row.get("printed_saleable_pct"), cutout.found().body("B1", "take_home_kg"));
    String name = row.get("subprimal") + ' ' + row.get("method") + ' ' + row.get("days");
    boolean closes = off.compareTo(new BigDecimal("0.2")) <= 0;
    assertEquals(!OPEN.contains(name), closes, () -> name + " is off by " + off);
  }
}
