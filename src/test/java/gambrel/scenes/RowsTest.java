package gambrel.scenes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every row counts once: read = used + repeat + void + set aside. */
class RowsTest extends SceneTest {

  @Test
  void theSameContentMetAgainIsARepeat() {
    scene.weigh("05T10:00 B1 pack rump 1.0 ticket=7 operator=Joe");
    scene.weigh("exports/b.csv", "05T10:00:00 B1 pack rump 1.00 ticket=7 operator=Sue status=ok");
    var found = scene.at(LATER);
    assertEquals("1 = 1 + 0 + 0 + 0", found.counts());
    // Files in path order: the row of the second file repeats that of the first.
    assertEquals("1 = 0 + 1 + 0 + 0", found.counts("exports/b.csv"));
    assertBody(found, "take_home_kg", "1.000");
  }

  @Test
  void otherContentUnderOneTicketSetsBothAsideAndHolds() {
    scene.simpleBody();
    scene.weigh(
        """
        05T11:00 B1 pack rump 1.0 ticket=7
        05T11:00 B1 pack rump 1.2 ticket=7
        """);
    var found = scene.at(LATER);
    assertEquals("8 = 6 + 0 + 0 + 2", found.counts());
    assertEquals("held row-set-aside", found.state("B1"));
    assertEquals(2, found.rows("notices", "code=ticket-conflict", "ticket=7").size());
    assertBody(found, "take_home_kg", "200.000");
  }

  @Test
  void aCorrectionSettlesAConflict() {
    scene.simpleBody().set("bins=partly");
    scene.weigh(
        """
        05T11:00 B1 pack rump 1.0 ticket=7
        05T11:00 B1 pack rump 1.2 ticket=7
        """);
    scene.correct("bench", "7", "net", "1.2", "06");
    var found = scene.at(LATER);
    assertEquals("8 = 7 + 1 + 0 + 0", found.counts());
    assertBody(found, "take_home_kg", "201.200");
    assertEquals("issued", found.state("B1"));
  }

  @Test
  void aTicketMayComeRoundAgainOnAnotherDayOrScale() {
    scene.weigh(
        """
        05T10:00 B1 pack rump 1 ticket=7
        06T10:00 B1 pack rump 2 ticket=7
        06T10:00 B1 pack rump 4 ticket=7 scale=rail
        """);
    assertBody(scene.at(LATER), "take_home_kg", "7.000");
  }

  @Test
  void aRowWithoutATicketIsKnownByItsWholeContent() {
    scene.weigh(
        """
        05T10:00 B1 pack rump 1.0 ticket=
        05T10:00 B1 pack rump 1.0 ticket=
        05T10:00 B1 pack rump 1.2 ticket=
        """);
    assertEquals("3 = 2 + 1 + 0 + 0", scene.at(LATER).counts());
  }

  @Test
  void aVoidCancelsTheTicketItStandsOnWhateverItsOtherCells() {
    scene.weigh(
        """
        05T10:00 B1 pack rump 1 ticket=7
        05T10:05 -  -    -    - ticket=7 status=void
        05T10:10 B1 pack rump 2 ticket=8
        """);
    var found = scene.at(LATER);
    assertEquals("3 = 1 + 0 + 2 + 0", found.counts());
    assertBody(found, "take_home_kg", "2.000");
  }

  @Test
  void aTicketPrintedAgainCountsOnce() {
    scene.weigh(
        """
        05T10:00 B1 pack rump 1   ticket=7
        05T10:01 B1 pack rump 1.0 ticket=7 status=repeat
        05T10:02 B1 pack rump 1   ticket=7 status=Repeat
        06T08:00 B1 pack rump 1   ticket=7 status=repeat
        """);
    var found = scene.at(LATER);
    assertEquals("4 = 1 + 3 + 0 + 0", found.counts());
    assertBody(found, "take_home_kg", "1.000");
    assertEquals(List.of("hold held"), found.notices());
  }

  @Test
  void aWeighingIsNoRepeatOfItsOwnReprintInAnEarlierFile() {
    scene.weigh("exports/a.csv", "05T10:01 B1 pack rump 1 ticket=7 status=repeat");
    scene.weigh(
        "exports/b.csv",
        """
        05T10:01 B1 pack rump 1 ticket=7
        05T10:01 B1 pack rump 1 ticket=7 status=repeat
        """);
    var found = scene.at(LATER);
    assertEquals("1 = 0 + 1 + 0 + 0", found.counts());
    assertEquals("2 = 1 + 1 + 0 + 0", found.counts("exports/b.csv"));
    assertBody(found, "take_home_kg", "1.000");
  }

  @ParameterizedTest
  @CsvSource({
    "05T10:01 B1 pack rump 1 ticket=7",
    "05T10:00 B1 pack rump 1 ticket=6",
    "04T10:00 B1 pack rump 2 ticket=7",
    "04T10:00 B1 pack mince 1 ticket=7",
    "04T10:00 B2 pack rump 1 ticket=7",
    "04T10:00 B1 pack rump 1 ticket=7 scale=rail",
    "04T10:00 B1 pack rump 1 ticket=7 status=void"
  })
  void aReprintWithoutItsWeighingBeforeItIsSetAsideAndHolds(String other) {
    scene.body("B2,beef,2026-03-02,bob");
    scene.weigh(other);
    scene.weigh("exports/b.csv", "05T10:00 B1 pack rump 1 ticket=7 status=repeat");
    var found = scene.at(LATER);
    assertEquals("1 = 0 + 0 + 0 + 1", found.counts("exports/b.csv"));
    assertEquals("hold", found.rows("notices", "file=exports/b.csv").get(0).get("severity"));
  }

  @Test
  void aCorrectionMakesTheOnlyRowOfAWeighingCount() {
    scene.weigh("05T10:00 B1 pack rump 1 ticket=7 status=repeat");
    scene.correct("bench", "exports/a.csv:2", "status", "ok", "06");
    assertEquals("1 = 1 + 0 + 0 + 0", scene.at(LATER).counts());
  }

  @Test
  void aReprintOfOtherContentIsAConflictOnItsTicket() {
    scene.weigh(
        """
        05T10:00 B1 pack rump 1.0 ticket=7
        05T10:01 B1 pack rump 1.2 ticket=7 status=repeat
        """);
    var found = scene.at(LATER);
    assertEquals("2 = 0 + 0 + 0 + 2", found.counts());
    assertEquals(2, found.rows("notices", "code=ticket-conflict").size());
  }

  @Test
  void aVoidOnATicketThatWasPrintedAgainCancelsItsWeighing() {
    scene.weigh(
        """
        05T10:00 B1 pack rump 1 ticket=7
        05T10:01 B1 pack rump 1 ticket=7 status=repeat
        05T10:02 B1 pack rump 1 ticket=7 status=void
        """);
    assertEquals("3 = 0 + 1 + 2 + 0", scene.at(LATER).counts());
  }

  @Test
  void aVoidOfTheRowBeforeItPassesOverAReprint() {
    scene.add("exports/bench/layout.properties", "void=before");
    scene.weigh(
        "exports/bench/a.csv",
        """
        05T10:00 B1 pack rump 1 ticket=6
        05T10:01 B1 pack rump 1 ticket=7
        05T10:02 B1 pack rump 1 ticket=7 status=repeat
        05T10:03 B1 pack rump 1 ticket=8 status=void
        05T10:04 B1 pack rump 1 ticket=9 status=void
        """);
    assertEquals("5 = 0 + 1 + 4 + 0", scene.at(LATER).counts("exports/bench/a.csv"));
  }

  /** D takes back the row before it; R is a second label of ticket 6, which counts. */
  @Test
  void aSecondLabelWithANumberOfItsOwnCancelsItselfBesideVoidsOfTheRowBefore() {
    scene.add(
        "exports/bench/layout.properties",
        "void=before\nvalue.status.D=void\nvalue.status.R=void:own");
    scene.weigh(
        "exports/bench/a.csv",
        """
        05T10:00 B1 pack rump 1 ticket=6
        05T10:01 B1 pack rump 1 ticket=7 status=R
        05T10:02 B1 pack rump 2 ticket=8
        05T10:03 B1 pack rump 2 ticket=9 status=D
        """);
    var found = scene.at(LATER);
    assertEquals("4 = 1 + 0 + 3 + 0", found.counts("exports/bench/a.csv"));
    assertEquals(List.of("hold held"), found.notices());
    assertBody(found, "take_home_kg", "1.000");
  }

  @Test
  void aReprintIsNoFurtherWeighingWhereTheLayoutGivesAnIdentity() {
    scene.add("exports/bench/layout.properties", "identity=time,body,code,net");
    scene.weigh(
        "exports/bench/a.csv",
        """
        05T10:00 B1 pack rump 1 ticket=7
        05T10:00 B1 pack rump 1 ticket=7 status=repeat
        05T10:05 B1 pack rump 1 ticket=7 status=repeat
        """);
    var found = scene.at(LATER);
    assertEquals("3 = 1 + 2 + 0 + 0", found.counts("exports/bench/a.csv"));
    assertEquals(List.of("hold held"), found.notices());
  }

  @Test
  void aVoidAloneOnItsTicketCancelsItself() {
    scene.weigh("05T10:00 B1 pack rump 1 ticket=7 status=VOID");
    var found = scene.at(LATER);
    assertEquals("1 = 0 + 0 + 1 + 0", found.counts());
    assertEquals(List.of(), found.notices());
  }

  @Test
  void aVoidSettlesAConflictOnItsTicket() {
    scene.weigh(
        """
        05T10:00 B1 pack rump 1.0 ticket=7
        05T10:00 B1 pack rump 1.2 ticket=7
        05T10:05 -  -    -    -   ticket=7 status=void
        """);
    assertEquals("3 = 0 + 0 + 3 + 0", scene.at(LATER).counts());
  }

  @Test
  void aVoidThatNamesATicketCancelsItsNearestWeighingBeforeIt() {
    scene.weigh(
        """
        04T10:00 B1 pack rump 1 ticket=7
        05T10:00 B1 pack rump 2 ticket=7
        07T10:00 B1 pack rump 4 ticket=7
        """);
    scene.weigh("exports/b.csv", "06T10:00 - - - - ticket=9 status=void:7");
    assertBody(scene.at(LATER), "take_home_kg", "5.000");
  }

  @Test
  void aSecondVoidOfTheSameTicketCancelsTheOneBeforeThat() {
    scene.weigh(
        """
        04T10:00 B1 pack rump 1 ticket=7
        05T10:00 B1 pack rump 2 ticket=7
        06T10:00 -  -    -    - ticket=9 status=void:7
        06T10:01 -  -    -    - ticket=10 status=void:7
        """);
    var found = scene.at(LATER);
    assertEquals("4 = 0 + 0 + 4 + 0", found.counts());
    assertEquals(List.of(), found.notices());
  }

  @Test
  void aVoidCannotBeVoided() {
    scene.weigh(
        """
        05T10:00 B1 pack rump 1 ticket=7
        05T10:01 -  -    -    - ticket=8 status=void:7
        05T10:02 -  -    -    - ticket=9 status=void:8
        """);
    var found = scene.at(LATER);
    assertEquals("3 = 0 + 0 + 3 + 0", found.counts());
    assertEquals("9", found.notice("void-unused", "ticket"));
  }

  @Test
  void aVoidThatFindsNothingIsMarked() {
    scene.weigh("05T10:01 - - - - ticket=8 status=void:7");
    var found = scene.at(LATER);
    assertEquals("mark", found.notice("void-unused", "severity"));
    assertEquals("1 = 0 + 0 + 1 + 0", found.counts());
    assertEquals(0, found.exit());
  }

  @ParameterizedTest
  @CsvSource({
    "10:01, rump, 1, true",
    "11:00, rump, 1, true",
    "11:01, rump, 1, false",
    "10:01, chuck, 1, false",
    "10:01, rump, 2, false",
    "09:59, rump, 1, false"
  })
  void aLoneVoidIsMarkedWhereAnEqualWeighingStandsWithinAnHourBefore(
      String time, String item, String kilos, boolean marked) {
    scene.weigh(
        """
        05T10:00 B1 pack rump 1 ticket=7
        05T%s B1 pack %s %s ticket=8 status=void
        """
            .formatted(time, item, kilos));
    var found = scene.at(LATER);
    assertEquals("2 = 1 + 0 + 1 + 0", found.counts());
    assertEquals(marked, found.notices().contains("mark void-alone"));
  }

  @ParameterizedTest
  @CsvSource({"rump, true", "chuck, false"})
  void aLoneVoidWithoutAWeightIsMarkedWhateverTheWeightBeforeIt(String item, boolean marked) {
    scene.text(
        "exports/bench/a.csv",
        """
        scale,ticket,time,body,code,net,status
        bench,7,2026-03-05T10:00,B1,rump,1.340,
        bench,8,2026-03-05T10:01,B1,%s,,void
        """
            .formatted(item));
    assertEquals(marked, scene.at(LATER).notices().contains("mark void-alone"));
  }

  @ParameterizedTest
  @CsvSource({"'', true", "void=own, false"})
  void aLoneVoidIsNotMarkedWhereTheLayoutSaysWhatItCancels(String line, boolean marked) {
    scene.text("exports/bench/layout.properties", line);
    scene.weigh(
        "exports/bench/a.csv",
        "05T10:00 B1 pack rump 1 ticket=7\n05T10:01 B1 pack rump 1 ticket=8 status=void");
    assertEquals(marked, scene.at(LATER).notices().contains("mark void-alone"));
  }

  @Test
  void aVoidMetAgainIsARepeat() {
    scene.weigh(
        """
        05T10:00 B1 pack rump 1 ticket=7
        05T10:05 -  -    -    - ticket=7 status=void
        05T10:06 B1 pack rump 3 ticket=7 status=void
        """);
    // Voids are compared by key and status alone.
    assertEquals("3 = 0 + 1 + 2 + 0", scene.at(LATER).counts());
  }

  @Test
  void aRowDatedLaterIsUsedAndHasNoEffectYet() {
    scene.weigh(
        """
        05T10:00 B1 pack rump 1 ticket=7
        05T12:00 B1 pack rump 2 ticket=8
        05T12:00 -  -    -    - ticket=9 status=void:7
        """);
    var before = scene.at("05T11:59:59");
    assertBody(before, "take_home_kg", "1.000");
    assertEquals("3 = 3 + 0 + 0 + 0", before.counts());
    var after = scene.at("05T12:00");
    assertBody(after, "take_home_kg", "2.000");
    assertEquals("3 = 1 + 0 + 2 + 0", after.counts());
  }

  @Test
  void anAsOfWithAnOffsetIsTakenAtTheShopsOwnClock() {
    scene.set("zone=Australia/Sydney");
    scene.weigh("05T12:00 B1 pack rump 1");
    // Noon in Sydney in March is one o'clock at night in Greenwich.
    assertBody(scene.at("2026-03-05T00:59:59Z"), "take_home_kg", "");
    assertBody(scene.at("2026-03-05T01:00:00Z"), "take_home_kg", "1.000");
  }

  @Test
  void aTimeWithAnOffsetIsTakenAtTheShopsOwnClock() {
    scene.set("zone=Australia/Sydney");
    scene.weigh("2026-03-04T23:30:00Z B1 pack rump 1\n05T11:00 B1 pack rump 2");
    // Half past ten on the fifth
    assertBody(scene.at("05T10:30"), "take_home_kg", "1.000");
    assertBody(scene.at("05T10:30"), "days_hung", "3");
  }

  @Test
  void aStatusThatIsNotUnderstoodIsSetAside() {
    scene.weigh("05T10:00 B1 pack rump 1 status=deleted");
    var found = scene.at(LATER);
    assertEquals("1 = 0 + 0 + 0 + 1", found.counts());
    assertEquals("hold", found.notice("status-bad", "severity"));
  }

  @Test
  void aBrokenRowIsOneNoticeWithItsPlaceAdviceAndText() {
    scene.weigh("05T10:00 B1 pack rump 1,2,3,4,5,6,7,8,9,10,11,12 ticket=7");
    var found = scene.at(LATER);
    var notice = found.rows("notices", "file=exports/a.csv").get(0);
    assertEquals("2", notice.get("line"));
    assertEquals("row-broken", notice.get("code"));
    assertTrue(notice.get("raw").startsWith("bench,7,2026-03-05T10:00,B1,pack.rump,1,2"));
    assertTrue(!notice.get("message").isEmpty() && !notice.get("advice").isEmpty());
    assertEquals("1 = 0 + 0 + 0 + 1", found.counts());
  }

  @Test
  void aBrokenRowHoldsTheBodiesOfTheBatchThatItNames() {
    scene.simpleBody().set("bins=partly");
    scene.weigh(
        """
        05T10:40 B1 tub  trim  1    batch=M1
        05T10:41 -  pack mince 0.99 batch=M1
        05T10:42 -  pack mince 0.01 batch=M1 status=ok,more,than,the,header
        """);
    assertEquals("held row-set-aside", scene.at(LATER).state("B1"));
  }

  @Test
  void aVoidOfATicketCancelsOneOfTwoContentsAndTheOtherStands() {
    scene.weigh(
        """
        05T10:00 B1 pack rump 1.0 ticket=7
        05T10:00 B1 pack rump 1.2 ticket=7
        05T10:05 -  -    -    -   ticket=8 status=void:7
        """);
    var found = scene.at(LATER);
    assertEquals("3 = 1 + 0 + 2 + 0", found.counts());
    // At one time the later line is the nearer.
    assertBody(found, "take_home_kg", "1.000");
  }

  @Test
  void aVoidDatedLaterLeavesAConflictStanding() {
    scene.weigh(
        """
        05T10:00 B1 pack rump 1.0 ticket=7
        05T10:00 B1 pack rump 1.2 ticket=7
        05T12:00 -  -    -    -   ticket=7 status=void
        """);
    assertEquals("3 = 1 + 0 + 0 + 2", scene.at("05T11:00").counts());
    assertEquals("3 = 0 + 0 + 3 + 0", scene.at("05T12:00").counts());
  }

  @Test
  void aRowDatedLaterMayBeARepeatOrSetAsideAlready() {
    scene.weigh(
        """
        05T12:00 B1 pack rump 1 ticket=7
        05T12:00 B1 pack rump 1 ticket=7
        05T12:00 B1 pack rump x ticket=8
        """);
    assertEquals("3 = 1 + 1 + 0 + 1", scene.at("05T11:00").counts());
  }

  @Test
  void aVoidRowIsComparedWithVoidRowsOnly() {
    scene.weigh(
        """
        05T10:00 B1 pack rump 1 ticket=7
        05T10:00 B1 pack rump 1 ticket=7 status=void
        05T10:00 B1 pack rump 1 ticket=7
        """);
    assertEquals("3 = 0 + 1 + 2 + 0", scene.at(LATER).counts());
  }

  @Test
  void theSameWeightInAnotherUnitIsOtherContent() {
    scene.weigh(
        """
        05T10:00 B1 pack rump 1    ticket=7
        05T10:00 B1 pack rump 1000 ticket=7 unit=g
        """);
    assertEquals("2 = 0 + 0 + 0 + 2", scene.at(LATER).counts());
  }

  @Test
  void aConflictWithARowDatedLaterHoldsNothingUntilThen() {
    scene.simpleBody();
    scene.weigh("05T11:00 B1 pack liver 5 ticket=71\n05T22:00 B1 pack liver 6 ticket=71");
    scene.release("B1", "release", "05T20:00");
    var before = scene.at("05T21:59");
    assertEquals("issued", before.state("B1"));
    assertEquals("8 = 8 + 0 + 0 + 0", before.counts());
    assertBody(before, "offal_kg", "5.000");
    // Then both are set aside, and the release of before does not cover it.
    var after = scene.at("06T04:00");
    assertEquals("held row-set-aside", after.state("B1"));
    assertEquals("8 = 6 + 0 + 0 + 2", after.counts());
  }

  private Found byIdentity(String... files) {
    scene.simpleBody().set("bins=partly");
    scene.file("exports/c/layout.properties", "identity=time,body,code");
    for (int i = 0; i < files.length; i++) {
      scene.weigh("exports/c/" + i + ".csv", files[i]);
    }
    return scene.at(LATER);
  }

  @Test
  void anIdentityReplacesTheTicketAndEqualRowsOfOneFileCountAsOftenAsTheyStand() {
    var found =
        byIdentity(
            """
            05T11:00 B1 pack rump 1.0 ticket=7
            05T11:00 B1 pack rump 1.00 ticket=8
            05T11:01 B1 pack rump 2.0 ticket=7
            """);
    assertEquals("3 = 3 + 0 + 0 + 0", found.counts("exports/c/0.csv"));
    assertBody(found, "take_home_kg", "204.000");
    assertEquals("mark", found.notice("rows-equal", "severity"));
    assertEquals("3", found.notice("rows-equal", "line"));
  }

  @Test
  void overlappingFilesTakeTheLargerNumberOfEqualRows() {
    String row = "05T11:00 B1 pack rump 1.0\n";
    var found = byIdentity(row.repeat(2), row.repeat(3));
    assertEquals("2 = 2 + 0 + 0 + 0", found.counts("exports/c/0.csv"));
    assertEquals("3 = 1 + 2 + 0 + 0", found.counts("exports/c/1.csv"));
    assertBody(found, "take_home_kg", "203.000");
    assertEquals(2, found.rows("notices", "code=rows-equal").size());
  }

  @Test
  void otherContentUnderOneIdentitySetsAllAside() {
    var found = byIdentity("05T11:00 B1 pack rump 1.0\n05T11:00 B1 pack rump 1.2 ticket=77\n");
    assertEquals("2 = 0 + 0 + 0 + 2", found.counts("exports/c/0.csv"));
    assertEquals("held row-set-aside", found.state("B1"));
  }

  @Test
  void oneVoidCancelsOneOfEqualRows() {
    String row = "05T11:00 B1 pack rump 1.0";
    var found = byIdentity((row + '\n').repeat(3) + row + " status=void\n");
    assertEquals("4 = 2 + 0 + 2 + 0", found.counts("exports/c/0.csv"));
    assertBody(found, "take_home_kg", "202.000");
  }

  @Test
  void aNetOfZeroIsSetAsideUnlessItIsATest() {
    scene.simpleBody().set("bins=partly");
    scene.weigh(
        """
        05T11:00 B1 pack rump 0.000
        05T11:01 -  test -    0.000
        """);
    var found = scene.at(LATER);
    assertEquals("8 = 7 + 0 + 0 + 1", found.counts());
    assertEquals("hold", found.notice("net-zero", "severity"));
    assertEquals("held row-set-aside", found.state("B1"));
  }

  @Test
  void aCorrectionOfAFieldOfTheIdentityMakesAnotherWeighing() {
    scene.correct("bench", "7", "net", "1.5", "05");
    scene.file("exports/c/layout.properties", "identity=time,body,code,net");
    scene.simpleBody().set("bins=partly");
    scene.weigh(
        "exports/c/0.csv",
        """
        05T11:00 B1 pack rump 1.0 ticket=7
        05T11:00 B1 pack rump 1.0 ticket=8
        """);
    var found = scene.at(LATER);
    assertEquals("2 = 2 + 0 + 0 + 0", found.counts("exports/c/0.csv"));
    assertBody(found, "take_home_kg", "202.500");
  }

  private Found withBarcode(String code, String net) {
    scene.simpleBody().set("bins=partly").weigh("06T10:00 B1 pack rump 0.5");
    scene.file("exports/c/layout.properties", "identity=barcode,time");
    scene.file(
        "exports/c/a.csv",
        "scale,time,body,code,barcode,net",
        "bench,2026-03-05T11:00,B1,pack.rump," + code + "," + net);
    return scene.at(LATER);
  }

  @Test
  void aBarcodeAndAColumnMayDifferByADivision() {
    assertBody(withBarcode("(3102)000125", "1.26"), "take_home_kg", "201.760");
  }

  @Test
  void aBarcodeAndAColumnThatDifferByMoreSetTheRowAside() {
    var found = withBarcode("(3102)000125", "1.27");
    assertEquals("1 = 0 + 0 + 0 + 1", found.counts("exports/c/a.csv"));
    assertEquals("hold", found.notice("net-disagrees", "severity"));
  }

  @Test
  void twoWeightsInOneBarcodeMayOnlyDifferByADivision() {
    assertBody(withBarcode("(3102)000125(3202)000276", ""), "take_home_kg", "201.750");
  }

  @Test
  void twoWeightsInOneBarcodeThatDifferByMoreSetTheRowAside() {
    var found = withBarcode("(3102)000125(3202)000286", "");
    assertEquals("1 = 0 + 0 + 0 + 1", found.counts("exports/c/a.csv"));
  }

  @Test
  void aCorrectedWeightStandsAgainstTheBarcode() {
    scene.correct("bench", "exports/c/a.csv:2", "net", "1.27", "06");
    assertBody(withBarcode("(3102)000125", "1.37"), "take_home_kg", "201.770");
  }
}
