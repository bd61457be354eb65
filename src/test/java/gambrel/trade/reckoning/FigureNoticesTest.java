package gambrel.trade.reckoning;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.scenes.FiguresTest;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Value;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** The notices of a night and the values that they name. */
class FigureNoticesTest extends FiguresTest {

  private List<Notice> notices(NoticeCode code) {
    return night().notices().stream().filter(notice -> notice.code() == code).toList();
  }

  private Notice only(NoticeCode code) {
    var notices = notices(code);
    assertEquals(1, notices.size());
    return notices.get(0);
  }

  private static Value value(Notice notice, String name) {
    return notice.saying().values().get(name);
  }

  private Value mass(String weight) {
    return new Value.Mass(kg(weight), night().shop().settings().unit());
  }

  @Test
  void aBodyThatBalancesDrawsNoNotice() {
    scene.simpleBody();
    assertEquals(List.of(), night().notices());
  }

  @Test
  void aHeldBodyNamesItsReasonsInOrder() {
    scene.weigh("03T10:00 B1 cold carcase 294\n05T10:00 B1 pack rump 300");
    var held = only(NoticeCode.HELD);
    assertEquals("B1", held.body());
    assertEquals("", held.advice());
    var why = (Value.Phrases) value(held, "why");
    assertEquals(
        List.of("REASON.RAIL_MISSING", "REASON.LOSS_NEGATIVE"),
        why.phrases().stream().map(Phrase::key).toList());
    assertEquals("; ", why.separator());
  }

  @Test
  void aBodyWhoseSharesAreWrongCannotBeReleasedAndTheAdviceSaysSo() {
    scene.file("shares.csv", "body,customer,share", "B1,ann,1/2", "B1,bob,1/3");
    scene.weigh("03T10:00 B1 cold carcase 294\n05T10:00 B1 pack rump 294");
    assertEquals("SETTLE", only(NoticeCode.HELD).advice());
    var shares = only(NoticeCode.SHARES_SUM);
    assertEquals("SHARES_SUM", shares.saying().key());
    assertEquals("B1", shares.body());
    assertEquals(new Value.Ratio(BigFraction.of(5, 6)), value(shares, "sum"));
  }

  @Test
  void aBodyHungLongNamesDaysAndLimit() {
    scene.set("limit.days_hung=2").simpleBody();
    var notice = only(NoticeCode.HUNG_LONG);
    assertEquals(new Value.Count(3), value(notice, "found"));
    assertEquals(new Value.Count(2), value(notice, "limit"));
    assertEquals("B1", notice.body());
  }

  @Test
  void aGainInTheChillerNamesBothWeights() {
    scene.weigh("02T10:00 B1 hot carcase 300\n03T10:00 B1 cold carcase 300.01");
    var notice = only(NoticeCode.COLD_ABOVE_HOT);
    assertEquals(mass("300"), value(notice, "hot"));
    assertEquals(mass("300.01"), value(notice, "cold"));
  }

  @Test
  void hotAndColdOfDifferentPartsAreNoGain() {
    scene.weigh("02T10:00 B1 hot side 150\n03T10:00 B1 cold side 147 pieces=2");
    scene.weigh("03T10:01 B1 cold side 148");
    assertEquals(List.of(), notices(NoticeCode.COLD_ABOVE_HOT));
  }

  @Test
  void aBodyWithoutRailWeightsIsWeighedOnTheBlock() {
    scene.weigh("05T10:00 B1 block hindquarter 140\n05T11:00 B1 pack rump 139");
    assertEquals("B1", only(NoticeCode.WEIGHED_ON_BLOCK).body());
    scene.weigh("03T10:00 B1 cold carcase 294");
    assertEquals(List.of(), notices(NoticeCode.WEIGHED_ON_BLOCK));
  }

  @Test
  void weighingsBeforeTheKillAreOneNoticeWithTheFirstAndTheirNumber() {
    scene.simpleBody();
    scene.weigh("01T11:00 B1 pack rump 1 ticket=21\n01T10:00 B1 pack rump 1 ticket=22");
    var notice = only(NoticeCode.WEIGHED_BEFORE_KILL);
    assertEquals("22", notice.ticket());
    assertEquals("bench", notice.scale());
    assertEquals("B1", notice.body());
    assertEquals(9, notice.place().line());
    assertEquals(new Value.Moment(LocalDateTime.parse("2026-03-01T10:00")), value(notice, "found"));
    assertEquals(new Value.Day(LocalDate.parse("2026-03-02")), value(notice, "killed"));
    assertEquals(new Value.Count(2), value(notice, "count"));
  }

  @Test
  void aWeighingOnTheDayOfTheKillIsNotBeforeIt() {
    scene.simpleBody().weigh("02T00:00 B1 pack liver 6");
    assertEquals(List.of(), notices(NoticeCode.WEIGHED_BEFORE_KILL));
  }

  @Test
  void aBodyWithoutAKillIsNotWeighedBeforeIt() {
    scene.file("bodies.csv", "body,species,customer", "B1,beef,ann").simpleBody();
    assertEquals(List.of(), notices(NoticeCode.WEIGHED_BEFORE_KILL));
  }

  @Test
  void aReleaseThatCoversNothingNamesItsRow() {
    scene.simpleBody().release("B1", "release", "07T12:00");
    var notice = only(NoticeCode.RELEASE_UNUSED);
    assertEquals("B1", notice.body());
    assertEquals("releases.csv", notice.place().file());
    assertEquals(new Value.Moment(LocalDateTime.parse("2026-03-07T12:00")), value(notice, "on"));
  }

  @Test
  void aReleaseThatCoversAReasonDrawsNoNotice() {
    scene.simpleBody().weigh("05T10:40 B1 pack rump 5").release("B1", "release", "07T12:00");
    assertEquals(List.of(), notices(NoticeCode.RELEASE_UNUSED));
  }

  @Test
  void twoReleasesAtOneMomentAreBothUsed() {
    scene.simpleBody().weigh("05T10:40 B1 pack rump 5");
    scene.body("B2,beef,2026-03-02,ann");
    scene.weigh("05T09:00 B2 block hindquarter 140\n05T10:00 B2 pack rump 150");
    scene.release("B1", "release", "07T12:00").release("B2", "release", "07T12:00");
    assertEquals(List.of(), notices(NoticeCode.RELEASE_UNUSED));
    assertEquals(List.of(), notices(NoticeCode.HELD));
  }

  @Test
  void aFailedTestNamesItsScaleTicketAndWeights() {
    scene.add("codes.csv", "t20,,test,20,,").simpleBody();
    scene.weigh("04T08:00 - - - 20.05 code=t20 ticket=99");
    var notice = only(NoticeCode.SCALE_FAILED);
    assertEquals("SCALE_FAILED", notice.saying().key());
    assertEquals("bench", notice.scale());
    assertEquals("99", notice.ticket());
    assertEquals(mass("20"), value(notice, "expected"));
    assertEquals(mass("20.05"), value(notice, "found"));
    assertEquals(mass("0.01"), value(notice, "tolerance"));
  }

  @Test
  void aFailedTestSaysWhereItsLimitHasNoPublishedSource() {
    scene.set("region=us").file("scales.csv", "scale,division,class", "bench,0.01,IIII");
    scene.add("codes.csv", "t20,,test,20,,").weigh("04T08:00 - - - 30 code=t20");
    assertEquals("SCALE_FAILED.NO_SOURCE", only(NoticeCode.SCALE_FAILED).saying().key());
  }

  @Test
  void aBatchOutOfBalanceNamesItsWeights() {
    scene.weigh("05T10:00 B1 tub trim 50 batch=M1\n05T12:00 - pack mince 20 batch=M1");
    var notice = only(NoticeCode.BATCH_OUT);
    assertEquals("BATCH_OUT", notice.saying().key());
    assertEquals(new Value.Text("M1"), value(notice, "batch"));
    assertEquals(mass("30"), value(notice, "loss"));
    assertEquals(new Value.Text("M1"), value(only(NoticeCode.BATCH_UNLISTED), "batch"));
  }

  @Test
  void aListedBatchThatBalancesDrawsNoNotice() {
    scene.file("batches.csv", "batch,product", "M1,Mince").simpleBody();
    scene.weigh("05T10:40 B1 tub trim 0.01 batch=M1\n05T10:50 - pack mince 0.01 batch=M1");
    assertEquals(List.of(), night().notices());
  }

  @Test
  void aLateBatchNamesItsDueDateOrItsLastRow() {
    scene.file("batches.csv", "batch,product,due", "M1,Ham,2026-03-07");
    scene.weigh("05T10:00 B1 tub trim 5 batch=M1\n01T10:00 B1 tub trim 5 batch=M2");
    scene.weigh("04T10:00 B1 tub trim 5 batch=M2");
    var late = notices(NoticeCode.BATCH_LATE);
    assertEquals("BATCH_LATE", late.get(0).saying().key());
    assertEquals(new Value.Text("M1"), value(late.get(0), "batch"));
    assertEquals(new Value.Day(LocalDate.parse("2026-03-07")), value(late.get(0), "due"));
    assertEquals("BATCH_LATE.NO_DUE", late.get(1).saying().key());
    assertEquals(new Value.Text("M2"), value(late.get(1), "batch"));
    assertEquals(new Value.Day(LocalDate.parse("2026-03-04")), value(late.get(1), "last"));
  }

  @Test
  void aBatchOfTwoOwnersNamesItsBodies() {
    scene.body("B2,beef,2026-03-02,bob");
    scene.weigh("05T10:00 B1 tub trim 5 batch=M1\n05T10:01 B2 tub trim 5 batch=M1");
    assertEquals(
        new Value.Names(List.of("B1", "B2")), value(only(NoticeCode.BATCH_MIXED), "bodies"));
  }

  @Test
  void aBatchOfOneOwnersBodiesIsNotMixed() {
    scene.body("B2,beef,2026-03-02,ann");
    scene.weigh("05T10:00 B1 tub trim 5 batch=M1\n05T10:01 B2 tub trim 5 batch=M1");
    assertEquals(List.of(), notices(NoticeCode.BATCH_MIXED));
  }

  @Test
  void aTubWithoutABodyIsTheShopsAndMixesABatch() {
    scene.weigh("05T10:00 B1 tub trim 5 batch=M1\n05T10:01 - tub trim 5 batch=M1");
    assertEquals(
        new Value.Names(List.of("B1", "shop")), value(only(NoticeCode.BATCH_MIXED), "bodies"));
    scene.file("bodies.csv", "body,species,killed", "B1,beef,2026-03-02");
    assertEquals(List.of(), notices(NoticeCode.BATCH_MIXED));
  }

  @Test
  void aReleaseAndACloseOfACancelledBodyHaveNoEffect() {
    scene.file(
        "bodies.csv", "body,species,killed,customer,outcome", "B1,beef,2026-03-02,ann,cancelled");
    scene.file("shares.csv", "body,customer,share", "B1,ann,1/2").simpleBody();
    scene.release("B1", "close", "07T12:00").release("B1", "release", "07T12:00");
    assertEquals(2, notices(NoticeCode.RELEASE_UNUSED).size());
  }

  @Test
  void anUnusedReleaseSaysWhetherItWasAClose() {
    scene.simpleBody();
    scene.release("B1", "release", "07T09:00");
    assertEquals("RELEASE_UNUSED", only(NoticeCode.RELEASE_UNUSED).saying().key());
  }

  @Test
  void anUnusedCloseSaysThatNothingWasWeighed() {
    scene.weigh("02T10:00 B1 hot carcase 300").release("B1", "close", "07T09:00");
    assertEquals("RELEASE_UNUSED.CLOSE", only(NoticeCode.RELEASE_UNUSED).saying().key());
  }

  @Test
  void tubsWithoutABatchDrawANoticeWhereTubsAreCharged() {
    scene.simpleBody();
    scene.weigh("05T09:01 B1 tub trim 3 ticket=31\n05T09:00 B1 tub trim 4 ticket=32");
    assertEquals(List.of(), notices(NoticeCode.TUB_WITHOUT_BATCH));
    scene.file("charges.csv", "charge,description,basis,price", "mince,Mincing,tub,1");
    var notice = only(NoticeCode.TUB_WITHOUT_BATCH);
    assertEquals("32", notice.ticket());
    assertEquals("bench", notice.scale());
    assertEquals("B1", notice.body());
    assertEquals(mass("7"), value(notice, "found"));
    assertEquals(new Value.Count(2), value(notice, "count"));
  }

  /** B1 as cattle of some months, of which an item is packed. */
  private void packed(String months, String item) {
    scene.file(
        "bodies.csv",
        "body,species,killed,customer,age_months",
        "B1,beef,2026-03-02,ann," + months);
    scene.weigh("03T10:00 B1 cold carcase 294\n05T10:00 B1 pack %s 20".formatted(item));
  }

  @Test
  void vertebraeOfCattleOfThirtyMonthsDrawANotice() {
    scene.set("region=uk");
    packed("30", "neck");
    var notice = only(NoticeCode.VERTEBRA_PACKED);
    assertEquals("B1", notice.body());
    assertEquals(new Value.Names(List.of("neck")), value(notice, "cuts"));
  }

  @Test
  void vertebraeOfYoungerCattleDrawNoNotice() {
    scene.set("region=uk");
    packed("29", "neck");
    assertEquals(List.of(), notices(NoticeCode.VERTEBRA_PACKED));
  }

  @Test
  void cutsWithoutVertebraeDrawNoNotice() {
    scene.set("region=uk");
    packed("30", "rump");
    assertEquals(List.of(), notices(NoticeCode.VERTEBRA_PACKED));
  }

  @Test
  void inAustraliaVertebraeDrawNoNotice() {
    packed("30", "neck");
    assertEquals(List.of(), notices(NoticeCode.VERTEBRA_PACKED));
  }

  @Test
  void aCloseOfAPackedBodyDrawsNoNotice() {
    scene.simpleBody().release("B1", "close", "07T12:00");
    assertEquals(List.of(), notices(NoticeCode.RELEASE_UNUSED));
  }
}
