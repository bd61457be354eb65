package gambrel.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How rows count, on a handful of them. */
class OracleRowsTest {
  private static final String HEADER =
      "scale,ticket,time,body,code,net,pieces,batch,customer,status";

  @TempDir Path folder;

  private TinyShop shop;

  @BeforeEach
  void open() {
    shop = new TinyShop(folder);
  }

  private void assertCounts(String used, String repeat, String voided, String aside) {
    var tables = shop.at("20T00:00");
    assertEquals(used, tables.cell("rows.csv", "used", "exports/a.csv"), "used");
    assertEquals(repeat, tables.cell("rows.csv", "repeat", "exports/a.csv"), "repeat");
    assertEquals(voided, tables.cell("rows.csv", "void", "exports/a.csv"), "void");
    assertEquals(aside, tables.cell("rows.csv", "set_aside", "exports/a.csv"), "set aside");
  }

  private void lines(String... lines) {
    shop.add("exports/a.csv", lines);
  }

  @Test
  void theSameContentInOtherDigitsIsARepeat() {
    lines("pack,7,2026-03-05T10:00:00,B1,pack rump,1.0");
    lines("pack,7,2026-03-05T10:00:00,B1,pack rump,1.00");
    assertCounts("1", "1", "0", "0");
  }

  @Test
  void otherContentUnderOneTicketSetsBothAside() {
    lines("pack,7,2026-03-05T10:00:00,B1,pack rump,1.0");
    lines("pack,7,2026-03-05T10:00:00,B1,pack rump,1.2");
    assertCounts("0", "0", "0", "2");
  }

  @Test
  void aTicketMayComeRoundAgainOnAnotherDay() {
    lines("pack,7,2026-03-05T10:00:00,B1,pack rump,1.0");
    lines("pack,7,2026-03-06T10:00:00,B1,pack rump,1.2");
    assertCounts("2", "0", "0", "0");
  }

  @Test
  void aVoidCancelsItsTicketWhateverStandsOnIt() {
    lines("pack,7,2026-03-05T10:00:00,B1,pack rump,1.0");
    lines("pack,7,2026-03-05T10:00:00,B1,pack rump,1.2");
    lines("pack,7,2026-03-05T10:05:00,,,,,,,void");
    assertCounts("0", "0", "3", "0");
  }

  @Test
  void aVoidThatNamesATicketCancelsTheNearestWeighingBeforeIt() {
    lines("pack,7,2026-03-04T10:00:00,B1,pack rump,1.0");
    lines("pack,7,2026-03-05T10:00:00,B1,pack rump,2.0");
    lines("pack,9,2026-03-06T10:00:00,,,,,,,void:7");
    lines("pack,7,2026-03-07T10:00:00,B1,pack rump,4.0");
    assertCounts("2", "0", "2", "0");
    assertEquals("5.000", shop.at("20T00:00").cell("bodies.csv", "take_home_kg", "B1"));
  }

  @Test
  void aVoidDatedLaterHasNoEffectYet() {
    lines("pack,7,2026-03-05T10:00:00,B1,pack rump,1.0");
    lines("pack,9,2026-03-21T10:00:00,,,,,,,void:7");
    assertCounts("2", "0", "0", "0");
  }

  @Test
  void aCorrectionThatVoidsOneOfTwoSettlesTheConflict() {
    lines("pack,7,2026-03-05T10:00:00,B1,pack rump,1.0");
    lines("pack,7,2026-03-05T10:00:00,B1,pack rump,1.2");
    shop.add("corrections.csv", "pack,exports/a.csv:2,status,void,2026-03-06,me,typo");
    assertCounts("1", "0", "1", "0");
    assertEquals("1.200", shop.at("20T00:00").cell("bodies.csv", "take_home_kg", "B1"));
  }

  @Test
  void theLatestCorrectionHasTheLastWord() {
    lines("pack,7,2026-03-05T10:00:00,B1,pack rump,1.0");
    shop.add(
        "corrections.csv",
        "pack,5-9,net,3.0,2026-03-08T09:00,me,typo",
        "pack,7,net,2.0,2026-03-07,me,typo");
    assertEquals("2.000", shop.at("08T08:00").cell("bodies.csv", "take_home_kg", "B1"));
    assertEquals("3.000", shop.at("09T00:00").cell("bodies.csv", "take_home_kg", "B1"));
  }

  @Test
  void aRowOfAnotherUnitIsConvertedExactlyAndKeptToFivePlaces() {
    shop.add("exports/b.csv", HEADER + ",unit");
    shop.add("exports/b.csv", "pack,7,2026-03-05T10:00:00,B1,pack rump,100,,,,,lb");
    // 45.359237 kept as 45.35924
    var tables = shop.at("20T00:00");
    assertEquals("45.359", tables.cell("bodies.csv", "take_home_kg", "B1"));
  }

  @Test
  void grossLessTareStandsWhereTheNetIsMissing() {
    shop.add("exports/b.csv", "scale,ticket,time,body,code,net,gross,tare");
    shop.add("exports/b.csv", "pack,1,2026-03-05T10:00:00,B1,pack rump,,10.5,0.5");
    shop.add("exports/b.csv", "pack,2,2026-03-05T10:00:00,B1,pack rump,10,10.5,0.48");
    var tables = shop.at("20T00:00");
    // 10.5 - 0.48 is two divisions from 10
    assertEquals("1", tables.cell("rows.csv", "set_aside", "exports/b.csv"));
    assertEquals("10.000", tables.cell("bodies.csv", "take_home_kg", "B1"));
  }

  @Test
  void aRowDatedLaterIsInNoConflictYet() {
    lines("pack,7,2026-03-19T10:00:00,B1,pack rump,1.0");
    lines("pack,7,2026-03-19T22:00:00,B1,pack rump,1.2");
    var before = shop.at("19T21:59");
    assertEquals("2", before.cell("rows.csv", "used", "exports/a.csv"));
    assertEquals("1.000", before.cell("bodies.csv", "take_home_kg", "B1"));
    assertCounts("0", "0", "0", "2");
  }

  @Test
  void aNetOfNothingIsSetAsideUnlessItIsATest() {
    lines("pack,7,2026-03-05T10:00:00,B1,pack rump,0");
    lines("pack,8,2026-03-05T10:00:00,,test20,0.00");
    assertCounts("1", "0", "0", "1");
  }

  @Test
  void withAnIdentityEqualRowsOfAFileCountAsOftenAsTheyStand() {
    shop.add("exports/wrap/layout.properties", "identity=time,body,code,net");
    for (var file : new String[] {"exports/wrap/a.csv", "exports/wrap/b.csv"}) {
      shop.add(file, HEADER);
      shop.add(file, "pack,1,2026-03-05T10:00,B1,pack rump,1.0");
      shop.add(file, "pack,2,2026-03-05T10:00,B1,pack rump,1.00");
    }
    shop.add("exports/wrap/b.csv", "pack,3,2026-03-05T10:00,B1,pack rump,1");
    assertEquals("3.000", shop.at("20T00:00").cell("bodies.csv", "take_home_kg", "B1"));

    shop.add("exports/wrap/a.csv", "pack,9,2026-03-05T10:00,B1,pack rump,1,,,,void");
    var tables = shop.at("20T00:00");
    assertEquals("2.000", tables.cell("bodies.csv", "take_home_kg", "B1"));
    assertEquals("2", tables.cell("rows.csv", "repeat", "exports/wrap/b.csv"));
    assertEquals("1", tables.cell("rows.csv", "used", "exports/wrap/b.csv"));
  }

  @Test
  void ofAnExportThatEndsInTheMiddleNothingIsUsedAndNothingGoesOut() throws IOException {
    shop.balanced();
    assertEquals(2, shop.at("20T00:00").table("statements.csv").size());

    Files.writeString(folder.resolve("exports/b.csv"), HEADER + "\npack,9,2026-03-05T10:00:00,B1");
    var tables = shop.at("20T00:00");
    assertEquals("issued", tables.cell("bodies.csv", "state", "B1"));
    assertEquals("1", tables.cell("rows.csv", "set_aside", "exports/b.csv"));
    assertEquals(1, tables.table("statements.csv").size());
  }
}
