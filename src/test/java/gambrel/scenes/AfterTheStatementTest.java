package gambrel.scenes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Weighings of a body whose statement has gone out. */
class AfterTheStatementTest extends SceneTest {
  @BeforeEach
  void issue() {
    scene.set("bins=partly").simpleBody();
    scene.nextNight("06T02:00");
  }

  @Test
  void aBodyWeighedAgainIsToldOnceWithWhatFollows() {
    scene.weigh("06T09:00 B1 pack rump 1").weigh("06T09:01 B1 pack rump 2");
    var found = scene.nextNight("07T02:00");
    assertEquals(List.of("note weighed-after-issue"), found.notices());
    String message = found.notice("weighed-after-issue", "message");
    assertTrue(message.contains("2026-03-06T09:00, 2 weighings"), message);
    assertTrue(message.endsWith("A revision replaces it."), message);
    assertEquals("2", found.statement("ann", "B1", "revision"));
  }

  @Test
  void whileItIsStillBeingCutTheRevisionWaits() {
    scene.weigh("06T23:00 B1 pack rump 1");
    String message = scene.nextNight("07T02:00").notice("weighed-after-issue", "message");
    assertTrue(message.endsWith("when the body is finished again."), message);
  }

  @Test
  void aRerunOfTheNightSaysTheSame() {
    scene.weigh("06T09:00 B1 pack rump 1");
    String first = scene.nextNight("07T02:00").text("data/notices.csv");
    assertEquals(first, scene.nextNight("07T02:00").text("data/notices.csv"));
  }

  @Test
  void onceTheRevisionIsOutThereIsNothingMoreToSay() {
    scene.weigh("06T09:00 B1 pack rump 1");
    scene.nextNight("07T02:00");
    assertEquals(List.of(), scene.nextNight("08T02:00").notices());
  }

  @Test
  void liverChangesNothingThatHung() {
    scene.weigh("06T09:00 B1 pack liver 1");
    assertEquals(List.of(), scene.nextNight("07T02:00").notices());
  }
}
