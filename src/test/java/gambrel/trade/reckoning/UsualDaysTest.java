package gambrel.trade.reckoning;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.scenes.FiguresTest;
import gambrel.trade.shop.Body;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** How long bodies killed on the first of March hang before they are cut. */
class UsualDaysTest extends FiguresTest {
  @BeforeEach
  void weighColdOnly() {
    scene.set("rail=cold", "bins=no");
    scene.file("bodies.csv", "body,species,killed,customer,outcome", "X,beef,2026-03-19,ann,");
  }

  /** A body that hangs for some days. */
  private void hung(String body, int days) {
    scene.body(body + ",beef,2026-03-01,ann,");
    weighed(body, days);
  }

  private void weighed(String body, int days) {
    scene.weigh("02T10:00 %s cold carcase 100".formatted(body));
    scene.weigh("%02dT10:00 %s pack rump 70".formatted(1 + days, body));
  }

  /** Four bodies that hung 3, 4, 6 and 7 days. */
  private void four() {
    hung("A", 3);
    hung("B", 4);
    hung("C", 6);
    hung("D", 7);
  }

  private Optional<Integer> usual() {
    var night = night();
    Body next = night.bodies().get("X").body();
    return new UsualDays(night.bodies().values()).of(next);
  }

  @Test
  void fiveBodiesAreEnoughAndFourAreTooFew() {
    four();
    assertEquals(Optional.empty(), usual());
    hung("E", 5);
    assertEquals(Optional.of(5), usual());
  }

  @Test
  void aBodyThatIsStillBeingCutDoesNotCount() {
    four();
    scene.body("E,beef,2026-03-01,ann,");
    scene.weigh("02T10:00 E cold carcase 100\n18T10:00 E pack rump 30");
    assertEquals(Optional.empty(), usual());
  }

  @Test
  void aBodyThatWasTakenWholeDoesNotCount() {
    four();
    scene.body("E,beef,2026-03-01,ann,whole");
    scene.weigh("02T10:00 E cold carcase 100");
    assertEquals(Optional.empty(), usual());
  }

  @Test
  void aBodyWhoseKillIsNotKnownDoesNotCount() {
    four();
    scene.body("E,beef,,ann,");
    weighed("E", 5);
    assertEquals(Optional.empty(), usual());
  }

  @Test
  void ofManyBodiesTheTwentyThatWereCutLastCount() {
    for (int i = 0; i < 12; i++) {
      hung("EARLY" + i, 4);
    }
    for (int i = 0; i < 11; i++) {
      hung("LATE" + i, 9);
    }
    // Eleven of nine days and nine of four; of all 23 bodies the median would be four.
    assertEquals(Optional.of(9), usual());
  }
}
