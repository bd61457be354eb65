package gambrel.trade.reckoning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.scenes.FiguresTest;
import gambrel.trade.decision.Reason;
import gambrel.trade.decision.ReasonCode;
import gambrel.trade.decision.State;
import gambrel.trade.notice.NoticeCode;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A night put together from weighings, bills, releases and decisions. */
class ReckonerTest extends FiguresTest {

  private BodyAccount account() {
    return night().bodies().get("B1");
  }

  private long notices(NoticeCode code) {
    return night().notices().stream().filter(notice -> notice.code() == code).count();
  }

  private void high() {
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 300
        03T10:00 B1 cold carcase 294
        05T10:00 B1 pack rump    200
        """);
  }

  @Test
  void aBodyThatBalancesIsIssuedToItsCustomers() {
    scene.simpleBody().weigh("05T10:40 B1 pack rump 0.01 customer=bob");
    assertEquals(State.ISSUED, account().decision().state());
    assertEquals(List.of("ann", "bob"), account().customers());
    assertTrue(account().isSettled());
    assertEquals("B1", account().body().id());
  }

  @Test
  void theShopIsNoCustomer() {
    scene.simpleBody().file("shares.csv", "body,customer,share", "B1,ann,1/2", "B1,shop,1/2");
    assertEquals(List.of("ann"), account().customers());
    assertTrue(account().entitlements().containsKey("shop"));
  }

  @Test
  void aBodyWithAnOpenBatchIsNotSettled() {
    scene.file("batches.csv", "batch,product,due", "M1,Ham,2026-04-30");
    scene.simpleBody().weigh("05T10:40 B1 tub trim 0.01 batch=M1");
    assertEquals(State.ISSUED, account().decision().state());
    assertFalse(account().isSettled());
  }

  @Test
  void aHeldBodyIsNotSettledAndIsANotice() {
    high();
    assertEquals(State.HELD, account().decision().state());
    assertFalse(account().isSettled());
    assertEquals(1, notices(NoticeCode.HELD));
  }

  @Test
  void aReleaseCoversTheReasonsThatHoldAtItsMoment() {
    high();
    scene.release("B1", "release", "15T12:00");
    assertEquals(State.ISSUED, account().decision().state());
    assertEquals(1, account().decision().released().size());
    assertEquals(0, notices(NoticeCode.RELEASE_UNUSED));
  }

  @Test
  void aReleaseBeforeTheReasonCoversNothingAndIsANotice() {
    high();
    scene.release("B1", "release", "04T12:00");
    assertEquals(State.HELD, account().decision().state());
    assertEquals(1, notices(NoticeCode.RELEASE_UNUSED));
  }

  @Test
  void aReleaseOfTheFutureHasNoEffectYet() {
    high();
    scene.release("B1", "release", "21T12:00");
    assertEquals(State.HELD, account().decision().state());
  }

  @Test
  void aNightKnowsNothingThatWasWeighedLater() {
    scene.simpleBody();
    var then = scene.reckon("05T10:05").bodies().get("B1");
    assertEquals(kg("120"), then.balance().outputs().orElseThrow().takeHome());
    assertEquals(State.OPEN, then.decision().state());
  }

  @Test
  void aCancelledBodyHasNoWeighings() {
    scene.simpleBody();
    scene.file(
        "bodies.csv", "body,species,killed,customer,outcome", "B1,beef,2026-03-02,ann,cancelled");
    assertEquals(State.CANCELLED, account().decision().state());
    assertEquals(List.of(), account().balance().weighings().all());
  }

  @Test
  void hangingLongerThanTheShopLikesIsANotice() {
    scene.set("limit.days_hung=2").simpleBody();
    assertEquals(1, notices(NoticeCode.HUNG_LONG));
    scene.set("limit.days_hung=3");
    assertEquals(0, notices(NoticeCode.HUNG_LONG));
  }

  @Test
  void aBodyThatGainedInTheChillerIsANotice() {
    scene.weigh("02T10:00 B1 hot carcase 300\n03T10:00 B1 cold carcase 300.01");
    assertEquals(1, notices(NoticeCode.COLD_ABOVE_HOT));
  }

  @Test
  void aBodyThatWeighedTheSameColdAsHotIsNoNotice() {
    scene.weigh("02T10:00 B1 hot carcase 300\n03T10:00 B1 cold carcase 300");
    assertEquals(0, notices(NoticeCode.COLD_ABOVE_HOT));
  }

  @Test
  void aBodyThatWasNeverOnTheRailIsANotice() {
    scene.weigh("05T10:00 B1 block hindquarter 140\n05T11:00 B1 pack rump 139");
    assertEquals(1, notices(NoticeCode.WEIGHED_ON_BLOCK));
  }

  @Test
  void sharesThatDoNotAddUpAreANotice() {
    scene.simpleBody().file("shares.csv", "body,customer,share", "B1,ann,1/2", "B1,bob,1/3");
    assertEquals(1, notices(NoticeCode.SHARES_SUM));
    assertEquals(State.HELD, account().decision().state());
  }

  @Test
  void aWeighingBeforeTheKillIsOneNoticeABody() {
    scene.simpleBody().weigh("01T10:00 B1 pack rump 1\n01T10:01 B1 pack rump 1");
    assertEquals(1, notices(NoticeCode.WEIGHED_BEFORE_KILL));
  }

  @Test
  void batchesThatMixOwnersAreANoticeUnlessTheShopAllowsIt() {
    scene.body("B2,beef,2026-03-02,bob");
    scene.weigh("05T10:00 B1 tub trim 5 batch=M1\n05T10:01 B2 tub trim 5 batch=M1");
    assertEquals(1, notices(NoticeCode.BATCH_MIXED));
    assertEquals(1, notices(NoticeCode.BATCH_UNLISTED));
    scene.set("allow_mixed_batches=yes");
    assertEquals(0, notices(NoticeCode.BATCH_MIXED));
  }

  @Test
  void aBatchOutOfBalanceOrLateIsANotice() {
    scene.weigh(
        """
        05T10:00 B1 tub  trim  50 batch=M1
        05T12:00 -  pack mince 20 batch=M1
        01T10:00 B1 tub  trim   5 batch=M2
        """);
    assertEquals(1, notices(NoticeCode.BATCH_OUT));
    assertEquals(1, notices(NoticeCode.BATCH_LATE));
  }

  @Test
  void theNightKeepsTheMomentAtTheShopsOwnOffset() {
    scene.set("zone=Australia/Sydney");
    assertEquals("2026-03-20T02:00+11:00", night().asOf().toString());
    assertEquals(Optional.empty(), account().balance().hot());
  }

  @Test
  void paymentsAreListedInFileOrderUpToTheDay() {
    scene.file(
        "payments.csv",
        "customer,body,date,amount",
        "ann,B1,2026-03-20,30.00",
        "ann,B1,2026-03-21,40.00",
        "ann,B1,2026-03-02,5.00",
        "bob,B1,2026-03-02,1.00");
    var night = night();
    assertEquals(
        List.of("2026-03-20", "2026-03-02"),
        night.payments("ann", "B1").stream().map(p -> p.date().toString()).toList());
    assertEquals(3500, night.paid("ann", "B1").minor());
    assertEquals(100, night.paid("bob", "B1").minor());
    assertEquals(0, night.paid("ann", "B2").minor());
  }

  @Test
  void bodiesAndBatchesStandInOrderOfTheirIds() {
    scene.body("B10,beef,2026-03-02,ann", "A2,beef,2026-03-02,ann");
    scene.weigh("05T10:00 B1 tub trim 5 batch=m\n05T10:01 B1 tub trim 5 batch=M");
    assertEquals(List.of("A2", "B1", "B10"), List.copyOf(night().bodies().keySet()));
    assertEquals(List.of("M", "m"), List.copyOf(night().batches().keySet()));
  }

  @Test
  void aClosedBodyOfTheShopIsSettled() {
    scene.file("bodies.csv", "body,species,killed", "B1,beef,2026-03-02").simpleBody();
    assertEquals(State.CLOSED, account().decision().state());
    assertEquals(List.of(), account().customers());
    assertTrue(account().isSettled());
  }

  @Test
  void aRowSetAsideHoldsEveryBodyThatItNames() {
    scene.simpleBody().weigh("05T10:40 B1 pack rump x ticket=71");
    assertEquals(State.HELD, account().decision().state());
    scene.correct("bench", "71", "status", "void", "07");
    assertEquals(State.ISSUED, account().decision().state());
  }

  @Test
  void aRowSetAsideThatNamesABatchHoldsTheBodiesInIt() {
    scene.set("bins=partly").simpleBody();
    scene.weigh("05T10:40 B1 tub trim 1 batch=M1\n05T10:41 - added - x batch=M1");
    scene.weigh("05T10:50 - pack mince 1 batch=M1");
    var decision = account().decision();
    assertEquals(State.HELD, decision.state());
    assertEquals(
        List.of(ReasonCode.ROW_SET_ASIDE), decision.reasons().stream().map(Reason::code).toList());
  }

  @Test
  void eachNewMomentOfAReleaseIsReportedOnce() throws Exception {
    scene.simpleBody().weigh("05T10:40 B1 pack rump 5");
    scene.release("B1", "release", "06").release("B1", "release", "06");
    scene.release("B1", "release", "07").release("B1", "release", "2026-04-01");
    var seen = reported();
    assertEquals(1, seen.stream().filter("RELEASES of 2"::equals).count());
    assertEquals(2, seen.stream().filter("RELEASES 1"::equals).count());
    assertEquals(1, seen.stream().filter("BODIES of 1"::equals).count());
    assertEquals(1, seen.stream().filter("BODIES 1"::equals).count());
  }

  @Test
  void aReleaseAtTheNightsOwnMomentIsNotComputedAgain() throws Exception {
    scene.simpleBody().weigh("05T10:40 B1 pack rump 5").release("B1", "release", "20T02:00");
    assertTrue(reported().stream().noneMatch(line -> line.startsWith("RELEASES")));
    assertEquals(State.ISSUED, account().decision().state());
  }

  @Test
  void aRowSetAsideThatIsDatedLaterHoldsNothingYet() {
    scene.simpleBody().weigh("25T10:40 B1 pack rump x");
    assertEquals(State.ISSUED, account().decision().state());
  }

  @Test
  void theRowsOfAllExportsAreReported() throws Exception {
    scene.simpleBody().weigh("exports/b.csv", "05T10:40 B1 bin fat 0.01");
    assertEquals(1, reported().stream().filter("ROWS of 7"::equals).count());
  }

  @Test
  void aCloseCoversThatABodyGaveLittle() {
    scene.set("bins=no", "rail=cold");
    scene.weigh("02T10:00 B1 cold carcase 100\n05T10:00 B1 pack rump 30");
    assertEquals(State.HELD, account().decision().state());
    scene.release("B1", "close", "06");
    assertEquals(State.ISSUED, account().decision().state());
    assertEquals(
        List.of(ReasonCode.HOME_LOW),
        account().decision().released().stream().map(Reason::code).toList());
  }

  /** What is reported to the progress: the stages with their totals, and what is done. */
  private List<String> reported() throws Exception {
    var inputs = scene.read();
    var seen = Collections.synchronizedList(new ArrayList<String>());
    Progress progress =
        (stage, total) -> {
          seen.add(stage + " of " + total);
          return done -> seen.add(stage + " " + done);
        };
    new Reckoner(inputs.shop(), inputs.exports(), progress)
        .at(OffsetDateTime.parse("2026-03-20T02:00:00Z"));
    return seen;
  }
}
