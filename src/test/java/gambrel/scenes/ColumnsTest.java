package gambrel.scenes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Names of columns and settings that are mistyped, written in another way, or not known. */
class ColumnsTest extends SceneTest {
  @BeforeEach
  void oneBody() {
    scene.simpleBody();
  }

  private static void assertStopped(Found found, String code) {
    assertEquals("stop", found.notice(code, "severity"));
    assertEquals("issued", found.state("B1"));
    assertEquals(0, found.rows("statements").size());
    assertEquals(1, found.exit());
  }

  @ParameterizedTest
  @CsvSource({
    "charges.csv, 'charge,description,basis,price,specis'",
    "charges.csv, 'charge,description,basis,price,taxpercnt'",
    "charges.csv, 'charge,description,basis,price,fre'",
    "charges.csv, 'charge,description,basis,price,form'",
    "charges.csv, 'charge,description,basis,price,itme'",
    "payments.csv, 'customer,date,amount,bdoy'",
    "batches.csv, 'batch,deu.,produkt,gian'",
    "corrections.csv, 'scale,ticket,field,value,by,on,reason,daet'"
  })
  void aColumnMuchLikeOneThatTheFileLacksStopsTheNight(String file, String header) {
    scene.file(file, header);
    var found = scene.at(LATER);
    assertTrue(found.rows("notices", "code=column-unknown").size() > 0);
    assertEquals(0, found.rows("statements").size());
    assertEquals("issued", found.state("B1"));
    assertEquals(1, found.exit());
  }

  @Test
  void theNextNightIssuesWhatTheMistakeStopped() {
    scene.file("charges.csv", "charge,description,basis,price,specis", "k,Kill,head,9,lamb");
    assertStopped(scene.nextNight("06T02:00"), "column-unknown");
    scene.file("charges.csv", "charge,description,basis,price,species", "k,Kill,head,9,lamb");
    assertEquals("0.00", scene.nextNight("07T02:00").statement("ann", "B1", "charges"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"nme", "shoe size", "too", "bye", "itemised", "fruit"})
  void aColumnLikeNoneThatIsLackingIsNoted(String column) {
    scene.file("charges.csv", "charge,description,basis,price,item," + column);
    var found = scene.at(LATER);
    assertEquals(List.of("note column-other"), found.notices());
    assertEquals(0, found.exit());
  }

  @Test
  void aColumnLikeOneThatIsThereIsNoted() {
    scene.file("charges.csv", "charge,description,basis,price,species,specie");
    assertEquals(List.of("note column-other"), scene.at(LATER).notices());
  }

  @ParameterizedTest
  @ValueSource(strings = {"tax percent", "Tax_Percent", "TAX-PERCENT", "taxpercent"})
  void aColumnIsReadWithoutRegardToCaseBlanksAndHyphens(String column) {
    scene.file("charges.csv", "charge,description,basis,price," + column, "k,Kill,head,95.00,10");
    var found = scene.at(LATER);
    assertEquals("9.50", found.statement("ann", "B1", "tax"));
    assertEquals(List.of("note column-name"), found.notices());
  }

  @ParameterizedTest
  @ValueSource(strings = {"price", "Price", "pri ce"})
  void theSecondOfTwoColumnsWithOneNameStopsTheNight(String second) {
    scene.file("charges.csv", "charge,description,basis,price," + second, "k,Kill,head,9,8");
    assertStopped(scene.at(LATER), "column-unknown");
  }

  @ParameterizedTest
  @CsvSource({
    "charges.csv, 'charge,description,basis'",
    "payments.csv, 'customer,amount'",
    "values.csv, 'item,from'",
    "shares.csv, 'body,share'",
    "batches.csv, 'product,due'"
  })
  void aMissingRequiredColumnStopsTheNight(String file, String header) {
    scene.file(file, header, "x,1");
    assertStopped(scene.at(LATER), "column-missing");
  }

  @Test
  void bodiesWithoutTheirSpeciesStopTheNight() {
    assertEquals("issued", scene.nextNight("06T02:00").state("B1"));
    scene.file("bodies.csv", "body,specis,killed,customer", "B1,beef,2026-03-02,ann");
    var found = scene.nextNight("07T02:00");
    assertEquals("stop", found.notice("column-missing", "severity"));
    assertEquals("stop", found.notice("column-unknown", "severity"));
    assertEquals("1", found.statement("ann", "B1", "revision"));
    assertEquals(1, found.exit());
  }

  @ParameterizedTest
  @CsvSource({
    "quiet_huors=3, column-unknown",
    "bin=no, column-unknown",
    "tax_included=yess, setting-bad",
    "dates=dd.mm.yyyy, setting-bad"
  })
  void aSettingThatCannotBeReadStopsTheNight(String line, String code) {
    scene.set(line);
    assertStopped(scene.at(LATER), code);
  }

  @Test
  void draftsFollowWhileTheNightIsStopped() {
    scene.weigh("05T10:40 B1 pack rump 9");
    scene.file("charges.csv", "charge,description,basis,price,specis");
    assertTrue(scene.at(LATER).documents().contains("held/ann/B1.pdf"));
  }

  @Test
  void anExportsMistypedColumnStopsTheNight() {
    scene.add(
        "exports/b.csv",
        "scale,ticket,time,body,code,net,custmer",
        "bench,90,2026-03-05T10:40,B1,pack.rump,0.01,bob");
    assertStopped(scene.at(LATER), "column-unknown");
  }

  @Test
  void anExportsOtherColumnsDrawNoNoticeAndAnotherWritingANote() {
    scene.add(
        "exports/b.csv",
        "Scale,ticket,time,body,code,net,lot of the day",
        "bench,90,2026-03-05T10:40,B1,pack.rump,0.01,7");
    var found = scene.at(LATER);
    assertEquals(List.of("note column-name"), found.notices());
    assertEquals("1 = 1 + 0 + 0 + 0", found.counts("exports/b.csv"));
  }

  @Test
  void theColumnsOfAnExportAreNotComparedWhereItsLayoutGivesThem() {
    scene.add("layouts/make.properties", "column.net=weight");
    scene.add(
        "exports/make/b.csv",
        "scale,ticket,time,body,code,weight,custmer",
        "bench,90,2026-03-05T10:40,B1,pack.rump,0.01,7");
    assertFalse(scene.at(LATER).notices().contains("stop column-unknown"));
  }

  @ParameterizedTest
  @CsvSource({"colum.net=weight, stop column-unknown", "Column.Net=weight, note column-name"})
  void theKeysOfALayoutAreCompared(String key, String notice) {
    scene.add("layouts/make.properties", key);
    scene.add("exports/make/b.csv", "scale,ticket,time,body,code,weight");
    assertTrue(scene.at(LATER).notices().contains(notice), scene.at(LATER).notices()::toString);
  }
}
