package gambrel.trade.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.scenes.FiguresTest;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** What went into a batch and what came out. */
class BatchBalanceTest extends FiguresTest {

  private BatchBalance batch(String weighings) {
    return batch(weighings, "20T02:00");
  }

  private BatchBalance batch(String weighings, String asOf) {
    scene.weigh(weighings);
    return scene.reckon(asOf).batches().get("M1");
  }

  private static String tub(String net) {
    return "05T10:00 B1 tub trim " + net + " batch=M1\n";
  }

  private static String pack(String net) {
    return "05T12:00 - pack mince " + net + " batch=M1\n";
  }

  @Test
  void theLossIsOfAllThatWentIn() {
    var batch = batch(tub("90") + "05T11:00 - added - 10 batch=M1\n" + pack("99"));
    assertEquals(kg("90"), batch.meatIn());
    assertEquals(kg("10"), batch.added());
    assertEquals(kg("99"), batch.out());
    assertEquals(known("1"), batch.loss());
    assertEquals(share("1", "100"), batch.lossShare());
    assertEquals(BatchBalance.State.BALANCED, batch.state());
    assertEquals(BigFraction.of(3, 30_000), batch.uncertaintySquared());
  }

  @Test
  void onlyTheMeatOfTheOutputIsDivided() {
    var batch = batch(tub("90") + "05T11:00 - added - 10 batch=M1\n" + pack("99"));
    // 99 * 90 / 100
    assertEquals(kg("89.1"), batch.partOf("B1"));
    assertEquals(kg("90"), batch.meatInOf("B1"));
    assertEquals(kg("0"), batch.partOf("B2"));
    assertEquals(kg("0"), batch.meatInOf("B2"));
  }

  @Test
  void aTubWithoutABodyIsTheShops() {
    var batch = batch(tub("60") + "05T10:01 - tub trim 40 batch=M1\n" + pack("100"));
    assertEquals(kg("40"), batch.meatInOf("shop"));
    assertEquals(kg("40"), batch.partOf("shop"));
    assertEquals(kg("60"), batch.partOf("B1"));
  }

  @Test
  void noBodyGetsMoreMeatThanItPutIn() {
    var batch = batch(tub("60") + pack("60.010"));
    assertEquals(kg("60"), batch.partOf("B1"));
  }

  @Test
  void aLossOfExactlyTheLimitBalances() {
    scene.set("limit.batch_loss_pct=5");
    assertEquals(BatchBalance.State.BALANCED, batch(tub("100") + pack("95")).state());
  }

  @Test
  void aLossAboveTheLimitIsOut() {
    scene.set("limit.batch_loss_pct=5");
    assertEquals(BatchBalance.State.OUT, batch(tub("100") + pack("94.99")).state());
  }

  @Test
  void aGainWithinItsUncertaintyBalances() {
    // U = sqrt(2 * 0.0001 / 3) = 0.0082
    assertEquals(BatchBalance.State.BALANCED, batch(tub("100") + pack("100.008")).state());
  }

  @Test
  void aGainBeyondItsUncertaintyIsOut() {
    assertEquals(BatchBalance.State.OUT, batch(tub("100") + pack("100.010")).state());
  }

  @Test
  void withGainTheSurplusCountsAsAdded() {
    scene.file("batches.csv", "batch,product,gain", "M1,Ham,yes");
    var batch = batch(tub("100") + pack("110"));
    assertEquals(kg("10"), batch.added());
    assertEquals(known("0"), batch.loss());
    assertEquals(kg("100"), batch.partOf("B1"));
  }

  @Test
  void withoutMeatItIsOutAndHasNoPart() {
    var batch = batch("05T11:00 - added - 10 batch=M1\n" + pack("9"));
    assertEquals(BatchBalance.State.OUT, batch.state());
    assertTrue(batch.partByBody().isEmpty());
  }

  @Test
  void withoutAPackItIsOpen() {
    var batch = batch(tub("100"), "06T02:00");
    assertTrue(batch.isOpen());
    assertEquals(Optional.empty(), batch.loss());
    assertEquals(Optional.empty(), batch.lossShare());
    assertFalse(batch.late());
    assertTrue(batch.partByBody().isEmpty());
  }

  @Test
  void itIsOpenUntilTheQuietHoursHavePassed() {
    scene.set("quiet_hours=12");
    assertTrue(batch(tub("100") + pack("99"), "05T23:59").isOpen());
    assertFalse(scene.reckon("06T00:00").batches().get("M1").isOpen());
  }

  @Test
  void withoutADueDateItIsLateFourteenDaysAfterItsLastRow() {
    assertFalse(batch(tub("100"), "19T10:00").late());
    assertTrue(scene.reckon("19T10:01").batches().get("M1").late());
  }

  @Test
  void itIsLateFromTheDayAfterItIsDue() {
    scene.file("batches.csv", "batch,product,due", "M1,Ham,2026-03-07");
    assertFalse(batch(tub("100"), "07T23:00").late());
    assertTrue(scene.reckon("08T00:00").batches().get("M1").late());
  }

  @Test
  void aFinishedBatchIsNeverLate() {
    assertFalse(batch(tub("100") + pack("99")).late());
  }

  @Test
  void withGainALossIsStillALoss() {
    scene.file("batches.csv", "batch,product,gain", "M1,Ham,yes");
    var batch = batch(tub("100") + pack("95"));
    assertEquals(kg("0"), batch.added());
    assertEquals(known("5"), batch.loss());
    assertEquals(kg("95"), batch.partOf("B1"));
  }

  @Test
  void withGainTheSurplusIsAddedToWhatWasWeighedIn() {
    scene.file("batches.csv", "batch,product,gain", "M1,Ham,yes");
    var batch = batch(tub("90") + "05T11:00 - added - 10 batch=M1\n" + pack("110"));
    assertEquals(kg("20"), batch.added());
    assertEquals(known("0"), batch.loss());
    assertEquals(kg("90"), batch.partOf("B1"));
  }

  @Test
  void aGainOfExactlyItsUncertaintyBalances() {
    // three rows with division 0.3: U = 0.3
    scene.file("scales.csv", "scale,division,class", "bench,0.3,");
    var rows = tub("50") + "05T10:01 B1 tub trim 50 batch=M1\n";
    assertEquals(BatchBalance.State.BALANCED, batch(rows + pack("100.3")).state());
    scene.correct("bench", "3", "net", "100.30001", "06");
    assertEquals(BatchBalance.State.OUT, scene.reckon("20T02:00").batches().get("M1").state());
  }

  @Test
  void theMeatPartIsRoundedHalfUp() {
    // 0.001 · 1 / (1 + 1)
    var batch = batch(tub("1") + "05T11:00 - added - 1 batch=M1\n" + pack("0.001"));
    assertEquals(kg("0.001"), batch.partOf("B1"));
    assertEquals(kg("0.001"), batch.meatOut());
  }

  @Test
  void bodiesDivideTheMeatByWhatEachPutIn() {
    scene.body("B2,beef,2026-03-02,ann");
    var batch = batch(tub("1") + "05T10:01 B2 tub trim 1 batch=M1\n" + pack("1.999"));
    assertEquals(kg("1"), batch.partOf("B1"));
    assertEquals(kg("0.999"), batch.partOf("B2"));
    assertEquals(kg("1.999"), batch.meatOut());
    assertEquals(kg("2"), batch.meatIn());
  }

  @Test
  void aPackAloneHasNoLossShare() {
    var batch = batch(pack("10"));
    assertEquals(BatchBalance.State.OUT, batch.state());
    assertEquals(Optional.empty(), batch.lossShare());
    assertEquals(known("-10"), batch.loss());
  }

  @Test
  void theLimitIsItsPercentageOfAllThatWentIn() {
    scene.set("limit.batch_loss_pct=8");
    var batch = batch(tub("90") + "05T11:00 - added - 10 batch=M1\n" + pack("99"));
    assertEquals(BigFraction.of(8), batch.limit());
  }

  @Test
  void itsRowsAreListedEarliestFirst() {
    var batch = batch(pack("99") + tub("100"));
    assertEquals(
        List.of("tub", "pack"), batch.weighings().stream().map(w -> w.step().id()).toList());
    assertEquals("M1", batch.batch().id());
  }

  @Test
  void anyRowBeginsTheQuietHoursAgain() {
    var rows = tub("100") + pack("99") + "05T20:00 - added - 1 batch=M1\n";
    assertTrue(batch(rows, "06T01:59").isOpen());
    assertFalse(scene.reckon("06T02:00").batches().get("M1").isOpen());
  }

  @Test
  void theStateIsPrintedAsAWord() {
    assertEquals("balanced", BatchBalance.State.BALANCED.id());
  }

  @Test
  void whatWasAddedGoesWithTheMeatOfEachBody() {
    scene.body("B2,beef,2026-03-02,ann");
    var rows = tub("60") + "05T10:01 B2 tub trim 30 batch=M1\n05T11:00 - added - 10 batch=M1\n";
    // Nine tenths of 99 are meat.
    var batch = batch(rows + pack("99"));
    assertEquals(kg("9.9"), batch.addedOut());
    assertEquals(kg("6.6"), batch.addedOutOf("B1"));
    assertEquals(kg("3.3"), batch.addedOutOf("B2"));
    assertEquals(kg("0"), batch.addedOutOf("B3"));
  }

  @Test
  void nothingIsAddedToTheOutputWhileItIsPacked() {
    var batch = batch(tub("90") + "05T11:00 - added - 10 batch=M1\n" + pack("99"), "05T17:59");
    assertEquals(kg("0"), batch.addedOut());
    assertEquals(kg("0"), batch.addedOutOf("B1"));
  }

  @Test
  void whereNoMeatWentInNobodyHasAPartOfWhatWasAdded() {
    var batch = batch(tub("0") + "05T11:00 - added - 10 batch=M1\n" + pack("9"));
    assertEquals(kg("9"), batch.addedOut());
    assertEquals(kg("0"), batch.addedOutOf("B1"));
  }

  @Test
  void itsPacksAreCounted() {
    assertEquals(2, batch(tub("90") + pack("40") + pack("49")).packs());
  }
}
