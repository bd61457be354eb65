package gambrel.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The calculation on shops so small that every figure is worked out by hand beside it. */
class OracleTest {
  @TempDir Path folder;

  private TinyShop shop;

  @BeforeEach
  void open() {
    shop = new TinyShop(folder);
  }

  private static void assertBody(OracleTables tables, String column, String expected) {
    assertEquals(expected, tables.cell("bodies.csv", column, "B1"), column);
  }

  @Test
  void balancesABodyOnTheRailAndOnTheTable() {
    var tables = shop.balanced().at("06T00:00");

    assertBody(tables, "dressing_pct", "53.571"); // 300 / 560
    assertBody(tables, "chill_shrink_pct", "2.000"); // 6 / 300
    assertBody(tables, "take_home_kg", "200.000");
    assertBody(tables, "take_home_of_cold_pct", "68.027"); // 200 / 294
    assertBody(tables, "cutting_loss_kg", "6.000"); // 294 - 200 - 88
    assertBody(tables, "days_hung", "3");
    assertBody(tables, "hours_chilled", "24.000");
    assertBody(tables, "state", "issued"); // 6 is under 3 % of 294, 8.82
  }

  @Test
  void weighsTheLossAgainstResolutionAndPermittedErrors() {
    var tables = shop.balanced().at("06T00:00");

    // One weighing at 0.5, two at 0.01, two at 0.02: root of (0.25 + 0.0002 + 0.0008) / 3
    assertBody(tables, "balance_u_kg", "0.289");
    // Rail: 588 divisions, 2 x 0.5 = 1. Packs: 12000 and 8000, 3 x 0.01 each = 0.06.
    // Bins: 3000 and 1400, 3 x 0.02 + 2 x 0.02 = 0.10. Root of 1 + 0.0036 + 0.01
    assertBody(tables, "balance_scale_kg", "1.007");
  }

  @Test
  void aBodyIsOpenUntilItsQuietHoursArePast() {
    shop.balanced(); // last weighing at 10:30 on the fifth

    assertBody(shop.at("05T16:29"), "state", "open");
    assertBody(shop.at("05T16:30"), "state", "issued");
  }

  @Test
  void knowsNothingOfTheCuttingBeforeTheFirstEndProduct() {
    var tables = shop.balanced().at("04T00:00");

    assertBody(tables, "boning_kg", "294.000");
    assertBody(tables, "take_home_kg", "");
    assertBody(tables, "cutting_loss_kg", "");
  }

  @Test
  void aLossAboveTheLimitIsPartCutFirstAndHeldLater() {
    shop.row("rail", "02T10:00:00", "B1", "hot carcase", "300");
    shop.row("rail", "03T10:00:00", "B1", "cold carcase", "294");
    shop.row("pack", "05T10:00:00", "B1", "pack rump", "200"); // 94 are not there

    assertBody(shop.at("09T09:59"), "reasons", "part-cut");
    assertBody(shop.at("09T10:00"), "reasons", "loss-high");
  }

  @Test
  void everyDayOfHangingRaisesTheLimitOnceThereAreMoreThanTwo() {
    // 8.5 of 200 lost; U is 0.58: root of (0.25 + 0.0004) / 3 + 0.5 x 0.5 + 0.06 x 0.06
    shop.row("rail", "02T10:00:00", "B1", "hot carcase", "204");
    shop.row("rail", "03T10:00:00", "B1", "cold carcase", "200");
    shop.row("bench", "06T10:00:00", "B1", "pack rump", "191.5");
    assertBody(shop.at("20T00:00"), "state", "issued"); // three days: 3 % + 1.2 % of 200 = 8.4

    shop.row("bench", "05T10:00:00", "B1", "bin bone", "0.02");
    assertBody(shop.at("20T00:00"), "reasons", "loss-high"); // two days: 3 % of 200 = 6
  }

  @Test
  void quartersReplaceTheirSideOnlyWhenAllAreThere() {
    shop.row("rail", "02T10:00:00", "B1", "hot carcase", "300");
    shop.row("rail", "03T10:00:00", "B1", "cold left-side", "147");
    shop.row("rail", "03T10:01:00", "B1", "cold right-side", "146");
    shop.row("rail", "10T10:00:00", "B1", "aged left-hindquarter", "70");
    shop.row("rail", "10T10:01:00", "B1", "aged left-forequarter", "74");
    shop.row("rail", "10T10:02:00", "B1", "aged right-hindquarter", "69");
    var tables = shop.at("11T00:00");

    assertBody(tables, "cold_kg", "293.000");
    assertBody(tables, "boning_kg", "290.000"); // 70 + 74, and the right side's cold 146
    // the right hindquarter was aged too, and its cold weight is not known apart
    assertBody(tables, "ageing_shrink_pct", "");
  }

  @Test
  void ageingShrinkIsUnknownWhereTheColdWeightIsNotKnownApart() {
    shop.row("rail", "02T10:00:00", "B1", "hot carcase", "300");
    shop.row("rail", "03T10:00:00", "B1", "cold carcase", "294");
    shop.row("rail", "10T10:00:00", "B1", "aged left-side", "143");
    var tables = shop.at("11T00:00");

    assertBody(tables, "boning_kg", "294.000");
    assertBody(tables, "ageing_shrink_pct", "");
  }

  @Test
  void aSideAndItsQuartersWeighedColdCountOnce() {
    shop.row("rail", "02T10:00:00", "B1", "hot carcase", "300");
    shop.row("rail", "03T10:00:00", "B1", "cold side", "294", "2");
    shop.row("rail", "03T10:01:00", "B1", "cold hindquarter", "142", "2");
    shop.row("rail", "03T10:02:00", "B1", "cold forequarter", "151", "2");

    assertBody(shop.at("04T00:00"), "cold_kg", "293.000");
  }

  @Test
  void hotAndColdOfDifferentPartsHaveNoShrink() {
    shop.row("rail", "02T10:00:00", "B1", "hot carcase", "300");
    shop.row("rail", "03T10:00:00", "B1", "cold left-side", "147");
    shop.row("pack", "05T10:00:00", "B1", "pack rump", "147");
    var tables = shop.at("12T00:00");

    assertBody(tables, "chill_shrink_pct", "");
    assertBody(tables, "reasons", "parts-missing");
  }

  @Test
  void railTrimComesOutOfTheShrinkAndStaysOutOfTheCuttingLoss() {
    shop.balanced().row("bench", "02T12:00:00", "B1", "bin fat", "1.5");
    var tables = shop.at("06T00:00");

    assertBody(tables, "rail_trim_kg", "1.500");
    assertBody(tables, "chill_shrink_pct", "1.500"); // (300 - 294 - 1.5) / 300
    assertBody(tables, "cutting_loss_kg", "6.000");
    assertBody(tables, "fat_kg", "29.500");
    assertBody(tables, "days_hung", "3");
  }

  @Test
  void aWeighingBeyondThePartsNumberIsSetAsideAndHolds() {
    shop.balanced().row("rail", "03T11:00:00", "B1", "cold carcase", "293");
    var tables = shop.at("06T00:00");

    assertBody(tables, "cold_kg", "294.000");
    assertBody(tables, "reasons", "row-set-aside");
    assertEquals("1", tables.cell("rows.csv", "set_aside", "exports/a.csv"));
  }

  @Test
  void piecesAreUnknownWhereProductsLieOutsideThem() {
    shop.balanced().row("bench", "05T09:00:00", "B1", "block hindquarter", "141");
    assertEquals("", shop.at("06T00:00").cell("pieces.csv", "out_kg", "B1", "hindquarter"));

    shop.row("bench", "05T08:00:00", "B1", "block carcase", "293.5");
    var tables = shop.at("06T00:00");
    assertEquals("5.500", tables.cell("pieces.csv", "loss_kg", "B1", "carcase")); // 293.5 - 288
    assertEquals("21.000", tables.cell("pieces.csv", "loss_kg", "B1", "hindquarter")); // 141 - 120
  }

  @Test
  void aLoneQuarterOfABodyWeighedWholeHoldsIt() {
    shop.balanced().row("rail", "03T10:05:00", "B1", "cold hindquarter", "70");
    var tables = shop.at("06T00:00");

    assertBody(tables, "cold_kg", "294.000");
    assertBody(tables, "reasons", "rail-twice");
    assertEquals("7", tables.cell("rows.csv", "used", "exports/a.csv"));
  }

  @Test
  void oneForequarterAndOneHindquarterDoNotReplaceTwoSides() {
    shop.row("rail", "02T10:00:00", "B1", "hot side", "98");
    shop.row("rail", "02T10:01:00", "B1", "hot side", "98");
    shop.row("rail", "02T10:02:00", "B1", "hot hindquarter", "47");
    shop.row("rail", "02T10:03:00", "B1", "hot forequarter", "50");
    shop.row("rail", "03T10:00:00", "B1", "cold carcase", "192");
    shop.row("pack", "05T10:00:00", "B1", "pack rump", "190");
    var tables = shop.at("06T00:00");

    assertBody(tables, "hot_kg", "196.000");
    assertBody(tables, "reasons", "rail-twice");
  }

  @Test
  void aDuplicateOnAnAgedDayThatALaterDayReplacesHoldsNothing() {
    shop.row("rail", "02T10:00:00", "B1", "hot carcase", "300");
    shop.row("rail", "03T10:00:00", "B1", "cold carcase", "294");
    shop.row("rail", "08T10:00:00", "B1", "aged carcase", "291");
    shop.row("rail", "08T10:05:00", "B1", "aged carcase", "291");
    shop.row("rail", "12T10:00:00", "B1", "aged carcase", "288");
    shop.row("pack", "13T10:00:00", "B1", "pack rump", "286");
    var tables = shop.at("14T00:00");

    assertBody(tables, "state", "issued");
    assertBody(tables, "boning_kg", "288.000");
    assertEquals("6", tables.cell("rows.csv", "used", "exports/a.csv"));
  }

  @Test
  void whatIsCutWhileOtherPartsAgeIsAnOrdinaryEndProduct() {
    shop.row("rail", "02T10:00:00", "B1", "hot carcase", "300");
    shop.row("rail", "03T10:00:00", "B1", "cold hindquarter", "142", "2");
    shop.row("rail", "03T10:01:00", "B1", "cold forequarter", "152", "2");
    shop.row("pack", "05T10:00:00", "B1", "pack mince", "150");
    shop.row("pack", "05T10:10:00", "B1", "pack rump", "2");
    shop.row("rail", "10T10:00:00", "B1", "aged hindquarter", "137", "2");
    shop.row("pack", "10T11:00:00", "B1", "pack rump", "134");
    var tables = shop.at("12T00:00");

    assertBody(tables, "boning_kg", "289.000"); // 137 + 152
    assertBody(tables, "rail_trim_kg", "2.000"); // the rump, which lies under the hindquarter
    assertBody(tables, "ageing_shrink_pct", "2.113"); // (142 - 137 - 2) / 142
    assertBody(tables, "cutting_loss_kg", "5.000"); // 289 - 150 - 134
    assertBody(tables, "days_hung", "3");
  }

  @Test
  void farLessThanUsualIsPartCutFirstAndHeldLater() {
    shop.add("shop.properties", "bins=no");
    shop.row("rail", "02T10:00:00", "B1", "hot carcase", "300");
    shop.row("rail", "03T10:00:00", "B1", "cold carcase", "290");
    shop.row("pack", "05T10:00:00", "B1", "pack rump", "115.99"); // two fifths are 116

    assertBody(shop.at("09T09:59"), "reasons", "part-cut");
    assertBody(shop.at("09T10:00"), "reasons", "home-low");
    shop.row("pack", "05T10:00:00", "B1", "pack rump", "0.01");
    assertBody(shop.at("09T09:59"), "state", "issued");
  }

  @Test
  void theUsualShareIsTheMedianOfFiveOrMoreBodiesThatWereCutBefore() {
    shop.add("shop.properties", "bins=no");
    var shares = new String[] {"60", "62", "64", "66", "68"};
    for (int i = 0; i < 5; i++) {
      shop.add("bodies.csv", "A" + i + ",beef,2026-03-01,,bob");
      shop.row("rail", "01T10:00:00", "A" + i, "hot carcase", "101");
      shop.row("rail", "02T10:00:00", "A" + i, "cold carcase", "100");
      shop.row("pack", "03T10:00:00", "A" + i, "pack rump", shares[i]);
    }
    shop.row("rail", "02T10:00:00", "B1", "hot carcase", "101");
    shop.row("rail", "03T10:00:00", "B1", "cold carcase", "100");
    shop.row("pack", "07T10:00:00", "B1", "pack rump", "47.99"); // three quarters of 64 are 48

    assertBody(shop.at("11T10:00"), "reasons", "home-low");
    shop.row("pack", "07T09:59:59", "B1", "pack rump", "0.01");
    assertBody(shop.at("11T10:00"), "state", "issued");
  }

  @Test
  void aBodyLeftWholeSettlesQuietHoursAfterTheLastWeightThatTheShopTakes() {
    shop.add("bodies.csv", "W1,beef,2026-03-02,560,ann,whole");
    shop.row("rail", "02T10:00:00", "W1", "hot carcase", "300");
    assertEquals("open", shop.at("20T00:00").cell("bodies.csv", "state", "W1"));

    shop.row("rail", "03T10:00:00", "W1", "cold carcase", "294");
    var before = shop.at("03T15:59");
    assertEquals("open", before.cell("bodies.csv", "state", "W1"));
    assertEquals("", before.cell("bodies.csv", "take_home_kg", "W1"));
    var tables = shop.at("03T16:00");
    assertEquals("issued", tables.cell("bodies.csv", "state", "W1"));
    assertEquals("294.000", tables.cell("bodies.csv", "take_home_kg", "W1"));
    assertEquals("1", tables.cell("bodies.csv", "days_hung", "W1"));
    assertEquals("", tables.cell("bodies.csv", "meat_home_kg", "W1"));
    assertEquals("", tables.cell("bodies.csv", "cutting_loss_kg", "W1"));
  }

  @Test
  void aCondemnedBodyNeedsNoRailWeight() {
    shop.add("bodies.csv", "W1,beef,2026-03-02,560,ann,condemned");
    assertEquals("open", shop.at("03T05:59").cell("bodies.csv", "state", "W1"));
    var tables = shop.at("03T06:00"); // six hours after the day of the kill
    assertEquals("issued", tables.cell("bodies.csv", "state", "W1"));
    assertEquals("0.000", tables.cell("bodies.csv", "take_home_kg", "W1"));

    shop.row("rail", "04T10:00:00", "W1", "hot carcase", "300");
    assertEquals("open", shop.at("04T15:59").cell("bodies.csv", "state", "W1"));
    assertEquals("issued", shop.at("04T16:00").cell("bodies.csv", "state", "W1"));
  }
}
