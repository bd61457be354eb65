package gambrel.trade.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Value;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** The reasons for which a finished body waits, and the values that they keep. */
class JudgeTest extends DecisionScene {

  private Reason reason(ReasonCode code) {
    return decision().reasons().stream()
        .filter(reason -> reason.code() == code)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void everyRailWeightThatTheShopTakesIsExpected() {
    scene.weigh("05T10:00 B1 pack rump 200");
    assertEquals(List.of("RAIL_MISSING cold", "RAIL_MISSING hot"), reasons());
    assertEquals("cold", decision().reasons().get(0).text("step"));
  }

  @Test
  void aRailWeightThatTheShopDoesNotTakeIsNotExpected() {
    scene.set("rail=cold").weigh("03T10:00 B1 cold carcase 200\n05T10:00 B1 pack rump 200");
    assertEquals(List.of(), reasons());
  }

  @Test
  void aBodyWithBlockWeighingsOnlyNeedsNoRailWeight() {
    scene.weigh("05T09:00 B1 block hindquarter 140\n05T10:00 B1 pack rump 140");
    assertEquals(List.of(), reasons());
  }

  @Test
  void hotAndColdOfDifferentPartsHoldAndNameThem() {
    scene.set("bins=partly");
    scene.weigh(
        """
        02T10:00 B1 hot  side 150 pieces=2
        03T10:00 B1 cold side 147
        05T10:00 B1 pack rump 140
        """);
    assertEquals(List.of("PARTS_MISSING"), reasons());
    var hot = (Value.Phrases) reason(ReasonCode.PARTS_MISSING).value("hot");
    var cold = (Value.Phrases) reason(ReasonCode.PARTS_MISSING).value("cold");
    assertEquals(List.of("PART.NUMBER"), hot.phrases().stream().map(Phrase::key).toList());
    assertEquals(new Value.Count(2), hot.phrases().get(0).values().get("number"));
    assertEquals(new Value.Count(1), cold.phrases().get(0).values().get("number"));
    var part = (Value.Part) cold.phrases().get(0).values().get("part");
    assertEquals("side", part.item().id());
    assertEquals("beef", part.species().id());
  }

  @Test
  void aMissingColdWeightIsNoMissingPart() {
    scene.set("bins=partly").weigh("02T10:00 B1 hot carcase 300\n05T10:00 B1 pack rump 290");
    assertEquals(List.of("RAIL_MISSING cold"), reasons());
  }

  @Test
  void aRowSetAsideIsNamedByScaleAndTicket() {
    scene.simpleBody().weigh("05T10:40 B1 pack rump x ticket=71");
    assertEquals(List.of("ROW_SET_ASIDE bench 71"), reasons());
    assertEquals("bench 71", reason(ReasonCode.ROW_SET_ASIDE).text("row"));
    assertEquals("71", reason(ReasonCode.ROW_SET_ASIDE).text("ticket"));
    assertEquals("REASON.ROW_SET_ASIDE", reason(ReasonCode.ROW_SET_ASIDE).saying().key());
  }

  @Test
  void aRowSetAsideThatNamesItsBatchOnlySaysSo() {
    scene.set("bins=partly").file("batches.csv", "batch,due", "M1,2026-05-01");
    scene.simpleBody().weigh("05T10:40 B1 tub trim 1 batch=M1\n05T10:50 - pack mince x batch=M1");
    var aside = reason(ReasonCode.ROW_SET_ASIDE);
    assertEquals("REASON.ROW_SET_ASIDE.BATCH", aside.saying().key());
    assertEquals("M1", aside.text("batch"));
  }

  @Test
  void aRowSetAsideHoldsNoOtherBody() {
    scene.simpleBody().body("B2,beef,2026-03-02,ann").weigh("05T10:40 B2 pack rump x");
    assertEquals(List.of(), reasons());
  }

  @Test
  void aBatchOutOfBalanceKeepsItsWeights() {
    scene.set("limit.batch_loss_pct=5", "bins=partly");
    scene.weigh(
        """
        02T10:00 B1 hot   carcase 102
        03T10:00 B1 cold  carcase 100
        05T10:00 B1 tub   trim     90 batch=M1
        05T11:00 -  added -        10 batch=M1
        05T12:00 -  pack  mince    80 batch=M1
        """);
    assertEquals(List.of("BATCH_OUT M1"), reasons());
    var reason = reason(ReasonCode.BATCH_OUT);
    assertEquals("M1", reason.text("batch"));
    assertEquals(kg("90"), reason.weight("meat"));
    assertEquals(kg("10"), reason.weight("added"));
    assertEquals(kg("100"), reason.weight("in"));
    assertEquals(kg("80"), reason.weight("out"));
    assertEquals(kg("20"), reason.weight("loss"));
    assertEquals(kg("5"), reason.weight("limit"));
    // 2·√(3·0.01²/12)
    assertEquals(kg("0.01"), reason.weight("uncertainty"));
    assertEquals(new Value.Percent(BigFraction.of(20)), reason.value("share"));
  }

  @Test
  void aBatchThatBalancesHoldsNothing() {
    scene.set("bins=partly");
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 102
        03T10:00 B1 cold carcase 100
        05T10:00 B1 tub  trim     90 batch=M1
        05T12:00 -  pack mince    90 batch=M1
        """);
    assertEquals(List.of(), reasons());
  }

  @Test
  void sharesThatDoNotAddUpKeepTheirSum() {
    scene.file("shares.csv", "body,customer,share", "B1,ann,1/2", "B1,bob,1/3").simpleBody();
    assertEquals(new Value.Ratio(BigFraction.of(5, 6)), reason(ReasonCode.SHARES).value("sum"));
    assertEquals("REASON.SHARES", reason(ReasonCode.SHARES).saying().key());
  }

  @Test
  void reasonsStandInTheOrderOfTheirCodes() {
    scene.file("shares.csv", "body,customer,share", "B1,ann,1/2");
    scene.weigh(
        """
        03T10:00 B1 cold carcase 294
        05T10:05 B1 pack rump    x   ticket=9
        05T10:06 B1 pack rump    x   ticket=10
        05T10:07 B1 pack rump    300
        """);
    assertEquals(
        List.of(
            "RAIL_MISSING hot",
            "LOSS_NEGATIVE",
            "ROW_SET_ASIDE bench 10",
            "ROW_SET_ASIDE bench 9",
            "SHARES"),
        reasons());
  }

  @Test
  void aReasonHasNoTextAndNoWeightUnderANameThatItLacks() {
    scene.simpleBody().weigh("05T10:40 B1 pack rump 5");
    var reason = reason(ReasonCode.LOSS_NEGATIVE);
    assertEquals("", reason.text("batch"));
    assertEquals(kg("0"), reason.weight("batch"));
    assertNull(reason.value("batch"));
  }
}
