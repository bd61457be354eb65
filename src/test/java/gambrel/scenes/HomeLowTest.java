package gambrel.scenes;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Where bins are not weighed, a body that gave far less than usual is taken to be cut in part. */
class HomeLowTest extends SceneTest {
  @BeforeEach
  void noBins() {
    scene.set("bins=no", "rail=cold");
  }

  /** A body of 100 cold, of which so much is packed on a day at ten. */
  private void cut(String body, String day, String packed) {
    scene.body(body + ",beef,2026-03-01,ann");
    scene.weigh(
        """
        02T10:00   %1$s cold carcase 100
        %2$sT10:00 %1$s pack rump    %3$s
        """
            .formatted(body, day, packed));
  }

  @Test
  void aBodyCutInHalfIsOpenForTheCuttingDaysAndThenHeld() {
    cut("B2", "05", "39.9");
    assertEquals("open part-cut", scene.at("09T09:59").state("B2"));
    assertEquals("held home-low", scene.at("09T10:00").state("B2"));
    assertEquals("none", scene.at("09T10:00").statement("ann", "B2", "revision"));
  }

  @Test
  void withFewerThanFiveBodiesBeforeTwoFifthsAreEnough() {
    cut("B2", "05", "40");
    assertEquals("issued", scene.at("06T00:00").state("B2"));
  }

  @Test
  void withFiveBodiesBeforeThreeQuartersOfTheirMedianAreEnough() {
    cut("B11", "03", "60");
    cut("B12", "03", "70");
    cut("B13", "04", "80");
    cut("B14", "04", "62");
    cut("B15", "05", "76");
    // The median is 70: 52.5 of 100
    cut("B2", "09", "52.499");
    cut("B3", "09", "52.5");
    assertEquals("open part-cut", scene.at("10T00:00").state("B2"));
    assertEquals("issued", scene.at("10T00:00").state("B3"));
    assertEquals("held home-low", scene.at("13T10:00").state("B2"));
  }

  @Test
  void bodiesCutLessThanTheCuttingDaysBeforeDoNotCount() {
    for (int i = 1; i <= 5; i++) {
      cut("B1" + i, "05", "80");
    }
    cut("B2", "09", "41");
    assertEquals("open part-cut", scene.at("10T00:00").state("B2"));
    scene.set("cutting_days=5");
    assertEquals("issued", scene.at("10T00:00").state("B2"));
  }

  @Test
  void ofAnEvenNumberTheMiddleTwoAreHalved() {
    cut("B11", "03", "60");
    cut("B12", "03", "60");
    cut("B13", "03", "70");
    cut("B14", "03", "74");
    cut("B15", "03", "80");
    cut("B16", "03", "80");
    // The median is 72: 54 of 100
    cut("B2", "09", "53.99");
    cut("B3", "09", "54");
    assertEquals("open part-cut", scene.at("10T00:00").state("B2"));
    assertEquals("issued", scene.at("10T00:00").state("B3"));
  }

  @Test
  void tubsCountAndOffalBinsAndRailTrimDoNot() {
    scene.set("bins=partly", "rail=hot,cold", "limit.batch_loss_pct=20");
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 104
        02T12:00 B1 pack thick-skirt 2
        03T10:00 B1 cold carcase 100
        05T10:00 B1 pack rump     30
        05T10:01 B1 tub  trim      9 batch=M1
        05T10:02 B1 pack liver     6
        05T10:03 B1 bin  bone     50
        05T12:00 -  pack mince     9 batch=M1
        """);
    assertEquals("open part-cut", scene.at("06T00:00").state("B1"));
    scene.weigh("05T10:04 B1 tub trim 1 batch=M1");
    assertEquals("issued", scene.at("06T00:00").state("B1"));
  }

  @Test
  void aPersonMayReleaseIt() {
    cut("B2", "05", "30");
    scene.release("B2", "release", "10");
    assertEquals("issued", scene.at(LATER).state("B2"));
  }

  @Test
  void aBodyThatWasClosedIsNotHeldOnceTheCuttingDaysHavePassed() {
    cut("B2", "05", "30");
    scene.release("B2", "close", "06");
    assertEquals("open part-cut", scene.at("05T23:59").state("B2"));
    assertEquals("issued", scene.nextNight("06T00:00").state("B2"));
    var found = scene.nextNight("09T10:00");
    assertEquals("issued", found.state("B2"));
    assertEquals("1", found.statement("ann", "B2", "revision"));
    assertEquals(0, found.exit());
  }

  @Test
  void aBodyIsHeldThatWasCorrectedAfterItWasClosed() {
    cut("B2", "05", "40");
    scene.release("B2", "close", "06");
    assertEquals("issued", scene.at("10T00:00").state("B2"));
    scene.correct("bench", "2", "net", "39", "08");
    assertEquals("held home-low", scene.at("10T00:00").state("B2"));
  }

  @Test
  void aBodyIsHeldThatWasCutAfterItWasClosed() {
    cut("B2", "05", "30");
    scene.release("B2", "close", "06").weigh("07T10:00 B2 pack rump 1");
    assertEquals("open part-cut", scene.at("08T00:00").state("B2"));
    assertEquals("held home-low", scene.at("12T00:00").state("B2"));
  }

  @Test
  void aBodyThatIsHeldAlreadyIsNotReleasedByClosingIt() {
    cut("B2", "05", "30");
    scene.release("B2", "close", "10");
    assertEquals("held home-low", scene.at("10T00:00").state("B2"));
  }

  @Test
  void whereBinsAreWeighedTheLossDecides() {
    scene.set("bins=weighed");
    cut("B2", "05", "30");
    assertEquals("held loss-high", scene.at(LATER).state("B2"));
  }
}
