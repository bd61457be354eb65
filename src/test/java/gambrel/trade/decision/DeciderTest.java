package gambrel.trade.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Where a body stands, and from which minute on. */
class DeciderTest extends DecisionScene {
  private static final String BODIES = "body,species,killed,customer,outcome";

  private State state(String asOf) {
    return decision(asOf).state();
  }

  /** 294 into the boning room, 200 packed: 94 missing where 8.82 may be. */
  private void partCut() {
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 300
        03T10:00 B1 cold carcase 294
        05T10:00 B1 pack rump    200
        """);
  }

  @Test
  void quietHoursEndSixHoursAfterTheLastWeighing() {
    scene.simpleBody();
    assertEquals(new Decision(State.OPEN, List.of(), List.of()), decision("05T16:29"));
    assertEquals(new Decision(State.ISSUED, List.of(), List.of()), decision("05T16:30"));
  }

  @Test
  void aPackOfOffalBeginsTheQuietHoursAgain() {
    scene.simpleBody().weigh("05T12:00 B1 pack liver 6");
    assertEquals(State.OPEN, state("05T17:59"));
    assertEquals(State.ISSUED, state("05T18:00"));
  }

  @Test
  void aPieceOnTheBlockIsNoEndProduct() {
    scene.weigh(
        """
        02T10:00 B1 hot   carcase     300
        03T10:00 B1 cold  carcase     294
        05T10:00 B1 block hindquarter 140
        """);
    assertEquals(State.OPEN, state("20T02:00"));
  }

  @Test
  void cuttingDaysEndFourTimesTwentyFourHoursAfterTheLastCut() {
    partCut();
    var open = decision("09T09:59");
    assertEquals(State.OPEN, open.state());
    assertEquals(List.of("PART_CUT"), named(open.reasons()));
    var held = decision("09T10:00");
    assertEquals(State.HELD, held.state());
    assertEquals(List.of("LOSS_HIGH"), named(held.reasons()));
  }

  @Test
  void theShopSetsItsCuttingDays() {
    scene.set("cutting_days=1");
    partCut();
    assertEquals(State.OPEN, state("06T09:59"));
    assertEquals(State.HELD, state("06T10:00"));
  }

  @Test
  void aLossWithinTheLimitIsNotPartCut() {
    // 3 % of 294 is 8.82: 285.18 packed
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 300
        03T10:00 B1 cold carcase 294
        05T10:00 B1 pack rump    285.18
        """);
    assertEquals(State.ISSUED, state("05T16:00"));
  }

  @Test
  void aGainIsNotPartCut() {
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 300
        03T10:00 B1 cold carcase 294
        05T10:00 B1 pack rump    300
        """);
    assertEquals(List.of("LOSS_NEGATIVE"), named(decision("05T16:00").reasons()));
    assertEquals(State.HELD, state("05T16:00"));
  }

  @Test
  void aBatchWithoutADueDateKeepsItsBodiesOpen() {
    scene.simpleBody().weigh("05T10:40 B1 tub trim 0.01 batch=M1");
    var open = decision("06T00:00");
    assertEquals(State.OPEN, open.state());
    assertEquals(List.of("BATCH_OPEN M1"), named(open.reasons()));
    assertEquals("M1", open.reasons().get(0).text("batch"));
  }

  @Test
  void aLateBatchHoldsItsBodies() {
    scene.simpleBody().weigh("05T10:40 B1 tub trim 0.01 batch=M1");
    assertEquals(List.of("BATCH_OPEN M1"), named(decision("19T10:40").reasons()));
    var held = decision("19T10:41");
    assertEquals(State.HELD, held.state());
    assertEquals(List.of("BATCH_LATE M1"), named(held.reasons()));
    assertEquals("M1", held.reasons().get(0).text("batch"));
  }

  @Test
  void aBatchWithADueDateAheadDoesNotKeepItsBodiesOpen() {
    scene.file("batches.csv", "batch,product,due", "M1,Ham,2026-04-30");
    scene.simpleBody().weigh("05T10:40 B1 tub trim 0.01 batch=M1");
    assertEquals(State.ISSUED, state("06T00:00"));
  }

  @Test
  void aFinishedBatchDoesNotKeepItsBodiesOpen() {
    scene
        .simpleBody()
        .weigh("05T10:40 B1 tub trim 0.01 batch=M1\n05T10:50 - pack mince 0.01 batch=M1");
    assertEquals(State.ISSUED, state("06T00:00"));
  }

  @Test
  void theShopsOwnBodyIsClosed() {
    scene.file("bodies.csv", BODIES, "B1,beef,2026-03-02,,").simpleBody();
    assertEquals(State.CLOSED, state("20T02:00"));
  }

  @Test
  void theShopsOwnBodyWithAPackForACustomerIsIssued() {
    scene.file("bodies.csv", BODIES, "B1,beef,2026-03-02,,").simpleBody();
    scene.weigh("05T10:40 B1 pack rump 0.01 customer=bob");
    assertEquals(State.ISSUED, state("20T02:00"));
  }

  @Test
  void aBodyLeftWholeIsFinishedQuietHoursAfterItsLastRailWeighing() {
    scene.file("bodies.csv", BODIES, "B1,beef,2026-03-02,ann,whole");
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 300
        03T10:00 B1 cold carcase 294
        03T14:00 B1 pack liver     6
        """);
    assertEquals(State.OPEN, state("03T15:59"));
    assertEquals(State.ISSUED, state("03T16:00"));
  }

  @Test
  void aBodyLeftWholeThatWasNeverWeighedIsOpen() {
    scene.file("bodies.csv", BODIES, "B1,beef,2026-03-02,ann,whole");
    assertEquals(State.OPEN, state("20T02:00"));
  }

  @Test
  void aBodyLeftWholeHasNoLossTest() {
    scene.file("bodies.csv", BODIES, "B1,beef,2026-03-02,ann,whole");
    scene.weigh("02T10:00 B1 hot carcase 300\n03T10:00 B1 cold carcase 200");
    assertEquals(State.ISSUED, state("20T02:00"));
  }

  @Test
  void aCancelledBodyWaitsForNothing() {
    scene.file("bodies.csv", BODIES, "B1,beef,2026-03-02,ann,cancelled");
    scene.file("shares.csv", "body,customer,share", "B1,ann,1/2");
    assertEquals(new Decision(State.CANCELLED, List.of(), List.of()), decision());
  }

  @Test
  void closingPutsAnOpenBodyToTheTest() {
    partCut();
    scene.release("B1", "close", "05T12:00");
    assertEquals(List.of("PART_CUT"), named(decision("05T11:59").reasons()));
    assertEquals(List.of("LOSS_HIGH"), named(decision("05T12:00").reasons()));
  }

  @Test
  void onlyAWeighingAfterTheCloseOpensABodyAgain() {
    scene.simpleBody().release("B1", "close", "05T10:30");
    assertEquals(State.ISSUED, state("05T10:30"));
    scene.weigh("05T10:31 B1 pack rump 0.01");
    assertEquals(State.OPEN, state("05T10:31"));
  }

  @Test
  void theLaterOfTwoClosesCounts() {
    scene.simpleBody().release("B1", "close", "05T10:15").release("B1", "close", "05T11:00");
    assertEquals(State.ISSUED, state("05T11:00"));
  }

  @Test
  void onlySettledBodiesNeedNoPerson() {
    assertEquals(
        List.of(State.ISSUED, State.CLOSED),
        List.of(State.values()).stream().filter(State::isSettled).toList());
    assertEquals("cancelled", State.CANCELLED.id());
  }
}
