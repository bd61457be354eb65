package gambrel.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Numbers, charge lines, accounts and what is not finished, by hand. */
class OracleAccountsTest {
  @TempDir Path folder;

  private TinyShop shop;

  @BeforeEach
  void open() {
    shop = new TinyShop(folder).balanced();
    shop.add("payments.csv", "customer,body,date,amount");
  }

  /** Ann's second body, three days after the first. */
  private void second() {
    shop.add("bodies.csv", "B2,beef,2026-03-05,560,ann");
    shop.row("rail", "05T11:00:00", "B2", "hot carcase", "300");
    shop.row("rail", "06T10:00:00", "B2", "cold carcase", "294");
    shop.row("pack", "08T10:00:00", "B2", "pack rump", "290");
  }

  private OracleTables oneAfterTheOther(String... dayTimes) {
    return ExactNight.register(List.of(dayTimes).stream().map(shop::exactlyAt).toList());
  }

  @Test
  void numbersGoOnFromNightToNight() {
    second();
    shop.add("shop.properties", "number_from=70");
    shop.add("shares.csv", "B1,bob,1/2", "B1,ann,1/2");
    var tables = oneAfterTheOther("06T00:00", "09T00:00");

    assertEquals("70", tables.cell("statements.csv", "number", "ann", "B1"));
    assertEquals("71", tables.cell("statements.csv", "number", "bob", "B1"));
    assertEquals("72", tables.cell("statements.csv", "number", "ann", "B2"));
  }

  @Test
  void aLineHasTheQuantityAsChargedAndTheCustomersPartOfTheAmount() {
    shop.add("shares.csv", "B1,ann,1/3", "B1,bob,1/3", "B1,cat,1 of 3");
    shop.add("charges.csv", "m,Mince,packed,1,10,,10,mince", "h,Hide,head,-0.50", "w,Wrap,pack,0");
    var tables = shop.at("06T00:00");

    // 80 less 10 is 70, in thirds 23.34 and twice 23.33; its tax is 7.00, in thirds 2.34 and 2.33
    assertEquals("70.000", tables.cell("charges.csv", "quantity", "1", "ann", "B1"));
    assertEquals("kg", tables.cell("charges.csv", "unit", "1", "ann", "B1"));
    assertEquals("23.34", tables.cell("charges.csv", "amount", "1", "ann", "B1"));
    assertEquals("2.33", tables.cell("charges.csv", "tax", "3", "cat", "B1"));
    // 0.50 in thirds: 0.17, 0.17, 0.16, negated
    var hide = tables.table("charges.csv").get(2).subList(5, 13);
    assertEquals(List.of("h", "Hide", "1", "head", "-0.50", "-0.17", "0", "0.00"), hide);
    assertEquals(7, tables.table("charges.csv").size());
  }

  @Test
  void aRevisionReplacesTheLinesOfTheStatementBeforeIt() {
    shop.add("charges.csv", "m,Mince,packed,1");
    var first = shop.exactlyAt("06T00:00");
    shop.row("pack", "06T10:00:00", "B1", "pack rump", "1");
    var tables = ExactNight.register(List.of(first, shop.exactlyAt("07T00:00")));

    assertEquals("201.00", tables.cell("charges.csv", "amount", "2", "ann", "B1", "2"));
    assertEquals(2, tables.table("charges.csv").size());
    assertEquals("201.00", tables.cell("accounts.csv", "charges", "ann"));
    assertEquals("2026-03-06", tables.cell("accounts.csv", "oldest", "ann"));
  }

  @Test
  void whatIsSpareGoesToTheOldestStatement() {
    second();
    shop.add("charges.csv", "kill,Kill,head,100");
    shop.add("payments.csv", "ann,B2,2026-03-08,60", "ann,,2026-03-08,99", "bob,,2026-03-08,5");
    var tables = oneAfterTheOther("06T00:00", "09T00:00");

    // 200 - 60 - 99; of the first statement 1 is left, of the second 40
    assertEquals("41.00", tables.cell("accounts.csv", "due", "ann"));
    assertEquals("2026-03-06", tables.cell("accounts.csv", "oldest", "ann"));
    assertEquals("-5.00", tables.cell("accounts.csv", "due", "bob"));
    assertEquals("", tables.cell("accounts.csv", "oldest", "bob"));

    shop.add("payments.csv", "ann,,2026-03-10,1");
    tables = oneAfterTheOther("06T00:00", "09T00:00", "10T00:00");
    assertEquals("40.00", tables.cell("accounts.csv", "due", "ann"));
    assertEquals("2026-03-09", tables.cell("accounts.csv", "oldest", "ann"));
  }

  @Test
  void whatIsPaidTooMuchForOneStatementPaysAnother() {
    second();
    shop.add("charges.csv", "kill,Kill,head,100");
    shop.add("payments.csv", "ann,B2,2026-03-08,200");
    var tables = oneAfterTheOther("06T00:00", "09T00:00");

    assertEquals("0.00", tables.cell("accounts.csv", "due", "ann"));
    assertEquals("", tables.cell("accounts.csv", "oldest", "ann"));
  }

  @Test
  void aBodyThatIsNotFinishedHasItsRailWeightAndWhatWasCut() {
    var hanging = shop.at("02T23:00");
    assertEquals("300.000", hanging.cell("rail.csv", "standing_kg", "B1"));
    assertEquals("0", hanging.cell("rail.csv", "days", "B1"));
    assertEquals("0.000", hanging.cell("rail.csv", "cut_kg", "B1"));

    shop.row("pack", "05T10:05:00", "B1", "pack liver", "9");
    var cutting = shop.at("05T10:10");
    assertEquals("294.000", cutting.cell("rail.csv", "standing_kg", "B1"));
    assertEquals("200.000", cutting.cell("rail.csv", "cut_kg", "B1"));
    assertEquals("3", cutting.cell("rail.csv", "days", "B1"));
    assertEquals("open", cutting.cell("rail.csv", "state", "B1"));

    assertEquals(1, shop.at("06T00:00").table("rail.csv").size());
  }

  @Test
  void aHeldBodySaysWhyAndWhenItsOpenBatchesAreDue() {
    shop.add("shares.csv", "B1,bob,1/2", "B1,ann,1/4");
    shop.add("batches.csv", "S1,Salami,,2026-03-20", "S2,Ham,,2026-03-28", "S3,Pie,,2026-04-02");
    shop.row("bench", "05T10:50:00", "B1", "tub trim", "1", "", "S1");
    shop.row("bench", "05T10:51:00", "B1", "tub trim", "1", "", "S2");
    shop.row("bench", "05T10:52:00", "B1", "tub trim", "1", "", "S3");
    shop.row("pack", "05T11:00:00", "", "pack mince", "1", "", "S3");
    var tables = shop.at("06T00:00");

    assertEquals("ann;bob", tables.cell("rail.csv", "customer", "B1"));
    assertEquals("held", tables.cell("rail.csv", "state", "B1"));
    assertEquals("shares", tables.cell("rail.csv", "reason", "B1"));
    assertEquals("2026-03-28", tables.cell("rail.csv", "due", "B1"));
  }

  @Test
  void aBodyThatIsNeitherKilledNorWeighedIsNotThere() {
    shop.add("bodies.csv", "B2,beef,2026-03-07,560,ann", "B3,beef,,560,ann");
    var tables = shop.at("06T23:59");
    assertThrows(AssertionError.class, () -> tables.cell("rail.csv", "days", "B2"));
    assertThrows(AssertionError.class, () -> tables.cell("rail.csv", "days", "B3"));
    assertEquals("0", shop.at("07T00:00").cell("rail.csv", "days", "B2"));
  }

  @Test
  void aPaymentThatCannotBeReadHoldsNothingThatHasGoneOut() {
    shop.add("payments.csv", "ann,,2026-03-08,1O");
    var tables = oneAfterTheOther("06T00:00", "09T00:00");
    assertEquals(1, tables.table("rail.csv").size());
    assertEquals("held", shop.at("09T00:00").cell("rail.csv", "state", "B1"));
  }

  @Test
  void moneyGivenBackIsOwedForTheStatementThatIsNotPaid() {
    second();
    shop.add("charges.csv", "kill,Kill,head,100");
    shop.add("payments.csv", "ann,B1,2026-03-07,100", "ann,,2026-03-08,-5");
    var tables = oneAfterTheOther("06T00:00", "09T00:00");

    assertEquals("105.00", tables.cell("accounts.csv", "due", "ann"));
    assertEquals("2026-03-09", tables.cell("accounts.csv", "oldest", "ann"));
  }

  @Test
  void aReleaseCoversTheTestsThatHadFailedWhenItWasGiven() {
    shop.row("pack", "05T10:05:00", "", "test20", "20.03");
    shop.row("pack", "05T10:30:00", "", "test20", "20.00");
    shop.add("releases.csv", "B1,me,2026-03-06T08:00,known,release");
    assertEquals("issued", shop.at("06T09:00").cell("bodies.csv", "state", "B1"));

    shop.row("pack", "06T10:00:00", "B1", "pack rump", "1");
    shop.row("pack", "06T11:00:00", "", "test20", "20.03");
    assertEquals("scale-failed", shop.at("07T09:00").cell("bodies.csv", "reasons", "B1"));
  }
}
