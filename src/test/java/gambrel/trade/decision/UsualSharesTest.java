package gambrel.trade.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What bodies of 100 cold usually give where bins are not weighed. */
class UsualSharesTest extends DecisionScene {
  @BeforeEach
  void noBins() {
    scene.set("bins=no", "rail=cold");
  }

  private void cut(String body, String day, String packed) {
    scene.weigh("02T10:00 %s cold carcase 100".formatted(body));
    scene.weigh("%sT10:00 %s pack rump %s".formatted(day, body, packed));
  }

  private void fiveBodiesOf(String packed) {
    for (int i = 1; i <= 5; i++) {
      scene.body("A" + i + ",beef,2026-03-01,ann");
      cut("A" + i, "03", packed);
    }
  }

  @Test
  void aBodyBelowThreeQuartersOfTheUsualNamesWhatIsStillToCome() {
    fiveBodiesOf("70");
    cut("B1", "09", "30");
    var reason = decision().reasons().get(0);
    assertEquals(ReasonCode.HOME_LOW, reason.code());
    assertEquals(kg("30"), reason.weight("home"));
    assertEquals(kg("100"), reason.weight("boning"));
    // The median of 70 less the 30 that are packed.
    assertEquals(kg("40"), reason.weight(Reason.REST));
  }

  @Test
  void aBodyOfExactlyThreeQuartersIsEnough() {
    fiveBodiesOf("80");
    cut("B1", "09", "60");
    assertEquals(State.ISSUED, decision().state());
  }

  @Test
  void aBodyThatStillHangsGivesNothingYet() {
    fiveBodiesOf("70");
    scene.weigh("02T10:00 B1 cold carcase 100");
    assertEquals(new Decision(State.OPEN, List.of(), List.of()), decision());
  }

  @Test
  void aBodyTakenWholeNeedsNoPacks() {
    scene.file(
        "bodies.csv", "body,species,killed,customer,outcome", "B1,beef,2026-03-02,ann,whole");
    cut("B1", "05", "5");
    assertEquals(State.ISSUED, decision().state());
  }
}
