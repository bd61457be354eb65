package gambrel.trade.reckoning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.scenes.FiguresTest;
import gambrel.trade.decision.State;
import gambrel.trade.measure.Weight;
import gambrel.trade.reckoning.Unfinished.CutBy;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What hangs, is on the block or waits, on a night of March 2026. */
class UnfinishedTest extends FiguresTest {
  private static final String COLUMNS = "body,species,class,killed,customer,cut_by,outcome";

  private List<Unfinished> on(String night) {
    return Unfinished.of(scene.reckon(night));
  }

  private Unfinished only(String night) {
    var unfinished = on(night);
    assertEquals(1, unfinished.size());
    return unfinished.get(0);
  }

  private static Optional<CutBy> asked(String day) {
    return Optional.of(new CutBy(LocalDate.parse(day), Optional.empty()));
  }

  private static Optional<CutBy> usual(String day, int days) {
    return Optional.of(new CutBy(LocalDate.parse(day), Optional.of(days)));
  }

  /** Bodies of a class that are killed on the first and cut after some days. */
  private void cut(String prefix, String category, int... days) {
    for (int i = 0; i < days.length; i++) {
      String id = prefix + i;
      scene.add("bodies.csv", id + ",beef," + category + ",2026-03-01,ann,,");
      scene.weigh("01T10:00 " + id + " hot carcase 300\n02T10:00 " + id + " cold carcase 294");
      scene.weigh("%02dT10:00 %s pack mince 290".formatted(1 + days[i], id));
    }
  }

  @Test
  void aBodyHangsWithItsLatestRailWeight() {
    scene.file("bodies.csv", COLUMNS, "B1,beef,steer,2026-03-02,ann,,");
    scene.weigh("02T10:00 B1 hot carcase 300\n04T10:00 B1 cold carcase 294");
    var hot = only("04T02:00");
    assertEquals(known("300"), hot.standing());
    assertEquals(Optional.of(2L), hot.days());
    var cold = only("05T02:00");
    assertEquals(known("294"), cold.standing());
    assertEquals(Optional.of(3L), cold.days());
    assertEquals(Weight.ZERO, cold.cut());
    assertTrue(cold.isHanging());
    assertFalse(cold.isBeingCut());
    assertEquals(Optional.empty(), cold.cutBy());
    assertEquals(Optional.empty(), cold.due());
    assertEquals(Optional.empty(), cold.rest());
  }

  @Test
  void aBodyNeitherKilledNorWeighedIsNotThereYet() {
    scene.file(
        "bodies.csv",
        COLUMNS,
        "B1,beef,steer,2026-03-12,ann,,",
        "B2,beef,steer,,ann,,",
        "B3,beef,steer,,ann,,");
    scene.weigh("02T10:00 B3 hot carcase 300");
    assertEquals("B3", only("11T02:00").account().body().id());
    assertEquals(Optional.empty(), only("11T02:00").days());
    assertEquals(
        List.of("B1", "B3"), on("12T02:00").stream().map(u -> u.account().body().id()).toList());
    assertEquals(Optional.empty(), on("12T02:00").get(0).standing());
  }

  @Test
  void aBodyThatIsIssuedOrCancelledIsFinished() {
    scene.file(
        "bodies.csv",
        COLUMNS,
        "B1,beef,steer,2026-03-02,ann,,",
        "B2,beef,steer,2026-03-02,ann,,cancelled");
    scene.simpleBody();
    assertEquals(List.of(), on("20T02:00"));
  }

  @Test
  void aBodyOnTheBlockTellsWhatIsCutAndWhatIsAtLeastToCome() {
    scene.file("bodies.csv", COLUMNS, "B1,beef,steer,2026-03-02,ann,2026-03-09,");
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 300
        03T10:00 B1 cold carcase 294
        """);
    assertEquals(asked("2026-03-09"), only("04T02:00").cutBy());
    scene.weigh("05T10:00 B1 pack rump 100\n05T10:10 B1 pack liver 6");
    var part = only("06T02:00");
    assertEquals(kg("100"), part.cut());
    assertEquals(Optional.empty(), part.cutBy());
    assertTrue(part.isBeingCut());
    assertFalse(part.isHanging());
    // 294 - 100 less the limit, 3 % of 294.
    assertEquals(known("185.18"), part.rest());
  }

  @Test
  void aBodyThatWaitsNeitherHangsNorIsCut() {
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 300
        03T10:00 B1 cold carcase 294
        05T10:00 B1 pack rump    100
        """);
    var held = only("20T02:00");
    assertFalse(held.isHanging());
    assertFalse(held.isBeingCut());
    assertEquals(Optional.empty(), held.rest());
  }

  @Test
  void aBodyIsDueAfterTheDaysThatItsClassUsuallyHangs() {
    scene.file("bodies.csv", COLUMNS);
    cut("S", "steer", 4, 5, 5, 7, 9, 10);
    cut("C", "cow", 12, 12);
    scene.add(
        "bodies.csv",
        "X1,beef,steer,2026-03-10,ann,,",
        "X2,beef,cow,2026-03-10,ann,,",
        "X3,beef,steer,2026-03-10,ann,2026-03-30,",
        "X4,beef,steer,2026-03-10,ann,,whole",
        "X5,pork,,2026-03-10,ann,,");
    var due = on("20T02:00").stream().map(Unfinished::cutBy).toList();
    assertEquals(
        List.of(
            // Of six days the lower of the middle two.
            usual("2026-03-15", 5),
            // Two cows are too few, so all eight cattle.
            usual("2026-03-17", 7),
            asked("2026-03-30"),
            Optional.empty(),
            Optional.empty()),
        due);
  }

  @Test
  void ofItsOpenBatchesTheLatestDayCounts() {
    scene
        .set("bins=partly")
        .file(
            "batches.csv",
            "batch,product,due",
            "M1,Ham,2026-04-01",
            "M2,Ham,2026-04-09",
            "M3,Ham,");
    scene.simpleBody();
    scene.weigh("05T11:00 B1 tub trim 1 batch=M3");
    scene.weigh("05T11:01 B1 tub trim 1 batch=M1\n05T11:02 B1 tub trim 1 batch=M2");
    assertEquals(Optional.of(LocalDate.parse("2026-04-09")), only("06T02:00").due());
    scene.weigh("06T11:00 - pack ham 1 batch=M2");
    assertEquals(Optional.of(LocalDate.parse("2026-04-01")), only("08T02:00").due());
  }

  @Test
  void whatIsToComeIsUnknownUntilFiveBodiesShowWhatIsUsual() {
    scene.set("bins=no", "rail=cold");
    scene.weigh("03T10:00 B1 cold carcase 100\n05T10:00 B1 pack rump 39");
    var part = only("06T02:00");
    assertTrue(part.isBeingCut());
    assertEquals(Optional.empty(), part.rest());
  }

  @Test
  void aWholeBodyThatWaitsDoesNotHang() {
    scene.file("bodies.csv", COLUMNS, "B1,beef,steer,2026-03-02,ann,,whole");
    scene.file("shares.csv", "body,customer,share", "B1,ann,1/2");
    scene.weigh("02T10:00 B1 hot carcase 300\n03T10:00 B1 cold carcase 294");
    assertTrue(only("03T15:59").isHanging());
    assertEquals(State.HELD, only("03T16:00").account().decision().state());
    assertFalse(only("03T16:00").isHanging());
  }
}
