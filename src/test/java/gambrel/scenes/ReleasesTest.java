package gambrel.scenes;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What a person's word in {@code releases.csv} does, and what it does not. */
class ReleasesTest extends SceneTest {

  private void tooHeavy() {
    scene.simpleBody().weigh("05T10:40 B1 pack rump 5");
  }

  @Test
  void aReleaseSendsAHeldStatementAsItStands() {
    tooHeavy();
    scene.release("B1", "release", "07T09:00");
    assertEquals("held loss-negative", scene.at("07T08:59").state("B1"));
    var found = scene.at("07T09:00");
    assertEquals("issued", found.state("B1"));
    assertEquals("205.000", found.statement("ann", "B1", "take_home_kg"));
    assertEquals(0, found.exit());
  }

  @Test
  void aReleaseIsTheActionWhereNoneIsNamed() {
    tooHeavy();
    scene.release("B1", "", "07");
    assertEquals("issued", scene.at(LATER).state("B1"));
  }

  @Test
  void aReleaseDoesNotCoverAReasonThatCameLater() {
    tooHeavy();
    scene.release("B1", "release", "07").weigh("08T10:00 B1 pack rump x");
    assertEquals("held row-set-aside", scene.at(LATER).state("B1"));
  }

  @Test
  void aReleaseDoesNotCoverAnotherReasonOfTheSameKind() {
    scene.simpleBody().weigh("05T10:40 B1 pack rump x ticket=71");
    scene.release("B1", "release", "07");
    assertEquals("issued", scene.at(LATER).state("B1"));
    scene.weigh("08T10:40 B1 pack rump x ticket=72");
    assertEquals("held row-set-aside", scene.at(LATER).state("B1"));
  }

  @Test
  void aReleaseLooksAtTodaysFolderAtItsOwnMoment() {
    // Entered on the 9th, the weighing of the 5th belongs to what was released on the 7th.
    tooHeavy();
    scene.release("B1", "release", "07").weigh("06T10:00 B1 pack rump 5");
    assertEquals("issued", scene.at(LATER).state("B1"));
  }

  @Test
  void aReleaseBeforeAnythingIsHeldCoversNothingAndIsMarked() {
    tooHeavy();
    scene.release("B1", "release", "04");
    var found = scene.at(LATER);
    assertEquals("held loss-negative", found.state("B1"));
    assertEquals("mark", found.notice("release-unused", "severity"));
  }

  @Test
  void closingEndsAnOpenBodyAtOnce() {
    scene.simpleBody().release("B1", "close", "05T11:00");
    assertEquals("open", scene.at("05T10:59").state("B1"));
    assertEquals("issued", scene.at("05T11:00").state("B1"));
  }

  @Test
  void closingAPartCutBodyPutsItToTheTest() {
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 300
        03T10:00 B1 cold carcase 294
        05T10:00 B1 pack rump    150
        """);
    scene.release("B1", "close", "05T18:00");
    assertEquals("held loss-high", scene.at("05T18:00").state("B1"));
  }

  @Test
  void reissuingMakesARevisionWithTodaysChargesOnce() {
    scene.simpleBody();
    scene.file("charges.csv", "charge,description,basis,price", "kill,Kill,head,50");
    assertEquals("50.00", scene.nextNight("06T00:00").statement("ann", "B1", "charges"));

    scene.file("charges.csv", "charge,description,basis,price", "kill,Kill,head,60");
    var unchanged = scene.nextNight("07T00:00");
    assertEquals("1", unchanged.statement("ann", "B1", "revision"));
    assertEquals("50.00", unchanged.statement("ann", "B1", "charges"));

    scene.release("B1", "reissue", "07T12:00");
    var reissued = scene.nextNight("08T00:00");
    assertEquals("2", reissued.statement("ann", "B1", "revision"));
    assertEquals("60.00", reissued.statement("ann", "B1", "charges"));
    assertEquals("2", scene.nextNight("09T00:00").statement("ann", "B1", "revision"));
  }

  @Test
  void aChangedWeightIsARevisionAndTheOldFileStays() {
    scene.simpleBody();
    scene.nextNight("06T00:00");
    scene.correct("bench", "3", "net", "119", "06T12:00");
    var found = scene.nextNight("07T00:00");
    assertEquals("2", found.statement("ann", "B1", "revision"));
    assertEquals("1", found.statement("ann", "B1", "replaces"));
    assertEquals("2026-03-07T00:00:00", found.statement("ann", "B1", "issued"));
    assertEquals(
        List.of(
            "morning.pdf",
            "statements/ann/B1-r1.pdf",
            "statements/ann/B1-r2.pdf",
            "summaries/2026-03.pdf",
            "to-print.pdf"),
        found.documents());
  }

  @Test
  void pricesNamesPaymentsAndComparisonsDoNotRevise() {
    scene.simpleBody();
    scene.nextNight("06T00:00");
    scene.set("name=Other").file("customers.csv", "customer,name,language", "ann,Anne,de");
    scene.file("charges.csv", "charge,description,basis,price", "kill,Kill,head,50");
    scene.file("payments.csv", "customer,body,date,amount", "ann,B1,2026-03-06,50");
    scene.body("B2,beef,2026-03-03,ann,600");
    assertEquals("1", scene.nextNight("07T00:00").statement("ann", "B1", "revision"));
  }

  @Test
  void anIssuedBodyWhoseNewFiguresFailIsHeldAndItsLastRevisionStands() {
    scene.simpleBody();
    scene.nextNight("06T00:00");
    scene.weigh("06T10:00 B1 pack rump 5");
    var found = scene.nextNight("07T00:00");
    assertEquals("held loss-negative", found.state("B1"));
    assertEquals("1", found.statement("ann", "B1", "revision"));
    assertEquals(true, found.documents().contains("held/ann/B1.pdf"));
  }

  @Test
  void moreRevisionsThanTheShopAllowsStopThemAll() {
    scene.simpleBody().set("limit.revisions=1");
    scene.file("shares.csv", "body,customer,share", "B1,ann,1/2", "B1,bob,1/2");
    scene.nextNight("06T00:00");
    scene.correct("bench", "3", "net", "119", "06T12:00");
    var found = scene.nextNight("07T00:00");
    assertEquals("stop", found.notice("revisions-stopped", "severity"));
    assertEquals("1", found.statement("ann", "B1", "revision"));
    assertEquals("issued", found.state("B1"));
    assertEquals(1, found.exit());
    scene.set("limit.revisions=2");
    assertEquals("2", scene.nextNight("08T00:00").statement("bob", "B1", "revision"));
  }

  @Test
  void aReleaseCoversWhatAScaleLeftInDoubt() {
    scene.add("codes.csv", "t20,,test,20,,").simpleBody();
    scene.weigh("05T11:00 - - - 21 code=t20").release("B1", "release", "07");
    assertEquals("held scale-failed", scene.at("06T00:00").state("B1"));
    assertEquals("issued", scene.at("08T00:00").state("B1"));
  }

  /** No good test is between the body and the second failure either. */
  @Test
  void aReleaseDoesNotCoverALaterFailureOfTheSameScale() {
    scene.add("codes.csv", "t20,,test,20,,").simpleBody();
    scene.weigh("05T11:00 - - - 21 code=t20").release("B1", "release", "07");
    scene.weigh("09T11:00 - - - 22 code=t20");
    assertEquals("issued", scene.at("08T00:00").state("B1"));
    assertEquals("held scale-failed", scene.at("10T00:00").state("B1"));
  }

  @Test
  void aReleaseDatedLaterHasNoEffectYet() {
    tooHeavy();
    scene.release("B1", "release", "2026-04-01");
    assertEquals("held loss-negative", scene.at(LATER).state("B1"));
  }

  @Test
  void closingDoesNotReleaseWhatFails() {
    tooHeavy();
    scene.release("B1", "close", "05T11:00");
    assertEquals("held loss-negative", scene.at("05T11:00").state("B1"));
  }

  @Test
  void aHeldBodyThatIsPutRightIsIssuedAndItsDraftGoes() {
    tooHeavy();
    scene.nextNight("06T00:00");
    scene.correct("bench", "7", "status", "void", "06T12:00");
    var found = scene.nextNight("07T00:00");
    assertEquals(
        List.of("morning.pdf", "statements/ann/B1-r1.pdf", "summaries/2026-03.pdf", "to-print.pdf"),
        found.documents());
  }

  @Test
  void closingHoldsUntilSomethingIsWeighedAgain() {
    scene.simpleBody().release("B1", "close", "05T11:00").weigh("05T12:00 B1 pack liver 6");
    assertEquals("issued", scene.at("05T11:59").state("B1"));
    assertEquals("open", scene.at("05T12:00").state("B1"));
  }

  @Test
  void closingABodyOfWhichNothingIsPackedHasNoEffectAndIsMarked() {
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 300
        02T12:00 B1 pack liver     6
        02T13:00 B1 bin  fat       2
        03T10:00 B1 cold carcase 292
        """);
    scene.release("B1", "close", "04");
    var found = scene.at(LATER);
    assertEquals("open", found.state("B1"));
    assertEquals("mark", found.notice("release-unused", "severity"));
  }

  @Test
  void aReleaseOfWhatCannotBeReleasedIsMarked() {
    scene.simpleBody().file("shares.csv", "body,customer,share", "B1,ann,1/2");
    scene.release("B1", "release", "07");
    var found = scene.at(LATER);
    assertEquals("held shares", found.state("B1"));
    assertEquals("mark", found.notice("release-unused", "severity"));
  }

  @Test
  void aReleaseWithAnOffsetIsTakenAtTheShopsOwnClock() {
    // On the morning of the 6th in Auckland it is the 5th in UTC, the day that the batch is due.
    scene.simpleBody().weigh("05T10:40 B1 tub trim 1 batch=H1");
    scene.correct("bench", "3", "net", "119", "05");
    scene.file("batches.csv", "batch,product,due", "H1,ham,2026-03-05");
    scene.release("B1", "release", "2026-03-06T10:00+13:00");
    assertEquals("held batch-late", scene.at("08T00:00").state("B1"));
  }

  @Test
  void countsOfABatchThatIsStillOpenDoNotRevise() {
    scene.body("B2,beef,2026-03-02,bob").simpleBody();
    scene.file("batches.csv", "batch,product,due", "H1,ham,2026-03-30");
    scene.weigh("05T10:40 B1 tub trim 1 batch=H1").correct("bench", "3", "net", "119", "05");
    scene.nextNight("06T00:00");
    scene.weigh("07T10:00 B2 tub trim 1 batch=H1");
    assertEquals("1", scene.nextNight("08T00:00").statement("ann", "B1", "revision"));
    scene.weigh("09T10:00 - pack mince 2 batch=H1");
    assertEquals("2", scene.nextNight("10T00:00").statement("ann", "B1", "revision"));
  }
}
