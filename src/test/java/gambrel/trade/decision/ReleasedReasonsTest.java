package gambrel.trade.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Which reasons a release covers: those of the same code and name that held at its moment. */
class ReleasedReasonsTest extends DecisionScene {

  private void unreadable(String time, String ticket) {
    scene.weigh(time + " B1 pack rump x ticket=" + ticket);
  }

  @Test
  void aReleaseCoversTheReasonThatHeldAtItsMoment() {
    scene.simpleBody();
    unreadable("05T10:40", "71");
    scene.release("B1", "release", "07");
    assertEquals(State.ISSUED, decision().state());
    assertEquals(List.of(), reasons());
    assertEquals(List.of("ROW_SET_ASIDE bench 71"), named(decision().released()));
  }

  @Test
  void aReleaseCoversNoOtherReasonOfTheSameCode() {
    scene.simpleBody();
    unreadable("05T10:40", "71");
    scene.release("B1", "release", "07");
    unreadable("08T10:40", "72");
    assertEquals(State.HELD, decision().state());
    assertEquals(List.of("ROW_SET_ASIDE bench 72"), reasons());
    assertEquals(List.of("ROW_SET_ASIDE bench 71"), named(decision().released()));
  }

  @Test
  void aReleaseCoversAReasonWhoseNumbersHaveChanged() {
    scene.simpleBody().weigh("05T10:40 B1 pack rump 5");
    scene.release("B1", "release", "07").weigh("08T10:00 B1 pack rump 1");
    assertEquals(List.of("LOSS_NEGATIVE"), named(decision().released()));
    assertEquals(kg("6"), decision().released().get(0).weight("surplus"));
  }

  @Test
  void aReleaseOfALossDoesNotCoverTheOppositeLoss() {
    // 5 too much on the 7th; from the 8th on the 5 are gone and another 20 missing
    scene.simpleBody().weigh("05T10:40 B1 pack rump 5");
    scene.release("B1", "release", "07");
    scene.correct("bench", "7", "status", "void", "08");
    scene.correct("bench", "3", "net", "100", "08");
    assertEquals(List.of("LOSS_HIGH"), reasons());
    assertEquals(List.of(), decision().released());
  }

  @Test
  void aReleaseOfAnotherBodyCoversNothing() {
    scene.body("B2,beef,2026-03-02,ann");
    scene.simpleBody().weigh("05T10:40 B1 pack rump 5").release("B2", "release", "07");
    assertEquals(List.of("LOSS_NEGATIVE"), reasons());
  }

  @Test
  void aReleaseWhileTheBodyIsOpenCoversNothing() {
    scene.simpleBody().weigh("05T10:40 B1 pack rump 5").release("B1", "release", "05T16:39");
    assertEquals(List.of("LOSS_NEGATIVE"), reasons());
  }

  @Test
  void aReleaseOfABodyThatWasClosedCoversWhatHeldThen() {
    scene.simpleBody().weigh("05T10:40 B1 pack rump 5");
    scene.release("B1", "close", "05T11:00").release("B1", "release", "05T11:00");
    assertEquals(State.ISSUED, decision().state());
  }

  @Test
  void sharesThatDoNotAddUpCannotBeReleased() {
    scene.file("shares.csv", "body,customer,share", "B1,ann,1/2", "B1,bob,1/3");
    scene.simpleBody().release("B1", "release", "07");
    assertEquals(State.HELD, decision().state());
    assertEquals(List.of("SHARES"), reasons());
    assertEquals(List.of(), decision().released());
  }

  @Test
  void aChargeOfUnknownQuantityCannotBeReleased() {
    scene.file("bodies.csv", "body,species,killed,customer", "B1,beef,2026-03-02,ann");
    scene.file("charges.csv", "charge,description,basis,price", "haul,Haulage,live,1");
    scene.simpleBody().release("B1", "release", "07");
    assertEquals(List.of("CHARGE_UNKNOWN haul"), reasons());
    assertEquals("Haulage", decision().reasons().get(0).text("description"));
    assertEquals("haul", decision().reasons().get(0).text("charge"));
  }

  @Test
  void allOtherReasonsCanBeReleased() {
    assertEquals(
        List.of(ReasonCode.ROW_UNREAD, ReasonCode.SHARES, ReasonCode.CHARGE_UNKNOWN),
        List.of(ReasonCode.values()).stream().filter(code -> !code.isReleasable()).toList());
    assertEquals("charge-unknown", ReasonCode.CHARGE_UNKNOWN.id());
  }
}
