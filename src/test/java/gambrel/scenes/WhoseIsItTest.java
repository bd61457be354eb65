package gambrel.scenes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Bodies, tags, benches, and rows that name what the shop folder lacks. */
class WhoseIsItTest extends SceneTest {
  /** What a spreadsheet makes of an id of fifteen digits. */
  private static final String LOST = "1.23E+14";

  @ParameterizedTest
  @ValueSource(strings = {"body=", "batch=", "customer=", "code=", "scale=", "ticket="})
  void anIdThatASpreadsheetTurnedIntoANumberIsNoId(String column) {
    scene.simpleBody().weigh("05T10:40 B1 pack rump 0.1 " + column + LOST);
    var found = scene.at(LATER);
    assertEquals(column.equals("body=") ? "issued" : "held row-set-aside", found.state("B1"));
    assertEquals("7 = 6 + 0 + 0 + 1", found.counts());
    assertEquals("hold", found.notice("spreadsheet-damage", "severity"));
    assertEquals("8", found.notice("spreadsheet-damage", "line"));
    assertTrue(found.notice("spreadsheet-damage", "message").contains(LOST));
    assertEquals(1, found.exit());
  }

  @Test
  void anIdThatASpreadsheetTurnedIntoANumberCanBeCorrected() {
    scene.simpleBody().weigh("05T10:40 B1 tub trim 0.1 batch=" + LOST + " ticket=70");
    scene.weigh("05T12:00 - pack mince 0.1 batch=M1");
    assertEquals("held row-set-aside", scene.at(LATER).state("B1"));
    scene.correct("bench", "70", "batch", LOST, "07");
    assertEquals(
        "hold", scene.at(LATER).rows("notices", "file=corrections.csv").get(0).get("severity"));
    scene.correct("bench", "70", "batch", "M1", "08");
    assertEquals("0.100", scene.at(LATER).cell("batches", "meat_in_kg", "batch=M1"));
  }

  @ParameterizedTest
  @CsvSource({
    "customers.csv, 'customer,name', '1.23E+14,Ann'",
    "bodies.csv, 'body,species', '1.23E+14,beef'",
    "bodies.csv, 'body,species,tags', 'B2,beef,7 1.23E+14'",
    "bodies.csv, 'body,species,customer', 'B2,beef,1.23E+14'",
    "shares.csv, 'body,customer,share', '1.23E+14,ann,1'",
    "shares.csv, 'body,customer,share', 'B1,1.23E+14,1'",
    "codes.csv, 'code,item,step', '1.23E+14,rump,pack'",
    "codes.csv, 'code,item,step', '71,1.23E+14,pack'",
    "cuts.csv, 'species,item,parent,name,kind', 'beef,1.23E+14,carcase,Bit,meat'",
    "cuts.csv, 'species,item,parent,name,kind', 'beef,bit,1.23E+14,Bit,meat'",
    "scales.csv, 'scale,division', '1.23E+14,0.01'",
    "bench.csv, 'scale,from,to,body', '1.23E+14,2026-03-05,2026-03-06,B1'",
    "bench.csv, 'scale,from,to,body', 'bench,2026-03-05,2026-03-06,1.23E+14'",
    "bench.csv, 'scale,from,to,batch', 'bench,2026-03-05,2026-03-06,1.23E+14'",
    "bench.csv, 'scale,from,to,customer', 'bench,2026-03-05,2026-03-06,1.23E+14'",
    "charges.csv, 'charge,description,basis,price', '1.23E+14,Kill,head,1'",
    "charges.csv, 'charge,description,basis,price,item', 'k,Kill,head,1,1.23E+14'",
    "charges.csv, 'charge,description,basis,price,body', 'k,Kill,head,1,1.23E+14'",
    "values.csv, 'item,value', '1.23E+14,1'",
    "batches.csv, 'batch,product', '1.23E+14,Mince'",
    "payments.csv, 'customer,date,amount', '1.23E+14,2026-03-05,1'",
    "payments.csv, 'customer,date,amount,body', 'ann,2026-03-05,1,1.23E+14'",
    "corrections.csv, 'scale,ticket,field,value,by,on,reason', '1.23E+14,1,net,1,Eve,2026-03-05,x'",
    "corrections.csv, 'scale,ticket,field,value,by,on,reason', 'bench,1.23E+14,net,1,Eve,2026-03-05,x'",
    "corrections.csv, 'scale,ticket,field,value,by,on,reason', 'bench,1,body,1.23E+14,Eve,2026-03-05,x'",
    "releases.csv, 'body,by,on,reason', '1.23E+14,Eve,2026-03-05,x'"
  })
  void soIsItInTheTables(String file, String header, String row) {
    scene.simpleBody().file(file, header, row);
    var notices = scene.at(LATER).rows("notices", "code=spreadsheet-damage", "file=" + file);
    assertEquals(List.of("2"), notices.stream().map(n -> n.get("line")).toList());
  }

  /** A tag for a body killed on the 2nd of March, keyed on a day. */
  private Found keyed(String day) {
    scene.file(
        "bodies.csv", "body,species,killed,customer,tags", "B1,beef,2026-03-02,ann,417 0418");
    scene.weigh(day + "T10:00 417 pack rump 1");
    return scene.at("2026-06-01T00:00");
  }

  @ParameterizedTest
  @CsvSource({
    // Sixty days after the kill and one more; two days before it and one more.
    "2026-05-01, 1 = 1 + 0 + 0 + 0",
    "2026-05-02, 1 = 0 + 0 + 0 + 1",
    "2026-02-28, 1 = 1 + 0 + 0 + 0",
    "2026-02-27, 1 = 0 + 0 + 0 + 1"
  })
  void aTagStandsForABodyAroundItsKill(String day, String counts) {
    assertEquals(counts, keyed(day).counts());
  }

  @Test
  void aTagOutOfItsTimeIsAnUnknownBodyWithTheOneThatHadIt() {
    String message = keyed("2026-05-02").notice("body-unknown", "message");
    assertTrue(message.contains("belongs to body B1, killed 61 days before"), message);
  }

  @Test
  void aLostTagIsReplacedByAnother() {
    scene.weigh("05T10:01 0418 pack rump 2");
    assertBody(keyed("05"), "take_home_kg", "3.000");
  }

  @Test
  void aTagInARowWithoutALegibleTimeHoldsEveryBodyThatHadIt() {
    scene.file(
        "bodies.csv",
        "body,species,killed,customer,tags",
        "B1,beef,2026-03-02,ann,417",
        "B2,beef,2025-12-01,bob,417",
        "B3,beef,2026-03-02,cat,418");
    scene.set("rail=hot").simpleBody();
    scene.weigh(
        """
        04T10:00 B2  hot  carcase 100
        05T10:00 B2  pack rump     99
        04T10:00 B3  hot  carcase 100
        05T10:00 B3  pack rump     99
        06T10:00 417 pack liver     6 time=2026-03-O6T10:00
        """);
    var found = scene.at(LATER);
    assertEquals("held row-set-aside", found.state("B1"));
    assertEquals("held row-set-aside", found.state("B2"));
    assertEquals("issued", found.state("B3"));
  }

  @Test
  void aTagOfTwoBodiesIsSetAsideAndHoldsBoth() {
    scene.file(
        "bodies.csv",
        "body,species,killed,customer,tags",
        "B1,beef,2026-03-02,ann,417",
        "B2,beef,2026-03-09,bob,417",
        "B3,beef,2025-12-01,cat,417");
    scene.simpleBody();
    scene.weigh(
        """
        09T10:00 B2  hot  carcase 300
        10T10:00 B2  cold carcase 294
        12T10:00 B2  pack rump    294
        12T10:05 417 pack rump      1
        """);
    var found = scene.at(LATER);
    assertEquals("hold", found.notice("body-ambiguous", "severity"));
    assertEquals("held row-set-aside", found.state("B1"));
    assertEquals("held row-set-aside", found.state("B2"));
  }

  @Test
  void anIdGoesBeforeATag() {
    scene.file(
        "bodies.csv",
        "body,species,killed,customer,tags",
        "B1,beef,2026-03-02,ann,B2",
        "B2,beef,2026-03-02,bob,");
    scene.weigh("05T10:00 B2 pack rump 1");
    assertEquals("1.000", scene.at(LATER).body("B2", "take_home_kg"));
  }

  @Test
  void anIdThatLostItsLeadingZerosIsTakenWithANote() {
    scene.file("bodies.csv", "body,species,killed,customer", "00417,beef,2026-03-02,ann");
    scene.weigh("05T10:00 417 pack rump 1\n05T10:01 417 pack rump 2");
    var found = scene.at(LATER);
    assertEquals("3.000", found.body("00417", "take_home_kg"));
    assertEquals("note", found.notice("id-zeros", "severity"));
  }

  @Test
  void idsOfOneKindThatDifferInLeadingZerosAreOneNote() {
    scene.file(
        "bodies.csv",
        "body,species,killed,customer",
        "41,beef,2026-03-02,ann",
        "42,beef,2026-03-02,ann");
    scene.weigh("05T10:00 000042 pack rump 1\n05T10:01 000041 pack rump 2");
    assertEquals(
        "Bodies of the exports, each with the id that is taken for it: 000041=41, 000042=42.",
        scene.at(LATER).notice("id-zeros", "message"));
  }

  @Test
  void anIdWithoutZerosThatFitsTwoBodiesIsNotGuessed() {
    scene.file(
        "bodies.csv",
        "body,species,killed,customer",
        "0417,beef,2026-03-02,ann",
        "00417,beef,2026-03-02,ann");
    scene.weigh("05T10:00 417 pack rump 1");
    assertEquals("1 = 0 + 0 + 0 + 1", scene.at(LATER).counts());
  }

  @Test
  void aBodyKeyedAtNoScaleIsNamedByTheBench() {
    scene.file("bench.csv", "scale,from,to,body", "bench,2026-03-05T10:00,2026-03-05T12:00,B1");
    scene.weigh(
        """
        05T09:59 - pack rump 1
        05T10:00 - pack rump 2
        05T12:00 - pack rump 4
        05T12:01 - pack rump 8
        """);
    var found = scene.at(LATER);
    // Both ends belong to it.
    assertBody(found, "take_home_kg", "6.000");
    assertEquals("4 = 2 + 0 + 0 + 2", found.counts());
    assertEquals(2, found.rows("notices", "code=owner-missing").size());
  }

  @Test
  void theBenchFillsOnlyWhatTheScaleLeftBlank() {
    scene.body("B2,beef,2026-03-02,bob");
    scene.file(
        "bench.csv", "scale,from,to,body,batch,customer", "bench,2026-03-05,2026-03-05,B2,,cat");
    scene.weigh("05T10:00 B1 pack rump 2");
    scene.weigh("05T10:01 -  pack rump 4 customer=bob");
    var found = scene.at(LATER);
    assertBody(found, "take_home_kg", "2.000");
    assertEquals("4.000", found.body("B2", "take_home_kg"));
  }

  @Test
  void aRowSetAsideHoldsTheBodyThatTheBenchFillsIn() {
    scene.file("bench.csv", "scale,from,to,body", "bench,2026-03-05,2026-03-05,B1");
    scene.weigh("05T10:00 -  pack rump 2");
    scene.weigh("05T10:01 -  pack rump -1");
    assertTrue(scene.at(LATER).body("B1", "reasons").contains("row-set-aside"));
  }

  @Test
  void whatTheBenchFillsIsNoContent() {
    scene.file("bench.csv", "scale,from,to,body", "bench,2026-03-05,2026-03-05,B1");
    scene.weigh(
        """
        05T10:00 -  pack rump 2 ticket=7
        05T10:00 B1 pack rump 2 ticket=7
        """);
    assertEquals("2 = 0 + 0 + 0 + 2", scene.at(LATER).counts());
  }

  @Test
  void anUnknownBodyMakesOneNoticeHoweverManyRowsNameIt() {
    scene.weigh(
        """
        05T10:00 B7 pack rump 1
        05T10:01 B7 pack rump 2
        05T10:02 B8 pack rump 4
        """);
    var found = scene.at(LATER);
    assertEquals(List.of("hold body-unknown", "hold body-unknown"), found.notices());
    assertEquals("3 = 0 + 0 + 0 + 3", found.counts());
    assertEquals(1, found.exit());
  }

  @Test
  void aScaleCodeOrCustomerThatTheShopLacksIsSetAside() {
    scene.weigh(
        """
        05T10:00 B1 pack rump 1 scale=shed
        05T10:01 B1 -    -    1
        05T10:02 B1 pack rump 1 customer=dan
        """);
    scene.add("exports/a.csv", "bench,99,2026-03-05T10:03,B1,nonsense,1,,,,,,,,");
    var found = scene.at(LATER);
    assertEquals("4 = 0 + 0 + 0 + 4", found.counts());
    assertEquals(
        List.of(
            "hold scale-unknown",
            "hold code-unknown",
            "hold customer-unknown",
            "hold code-unknown"),
        found.notices());
    assertTrue(found.notice("scale-unknown", "message").contains("shed"));
  }

  @ParameterizedTest
  @CsvSource({
    "hot, carcase",
    "cold, carcase",
    "aged, carcase",
    "block, rump",
    "bin, bone",
    "pack, rump",
    "tub, trim",
    "added, fat"
  })
  void aRowWithoutTheOwnerThatItsStepNeedsIsSetAside(String step, String item) {
    scene.weigh("05T10:00 - %s %s 1".formatted(step, item));
    var found = scene.at(LATER);
    assertEquals("1 = 0 + 0 + 0 + 1", found.counts());
    assertEquals("hold", found.notice("owner-missing", "severity"));
  }

  @ParameterizedTest
  @CsvSource({
    "hot, 1 = 0 + 0 + 0 + 1",
    "bin, 1 = 0 + 0 + 0 + 1",
    "pack, 1 = 1 + 0 + 0 + 0",
    "tub, 1 = 1 + 0 + 0 + 0",
    "added, 1 = 1 + 0 + 0 + 0"
  })
  void aBatchIsOwnerEnoughForPackTubAndAdded(String step, String counts) {
    scene.weigh("05T10:00 - %s mince 1 batch=M1".formatted(step));
    assertEquals(counts, scene.at(LATER).counts());
  }

  @Test
  void testWeightsAndOtherWeighingsNeedNoOwner() {
    scene.add("codes.csv", "t20,,test,20,,");
    scene.weigh("05T10:00 - other rump 1\n05T10:00 - - - 20 code=t20");
    assertEquals("2 = 2 + 0 + 0 + 0", scene.at(LATER).counts());
  }

  @Test
  void theBodyDecidesTheSpeciesOfACode() {
    scene.body("L1,lamb,2026-03-02,ann");
    scene.weigh(
        """
        05T10:00 B1 pack mince  1
        05T10:01 L1 pack mince  2
        05T10:02 L1 pack t-bone 4
        """);
    var found = scene.at(LATER);
    assertBody(found, "take_home_kg", "1.000");
    assertEquals("2.000", found.body("L1", "take_home_kg"));
    assertEquals("L1", found.notice("item-not-in-species", "body"));
    assertEquals(
        "Item t-bone of code pack.t-bone is no part of lamb, the species of the body;"
            + " it is of beef, veal.",
        found.notice("item-not-in-species", "message"));
  }

  @Test
  void ofTheItemsOfACodeTheBodysSpeciesTakesItsOwn() {
    scene.body("L1,lamb,2026-03-02,ann", "P1,pork,2026-03-02,bob");
    scene.add("codes.csv", "15,breast-and-flap|belly,pack,,,");
    scene.weigh(
        """
        05T10:00 L1 - - 1 code=15
        05T10:01 P1 - - 2 code=15
        05T10:02 P1 - - 4 code=15
        """);
    var found = scene.at(LATER);
    assertEquals("3 = 3 + 0 + 0 + 0", found.counts());
    assertEquals(
        "1.000", found.cell("cuts", "weight_kg", "body=L1", "item=breast-and-flap", "level=own"));
    assertEquals("6.000", found.cell("cuts", "weight_kg", "body=P1", "item=belly", "level=own"));
  }

  @Test
  void aBodyWhoseSpeciesHasNoItemOfACodeWaits() {
    scene.add("codes.csv", "15,breast-and-flap|belly,pack,,,");
    scene.weigh("05T10:00 B1 - - 1 code=15");
    var found = scene.at(LATER);
    assertEquals("1 = 0 + 0 + 0 + 1", found.counts());
    assertEquals(
        "Item breast-and-flap|belly of code 15 is no part of beef, the species of the body;"
            + " it is of lamb, pork, goat.",
        found.notice("item-not-in-species", "message"));
    assertTrue(
        found.notice("item-not-in-species", "advice").contains("15,breast-and-flap|belly|?,pack"));
  }

  @Test
  void aBodyWhoseSpeciesHasTwoItemsOfACodeWaitsAndTheRowOfTheCodeIsMarked() {
    scene.body("L1,lamb,2026-03-02,ann");
    scene.add("codes.csv", "15,rump|striploin|breast-and-flap,pack,,,");
    scene.weigh("05T10:00 B1 - - 1 code=15\n05T10:01 L1 - - 2 code=15");
    var found = scene.at(LATER);
    assertEquals("2 = 1 + 0 + 0 + 1", found.counts());
    assertEquals("B1", found.notice("item-not-in-species", "body"));
    assertEquals(
        "The species beef of the body has more than one of the items rump|striploin|breast-and-flap,"
            + " which code 15 may mean.",
        found.notice("item-not-in-species", "message"));
    assertEquals("codes.csv", found.notice("shop-row-bad", "file"));
  }

  @Test
  void aWeighingWithoutABodyLeavesOpenWhichItemOfACodeItIs() {
    scene.add("codes.csv", "15,breast-and-flap|belly,pack,,,");
    scene.weigh("05T10:00 - - - 1 code=15 batch=S1");
    var found = scene.at(LATER);
    assertEquals("1 = 0 + 0 + 0 + 1", found.counts());
    assertEquals("hold", found.notice("owner-missing", "severity"));
  }

  @Test
  void oneCodeMayStandForAllThatBeginSo() {
    scene.add("codes.csv", "71*,rump,pack,,,", "712*,mince,pack,,,", "7123,rump,bin,,,");
    scene.weigh(
        """
        05T10:00 B1 - - 1 code=7100
        05T10:01 B1 - - 2 code=7129
        05T10:02 B1 - - 4 code=7123
        """);
    var found = scene.at(LATER);
    // The longest beginning counts, and a code in full before any.
    assertEquals("1.000", found.cell("cuts", "weight_kg", "item=rump", "step=pack"));
    assertEquals("2.000", found.cell("cuts", "weight_kg", "item=mince", "step=pack"));
    assertEquals("4.000", found.cell("cuts", "weight_kg", "item=rump", "step=bin"));
  }

  @Test
  void anIdWithAnExponentIsRefusedWithTheCure() {
    scene.body("1.23E+14,beef,2026-03-02,ann");
    var found = scene.at(LATER);
    assertEquals(1, found.rows("bodies").size());
    assertTrue(found.notice("spreadsheet-damage", "advice").contains("as text"));
  }

  private Found asideInFile(String row) {
    scene.simpleBody();
    scene.file("exports/z.csv", "scale,ticket,time,body,code,net", row);
    return scene.at(LATER);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "bench,900,2026-03-05T10:40,71,B1,0.1",
        "bench,900,2026-03-05T10:40,,B1,71,0.1",
        "B1,bench,900,2026-03-05T10:40,71,0.1",
        "bench,900,2026-03-05T10:40,0.1,71,B1"
      })
  void aRowHoldsTheBodyThatStandsInAnotherCell(String row) {
    var found = asideInFile(row);
    assertEquals("held row-set-aside", found.state("B1"));
    assertEquals(1, found.exit());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "bench,900,2026-03-05T10:40,,nothing,0.1",
        "bench,900,2026-03-05T10:40,B17,nothing,0.1",
        "bench,900,2026-03-05T10:40,,see B1,0.1"
      })
  void aRowWithoutAWordThatIsABodyHoldsNobody(String row) {
    var found = asideInFile(row);
    assertEquals("issued", found.state("B1"));
    assertEquals(1, found.exit());
  }

  @Test
  void aNumberOrTheIdOfACodeIsNoBodyInAnotherCell() {
    scene.file("bodies.csv", "body,species,customer", "7,lamb,ann", "rump,lamb,ann");
    scene.weigh("05T10:00 7 pack leg 1").weigh("05T10:00 rump pack leg 1");
    scene.file(
        "exports/z.csv", "scale,ticket,time,body,code,net,pieces", "bench,900,x,,rump,0.1,7");
    assertEquals(List.of(), scene.at(LATER).rows("bodies", "reasons=row-set-aside"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "bensh,900,2026-03-05T10:40,,pack.rump,0.1",
        "bench,900,2026-O3-05T10:40,,pack-rump,0.1",
      })
  void theBenchBookSaysWhoseARowIsWhoseScaleOrTimeCannotBeRead(String row) {
    scene.simpleBody();
    scene.file("bench.csv", "scale,from,to,body", "bench,2026-03-05T10:00,2026-03-05T12:00,B1");
    scene.file(
        "exports/z.csv",
        "scale,ticket,time,body,code,net",
        "bench,899,2026-03-05T09:00,,none,0.1",
        row,
        "bench,901,2026-03-05T10:45,,none,0.1");
    assertEquals("held row-set-aside", scene.at(LATER).state("B1"));
  }
}
