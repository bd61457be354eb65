package gambrel.scenes;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Test weights: what was weighed on a scale in doubt waits. */
class TestWeightsTest extends SceneTest {
  @BeforeEach
  void codeOfTheTestWeight() {
    scene.file("scales.csv", "scale,division,class", "rail,0.01,", "bench,0.02,III");
    scene.add("codes.csv", "t20,,test,20,,");
    scene.simpleBody();
  }

  private void tested(String time, String net) {
    scene.weigh(time + " - - - " + net + " code=t20");
  }

  @Test
  void aTestIsPassedWithinTheLimitInServiceOfTheClass() {
    // 20 kg are 1000 divisions of class III: two divisions, 0.04 kg
    tested("04T08:00", "20.04");
    tested("04T08:01", "19.96");
    assertEquals("issued", scene.at(LATER).state("B1"));
    assertEquals(List.of(), scene.at(LATER).rows("notices", "code=scale-failed"));
  }

  @Test
  void beyondItTheScaleFailsAndHoldsWhatWasWeighedOnIt() {
    tested("04T08:00", "20.041");
    var found = scene.at(LATER);
    assertEquals("held scale-failed", found.state("B1"));
    assertEquals("bench", found.notice("scale-failed", "scale"));
  }

  @Test
  void aNoticeSaysWhereItsLimitHasNoPublishedSource() {
    // 400 divisions of class IIII are the last with a source: 3 divisions, 60 g
    scene.set("region=us");
    scene.file("scales.csv", "scale,division,class", "rail,0.01,", "bench,0.02,IIII");
    scene.add("codes.csv", "t8,,test,8,,");
    scene.weigh("04T08:00 - - - 8.061 code=t8");
    scene.weigh("04T08:10 - - - 20.101 code=t20");
    assertEquals(
        List.of(
            "Scale bench showed 8.061 kg for a test weight of 8.000 kg; at most 0.060 kg off passes.",
            "Scale bench showed 20.101 kg for a test weight of 20.000 kg; at most 0.100 kg off passes."
                + " No published source of this limit is at hand."),
        scene.at(LATER).rows("notices", "code=scale-failed").stream()
            .map(notice -> notice.get("message"))
            .toList());
  }

  @Test
  void aScaleWithoutAClassMayErrByOneDivision() {
    scene.file("scales.csv", "scale,division,class", "rail,0.01,", "bench,0.02,");
    tested("04T08:00", "20.02");
    assertEquals("issued", scene.at(LATER).state("B1"));
    tested("04T08:05", "20.021");
    assertEquals("held scale-failed", scene.at(LATER).state("B1"));
  }

  @Test
  void theDoubtBeginsAtTheLastGoodTestBefore() {
    tested("05T10:40", "20");
    tested("06T08:00", "21");
    assertEquals("issued", scene.at(LATER).state("B1"));
  }

  @Test
  void weighingsBetweenTheLastGoodTestAndTheFailedOneAreInDoubt() {
    tested("05T10:25", "20");
    tested("06T08:00", "21");
    assertEquals("held scale-failed", scene.at(LATER).state("B1"));
  }

  @Test
  void theDoubtEndsAtTheNextGoodTest() {
    tested("04T08:00", "21");
    tested("05T09:00", "20");
    assertEquals("issued", scene.at(LATER).state("B1"));
  }

  @Test
  void aFailureOfAnotherScaleIsNoDoubt() {
    scene.body("B2,beef,2026-03-02,ann").set("bins=no");
    scene.weigh(
        """
        02T10:00 B2 hot  carcase 300
        03T10:00 B2 cold carcase 294
        05T10:00 B2 pack rump    200 scale=rail
        """);
    tested("04T08:00", "21");
    assertEquals("issued", scene.at(LATER).state("B2"));
  }

  @Test
  void inTheUnitedStatesTheToleranceIsThatOfHandbook44() {
    // NIST Handbook 44, 2.20, table 6, class III, maintenance: 3 divisions from 2001 to 4000
    scene.file("scales.csv", "scale,division,class", "rail,0.01,", "bench,0.005,III");
    scene.set("region=us");
    tested("04T08:00", "20.015");
    assertEquals("issued", scene.at(LATER).state("B1"));
    tested("04T08:01", "20.016");
    assertEquals("held scale-failed", scene.at(LATER).state("B1"));
  }

  @Test
  void aBodyWaitsForTheScaleOnWhichItsBatchWasPacked() {
    scene.add("scales.csv", "mixer,0.02,III");
    scene.weigh(
        """
        05T10:31 B1 tub  trim   1 batch=M1
        05T12:00 -  pack mince  1 batch=M1 scale=mixer
        04T08:00 -  -    -     21 code=t20 scale=mixer
        """);
    scene.correct("bench", "3", "net", "119", "05");
    assertEquals("held scale-failed", scene.at(LATER).state("B1"));
  }
}
