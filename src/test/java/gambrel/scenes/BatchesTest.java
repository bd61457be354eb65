package gambrel.scenes;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Mince, sausages and hams: trim in, packs out, and what is each body's. */
class BatchesTest extends SceneTest {

  private void assertBatch(Found found, String batch, String expected) {
    var row = found.rows("batches", "batch=" + batch).get(0);
    assertEquals(
        expected,
        String.join(
            " ",
            row.get("meat_in_kg"),
            row.get("added_kg"),
            row.get("out_kg"),
            row.get("loss_kg"),
            row.get("loss_pct"),
            row.get("state")));
  }

  @Test
  void theMeatOfABatchIsItsOutputLessWhatWasAdded() {
    scene.weigh(
        """
        05T10:00 B1 tub   trim     100 batch=M1
        05T11:00 -  added -         10 batch=M1
        05T12:00 -  pack  sausages 104 batch=M1
        """);
    var found = scene.at(LATER);
    assertBatch(found, "M1", "100.000 10.000 104.000 6.000 5.455 balanced");
    // 104 · 100 / 110
    assertBody(found, "take_home_kg", "94.545");
    assertBody(found, "meat_home_kg", "94.545");
    assertBody(found, "batch_loss_kg", "5.455");
  }

  @Test
  void theMeatIsDividedByWhatEachBodyPutIn() {
    scene.body("B2,beef,2026-03-02,ann");
    scene.weigh(
        """
        05T10:00 B1 tub  trim   0.6 batch=M1
        05T10:01 B1 tub  trim   0.6 batch=M1
        05T10:02 B2 tub  trim   0.8 batch=M1
        05T12:00 -  pack mince  1.999 batch=M1
        """);
    var found = scene.at(LATER);
    // 60 and 40 % of 1.999 are 1.1994 and 0.7996: the larger remainder is B2's.
    assertBody(found, "take_home_kg", "1.199");
    assertEquals("0.800", found.body("B2", "take_home_kg"));
    assertBody(found, "batch_loss_kg", "0.001");
  }

  @Test
  void aPackThatNamesABatchIsBatchOutputWhateverBodyItNames() {
    scene.simpleBody();
    scene.weigh(
        """
        05T10:40 B1 tub  trim  10 batch=M1
        05T12:00 B1 pack mince 10 batch=M1
        """);
    var found = scene.at(LATER);
    assertBody(found, "take_home_kg", "210.000");
    assertEquals(List.of(), found.rows("cuts", "item=mince", "weight_kg=90.000"));
  }

  @Test
  void aTubOfNoBodyIsTheShopsMeat() {
    scene.weigh(
        """
        05T10:00 B1 tub  trim  60 batch=M1
        05T10:05 -  tub  trim  40 batch=M1
        05T12:00 -  pack mince 99 batch=M1
        """);
    var found = scene.at(LATER);
    assertBatch(found, "M1", "100.000 0.000 99.000 1.000 1.000 balanced");
    assertBody(found, "take_home_kg", "59.400");
  }

  @Test
  void boughtInFatIsNeverMeatYield() {
    scene.weigh(
        """
        05T10:00 B1 tub   trim     50 batch=M1
        05T11:00 -  added fat      50 batch=M1
        05T12:00 -  pack  sausages 98 batch=M1
        """);
    assertBody(scene.at(LATER), "take_home_kg", "49.000");
  }

  @Test
  void outputWithinTheUncertaintyAboveTheInputGivesNoMoreThanWentIn() {
    // U = 2·√(2·0.3²/12) = 0.245
    scene.file("scales.csv", "scale,division,class", "bench,0.3,");
    scene.weigh(
        """
        05T10:00 B1 tub  trim  100    batch=M1
        05T12:00 -  pack mince 100.24 batch=M1
        """);
    var found = scene.at(LATER);
    assertBatch(found, "M1", "100.000 0.000 100.240 -0.240 -0.240 balanced");
    assertBody(found, "take_home_kg", "100.000");
    assertBody(found, "batch_loss_kg", "0.000");
  }

  @Test
  void outputBeyondTheUncertaintyAboveTheInputIsOutAndHolds() {
    scene.file("scales.csv", "scale,division,class", "rail,0.01,", "bench,0.3,");
    scene.simpleBody();
    scene.weigh(
        """
        05T10:00 B1 tub  trim  100    batch=M1
        05T12:00 -  pack mince 100.25 batch=M1
        """);
    scene.set("bins=partly");
    var found = scene.at(LATER);
    assertEquals("out", found.cell("batches", "state"));
    assertEquals("held batch-out", found.state("B1"));
  }

  @Test
  void aBatchMayLoseEightPerCent() {
    batchThatGives("92.00");
    assertEquals("balanced", scene.at(LATER).cell("batches", "state"));
  }

  @Test
  void aBatchThatLosesMoreIsOut() {
    batchThatGives("91.99");
    assertEquals("out", scene.at(LATER).cell("batches", "state"));
    scene.set("limit.batch_loss_pct=9");
    assertEquals("balanced", scene.at(LATER).cell("batches", "state"));
  }

  private void batchThatGives(String out) {
    scene.weigh(
        """
        05T10:00 B1 tub  trim  100 batch=M1
        05T12:00 -  pack mince %s  batch=M1
        """
            .formatted(out));
  }

  @Test
  void aBatchWithoutMeatIsOutAndGivesNobodyAPart() {
    scene.weigh(
        """
        05T11:00 -  added fat      50 batch=M1
        05T12:00 -  pack  sausages 50 batch=M1
        """);
    assertBatch(scene.at(LATER), "M1", "0.000 50.000 50.000 0.000 0.000 out");
  }

  @Test
  void aBatchIsOpenUntilItIsPackedAndQuiet() {
    batchThatGives("99");
    assertBatch(scene.at("05T11:59"), "M1", "100.000 0.000 0.000   open");
    assertBatch(scene.at("05T17:59"), "M1", "100.000 0.000 99.000   open");
    assertBatch(scene.at("05T18:00"), "M1", "100.000 0.000 99.000 1.000 1.000 balanced");
  }

  @Test
  void aBodyWaitsForItsOpenBatchThatHasNoDueDate() {
    scene.simpleBody().weigh("05T10:40 B1 tub trim 5 batch=M1").set("bins=partly");
    assertEquals("open batch-open", scene.at("07T00:00").state("B1"));
    assertBody(scene.at("07T00:00"), "batch_loss_kg", "");
  }

  @Test
  void anOpenBatchIsLateMoreThanFourteenDaysAfterItsLastRow() {
    scene.simpleBody().weigh("05T10:40 B1 tub trim 5 batch=M1").set("bins=partly");
    assertEquals("open batch-open", scene.at("19T10:40").state("B1"));
    var found = scene.at("19T10:41");
    assertEquals("held batch-late", found.state("B1"));
    assertEquals("hold", found.notice("batch-late", "severity"));
  }

  @Test
  void aHamThatTakesWeeksDoesNotHoldUpTheRest() {
    scene.set("bins=partly").body("P1,pork,2026-03-02,ann,110");
    scene.file("batches.csv", "batch,product,gain,due", "H1,Ham,yes,2026-03-25");
    scene.weigh(
        """
        02T10:00 P1 hot  carcase 50
        03T10:00 P1 cold carcase 49
        05T10:00 P1 pack loin    20
        05T10:05 P1 tub  leg     10 batch=H1
        """);
    var first = scene.nextNight("06T00:00");
    assertEquals("issued", first.state("P1"));
    assertEquals("20.000", first.statement("ann", "P1", "take_home_kg"));
    assertEquals("open", first.figure("ann", "P1", "batch:H1"));

    scene.weigh("24T10:00 - pack ham 11.2 batch=H1");
    var second = scene.nextNight("25T00:00");
    // 1.2 of brine counts as added: 11.2 · 10 / 11.2
    assertBatch(second, "H1", "10.000 1.200 11.200 0.000 0.000 balanced");
    assertEquals("2", second.statement("ann", "P1", "revision"));
    assertEquals("30.000", second.statement("ann", "P1", "take_home_kg"));
    assertEquals("1", second.statement("ann", "P1", "replaces"));
  }

  @Test
  void aHamPastItsDueDateIsLate() {
    scene.file("batches.csv", "batch,product,gain,due", "H1,Ham,yes,2026-03-25");
    scene.simpleBody().weigh("05T10:40 B1 tub trim 5 batch=H1").set("bins=partly");
    assertEquals("issued", scene.at("25T23:59").state("B1"));
    assertEquals("held batch-late", scene.at("26T00:00").state("B1"));
  }

  @Test
  void aBodyWithoutTubsLosesNothingInBatches() {
    assertBody(scene.simpleBody().at(LATER), "batch_loss_kg", "0.000");
  }

  @Test
  void mixedOwnersAreMarkedUnlessTheShopSaysTheyMayBe() {
    scene.body("B2,beef,2026-03-02,bob").file("batches.csv", "batch,product", "M1,Mince");
    scene.weigh(
        """
        05T10:00 B1 tub  trim  50 batch=M1
        05T10:02 B2 tub  trim  50 batch=M1
        05T12:00 -  pack mince 99 batch=M1
        """);
    assertEquals("mark", scene.at("06T00:00").notice("batch-mixed", "severity"));
    scene.set("allow_mixed_batches=yes");
    assertEquals(List.of(), scene.at("06T00:00").rows("notices", "code=batch-mixed"));
  }

  @Test
  void anUnlistedBatchIsANote() {
    batchThatGives("99");
    assertEquals("note", scene.at(LATER).notice("batch-unlisted", "severity"));
    scene.file("batches.csv", "batch,product", "M1,Mince");
    assertEquals(List.of(), scene.at(LATER).rows("notices", "code=batch-unlisted"));
    assertEquals("Mince", scene.at(LATER).cell("batches", "product"));
  }

  @Test
  void aBodyThatAllWentIntoTubsHasItsFirstEndProductInTheBatch() {
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 102
        03T10:00 B1 cold carcase 100
        05T10:00 B1 tub  trim    100 batch=M1
        06T10:00 -  pack mince    99 batch=M1
        """);
    assertBody(scene.at("06T09:00"), "take_home_kg", "");
    var found = scene.at("06T16:00");
    assertBody(found, "take_home_kg", "99.000");
    assertBody(found, "cutting_loss_kg", "0.000");
    assertEquals("issued", found.state("B1"));
  }

  @Test
  void aRowSetAsideThatNamesABatchHoldsItsBodies() {
    scene.body("B2,beef,2026-03-02,ann").simpleBody();
    scene.weigh(
        """
        05T10:31 B1 tub  trim   1 batch=M1
        05T10:32 -  added -     x batch=M1 ticket=71
        05T12:00 -  pack mince  1 batch=M1
        """);
    scene.correct("bench", "3", "net", "119", "05");
    assertEquals("held row-set-aside", scene.at(LATER).state("B1"));
    assertEquals("open", scene.at(LATER).state("B2"));
    scene.release("B1", "release", "07");
    var found = scene.at(LATER);
    assertEquals("issued", found.state("B1"));
    assertEquals("note", found.notice("number-bad", "severity"));
  }
}
