package gambrel.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Division among owners, batches, charges, releases and test weights, by hand. */
class OracleMoneyTest {
  @TempDir Path folder;

  private TinyShop shop;

  @BeforeEach
  void open() {
    shop = new TinyShop(folder).balanced();
  }

  private void thirds() {
    shop.add("shares.csv", "B1,ann,1/3", "B1,bob,1/3", "B1,cat,1 of 3");
  }

  private static String statement(OracleTables tables, String column, String customer) {
    return tables.cell("statements.csv", column, customer, "B1");
  }

  @Test
  void eachItemIsDividedOnItsOwnByLargestRemainder() {
    thirds();
    var tables = shop.at("06T00:00");

    // Rump 120.000 in three of 40.000; mince 80.000 as 26.667, 26.667, 26.666
    assertEquals("66.667", statement(tables, "take_home_kg", "ann"));
    assertEquals("66.667", statement(tables, "take_home_kg", "bob"));
    assertEquals("66.666", statement(tables, "take_home_kg", "cat"));
  }

  @Test
  void anOutrightPackBelongsToItsCustomerAlone() {
    shop.row("pack", "05T10:40:00", "B1", "pack rump", "1.5", "", "", "bob");
    var tables = shop.at("06T00:00");

    assertEquals("200.000", statement(tables, "take_home_kg", "ann"));
    assertEquals("1.500", statement(tables, "take_home_kg", "bob"));
  }

  @Test
  void aChargeIsComputedForTheBodyAndDivided() {
    thirds();
    shop.add("charges.csv", "cut,Cut,cold,0.5,10", "box,Box,share,3,");
    var tables = shop.at("06T00:00");

    // 294 x 0.5 = 147.00 in three of 49.00; tax 14.70 in three of 4.90; a box of 3.00 for each
    assertEquals("52.00", statement(tables, "charges", "ann"));
    assertEquals("4.90", statement(tables, "tax", "cat"));
    assertEquals("56.90", statement(tables, "due", "bob"));
  }

  @Test
  void taxIncludedComesOutOfTheCharge() {
    shop.add("shop.properties", "tax_included=yes");
    shop.add("charges.csv", "kill,Kill,head,100,10");
    var tables = shop.at("06T00:00");

    assertEquals("90.91", statement(tables, "charges", "ann")); // 100 x 10 / 110 = 9.09
    assertEquals("9.09", statement(tables, "tax", "ann"));
    assertEquals("100.00", statement(tables, "due", "ann"));
  }

  @Test
  void freeComesOffBeforeTheMinimumAndACreditRoundsAwayFromZero() {
    shop.add("charges.csv", "m,Mince,packed,1,,100,10,mince", "h,Hide,pack,-0.125,,1,9,");
    var tables = shop.at("06T00:00");

    // 80 less 10 is 70, at least 100; two packs less 9 are none, at least 1: -0.125 is -0.13
    assertEquals("99.87", statement(tables, "charges", "ann"));
  }

  @Test
  void aBatchGivesBackItsMeatInProportion() {
    shop.add("bodies.csv", "B2,beef,2026-03-02,560,bob");
    shop.row("bench", "05T10:50:00", "B1", "tub trim", "10", "", "S1");
    shop.row("bench", "05T10:51:00", "B2", "tub trim", "5", "", "S1");
    shop.row("bench", "05T10:52:00", "", "added trim", "3", "", "S1");
    shop.row("pack", "05T11:00:00", "", "pack mince", "17", "", "S1");
    var tables = shop.at("06T00:00");

    // 17 x 15 / 18 = 14.1666... -> 14.167, of it two thirds: 9.4446... and 4.7223...
    assertEquals("0.555", tables.cell("bodies.csv", "batch_loss_kg", "B1")); // 10 - 9.445
    assertEquals("209.445", tables.cell("bodies.csv", "take_home_kg", "B1"));
    assertEquals("5.556", tables.cell("batches.csv", "loss_pct", "S1")); // 1 / 18
    assertEquals("balanced", tables.cell("batches.csv", "state", "S1"));
  }

  @Test
  void waterTakenUpCountsAsAdded() {
    shop.add("batches.csv", "S1,Corned,yes,");
    shop.row("bench", "05T10:50:00", "B1", "tub trim", "10", "", "S1");
    shop.row("pack", "05T11:00:00", "", "pack mince", "11", "", "S1");
    var tables = shop.at("06T00:00");

    assertEquals("1.000", tables.cell("batches.csv", "added_kg", "S1"));
    assertEquals("0.000", tables.cell("bodies.csv", "batch_loss_kg", "B1")); // 11 x 10 / 11
  }

  @Test
  void aReleaseCoversOnlyWhatHeldWhenItWasGiven() {
    shop.row("pack", "05T10:40:00", "B1", "no such code", "1");
    shop.add("releases.csv", "B1,me,2026-03-07T08:00,known,release");
    assertEquals("issued", shop.at("07T09:00").cell("bodies.csv", "state", "B1"));

    shop.row("pack", "08T10:00:00", "B1", "no such code", "1");
    assertEquals("row-set-aside", shop.at("09T09:00").cell("bodies.csv", "reasons", "B1"));
  }

  @Test
  void aFailedTestHoldsWhatWasWeighedSinceTheLastGoodOne() {
    // In service 2 divisions of 0.01 at 2000 divisions
    shop.row("pack", "05T10:05:00", "", "test20", "20.02");
    shop.row("pack", "05T18:00:00", "", "test20", "20.03");
    assertEquals("scale-failed", shop.at("06T06:00").cell("bodies.csv", "reasons", "B1"));

    shop.row("pack", "05T10:15:00", "", "test20", "20.02");
    assertEquals("", shop.at("06T06:00").cell("bodies.csv", "reasons", "B1"));
  }

  @Test
  void aCloseOfABodyOfWhichNothingWasCutHasNoEffect() {
    shop.add("releases.csv", "B1,me,2026-03-04T08:00,gone,close");
    assertEquals("open", shop.at("04T09:00").cell("bodies.csv", "state", "B1"));
  }

  @Test
  void aWeighingAfterACloseOpensTheBodyAgain() {
    shop.add("releases.csv", "B1,me,2026-03-05T11:00,done,close");
    assertEquals("issued", shop.at("05T12:00").cell("bodies.csv", "state", "B1"));

    shop.row("pack", "05T11:30:00", "B1", "pack rump", "1");
    assertEquals("open", shop.at("05T12:00").cell("bodies.csv", "state", "B1"));
  }

  @Test
  void aFailedTestHoldsTheBodiesOfABatchThatWasWeighedOnTheScale() {
    shop.add("scales.csv", "mill,0.01,III");
    shop.row("bench", "05T10:50:00", "B1", "tub trim", "1", "", "S1");
    shop.row("mill", "05T11:00:00", "", "pack mince", "1", "", "S1");
    assertEquals("", shop.at("06T06:00").cell("bodies.csv", "reasons", "B1"));

    shop.row("mill", "05T18:00:00", "", "test20", "20.03");
    assertEquals("scale-failed", shop.at("06T06:00").cell("bodies.csv", "reasons", "B1"));
  }

  @Test
  void aRowSetAsideThatNamesABatchHoldsItsBodies() {
    shop.row("bench", "05T10:50:00", "B1", "tub trim", "1", "", "S1");
    shop.row("pack", "05T11:00:00", "", "pack mince", "1", "", "S1");
    assertEquals("issued", shop.at("06T06:00").cell("bodies.csv", "state", "B1"));

    shop.row("bench", "05T11:01:00", "", "added nothing", "3", "", "S1");
    assertEquals("row-set-aside", shop.at("06T06:00").cell("bodies.csv", "reasons", "B1"));
  }

  @Test
  void aMinimumIsNotAskedOfNothing() {
    shop.add("charges.csv", "mix,Mix,tub,2,,5,,", "wrap,Wrap,pack,1,,,,liver");
    assertEquals("0.00", statement(shop.at("06T00:00"), "charges", "ann"));
  }

  private static String state(OracleTables tables, String body) {
    return tables.cell("bodies.csv", "state", body);
  }

  @Test
  void aChargeThatCannotBeReadHoldsTheBodiesThatItCouldBeFor() {
    shop.add("charges.csv", "kill,Kill,head,1.5O");
    assertEquals("row-unread", shop.at("06T00:00").cell("bodies.csv", "reasons", "B1"));
    assertEquals("open", state(shop.at("05T12:00"), "B1"));
  }

  @Test
  void aPaymentThatCannotBeReadHoldsWhomItNames() {
    shop.add("payments.csv", "customer,body,date,amount");
    shop.add("payments.csv", "bob,,2026-03-05,1O", "ann,,2026-03-08,1O");
    assertEquals("issued", state(shop.at("06T00:00"), "B1"));
    assertEquals("held", state(shop.at("08T00:00"), "B1"));
  }

  @Test
  void aCorrectionThatCannotBeReadHoldsTheBodiesOfTheRowsThatItNames() {
    shop.add("corrections.csv", "pack,99,net,1,2026-06-31,me,typo");
    assertEquals("issued", state(shop.at("06T00:00"), "B1"));

    shop.add("corrections.csv", "pack,3,net,1,2026-06-31,me,typo");
    assertEquals("held", state(shop.at("06T00:00"), "B1"));
  }

  @Test
  void aColumnThatIsPerhapsMistypedStopsAllStatements() {
    shop.add("payments.csv", "customer,body,date,amount,noet");
    var tables = shop.at("06T00:00");
    assertEquals("issued", state(tables, "B1"));
    assertEquals(1, tables.table("statements.csv").size());
  }

  @Test
  void aColumnThatResemblesNoneIsPassedOver() {
    shop.add("payments.csv", "Customer,body,da-te,AMOUNT,too,zebra");
    assertEquals(2, shop.at("06T00:00").table("statements.csv").size());
  }
}
