package gambrel.insight.usual;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.insight.month.figures.BodyFigure;
import gambrel.scenes.Scene;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which bodies are alike, and which figures are compared. */
class LikeBodiesTest {
  @TempDir private Path folder;
  private Scene scene;
  private int bodies;

  /** Eight steers boned out on the 5th, and B1, boned out on the 6th. */
  @BeforeEach
  void eightSteersAndB1() {
    scene =
        new Scene(folder)
            .file("bodies.csv", "body,species,class,killed,customer,live_weight,head,outcome")
            .file("batches.csv", "batch,product,due");
    for (int i = 0; i < 8; i++) {
      steer("05");
    }
    body("B1", "beef,steer,2026-03-02,ann,", "02T10:00");
    cut("B1", "06", "striploin", 80);
  }

  /** 100 hot, 98 cold. */
  private void body(String id, String facts, String hot) {
    scene.body(id + "," + facts);
    scene.weigh(hot + " " + id + " hot carcase 100\n03T10:00 " + id + " cold carcase 98");
  }

  /** A loin of 8, mince, and 9 of bone. */
  private void cut(String id, String day, String loin, int mince) {
    scene.weigh(day + "T10:00 " + id + " pack " + loin + " 8");
    scene.weigh(day + "T10:01 " + id + " pack mince " + mince);
    scene.weigh(day + "T10:02 " + id + " bin bone 9");
  }

  private String like(String facts, String day, String loin) {
    String id = "X" + ++bodies;
    body(id, facts, "02T10:00");
    cut(id, day, loin, 80);
    return id;
  }

  private String steer(String day) {
    return like("beef,steer,2026-03-02,bob,", day, "striploin");
  }

  private Optional<Comparison> compare(String id) {
    return LikeBodies.of(scene.reckon("20T02:00")).compare(id);
  }

  private int number() {
    return compare("B1").orElseThrow().bodies();
  }

  @Test
  void oneMoreSteerCutBeforeIsOneMore() {
    assertEquals(8, number());
    steer("05");
    assertEquals(9, number());
  }

  @Test
  void whatIsCutAtTheSameMomentOrLaterDoesNotCount() {
    steer("06");
    steer("07");
    assertEquals(8, number());
  }

  @Test
  void anotherClassSpeciesOrWayToCutDoesNotCount() {
    like("beef,heifer,2026-03-02,bob,", "05", "striploin");
    like("veal,steer,2026-03-02,bob,", "05", "striploin");
    like("beef,steer,2026-03-02,bob,", "05", "t-bone");
    assertEquals(8, number());
  }

  /** Seven with a T-bone, and one with a rib eye on the bone: each has something on the bone. */
  @Test
  void whereTooFewWereCutTheSameWayAllWithSomethingOnTheBoneCount() {
    for (int i = 0; i < 7; i++) {
      like("beef,steer,2026-03-02,bob,", "05", "t-bone");
    }
    String last = like("beef,steer,2026-03-02,bob,", "06", "t-bone");
    assertEquals(Optional.empty(), compare(last));
    like("beef,steer,2026-03-02,bob,", "05", "rib-eye-bone-in");
    assertEquals(8, compare(last).orElseThrow().bodies());
  }

  @Test
  void dressingIsComparedOnceEightOfThemWereWeighedAlive() {
    body("B2", "beef,steer,2026-03-02,ann,180", "02T10:00");
    cut("B2", "07", "striploin", 80);
    for (int i = 0; i < 7; i++) {
      like("beef,steer,2026-03-02,bob,180", "05", "striploin");
    }
    assertEquals(3, compare("B2").orElseThrow().figures().size());
    like("beef,steer,2026-03-02,bob,180", "05", "striploin");
    var dressing = compare("B2").orElseThrow().figures().get(1);
    assertEquals(BodyFigure.DRESSING, dressing.figure());
    assertEquals(8, dressing.bodies());
    assertEquals(17, compare("B2").orElseThrow().bodies(), "with B1 and the eight others");
  }

  @Test
  void aBodyWeighedAtAnotherStepTooOrAMobDoesNotCount() {
    like("beef,steer,2026-03-02,bob,,2", "05", "striploin");
    scene.weigh("04T10:00 " + steer("05") + " aged carcase 97");
    assertEquals(8, number());
  }

  /** Half of its mince is missing, which holds it. */
  @Test
  void aBodyThatIsHeldOrWasReleasedDoesNotCount() {
    String id = "R1";
    body(id, "beef,steer,2026-03-02,bob,", "02T10:00");
    cut(id, "05", "striploin", 40);
    assertEquals(8, number());
    scene.release(id, "release", "15T10:00");
    assertEquals(8, number());
    assertEquals(Optional.empty(), compare(id));
  }

  /** Of the eight none has another that was cut before it. */
  @Test
  void withFewerThanEightNothingIsCompared() {
    assertEquals(Optional.empty(), compare("X8"));
  }

  @Test
  void theLossesAreComparedAndTakeHomeOfTheColdWeight() {
    assertEquals(
        List.of(BodyFigure.CHILL, BodyFigure.BENCH, BodyFigure.TAKE_HOME),
        compare("B1").orElseThrow().figures().stream().map(Comparison.Compared::figure).toList());
  }

  @Test
  void theBenchLossIsNotComparedWhereNotAllBinsAreWeighed() {
    scene.set("bins=partly");
    var comparison = compare("B1").orElseThrow();
    assertEquals(
        List.of(BodyFigure.CHILL, BodyFigure.TAKE_HOME),
        comparison.figures().stream().map(Comparison.Compared::figure).toList());
    assertEquals(
        List.of(BodyFigure.CHILL), comparison.usual(), "take-home rests on the bench loss");
  }

  @Test
  void takeHomeIsNotComparedWhileABatchIsOpen() {
    scene.add("batches.csv", "M1,Ham,2026-04-30");
    scene.weigh("06T10:03 B1 tub trim 0.5 batch=M1");
    assertEquals(
        List.of(BodyFigure.CHILL, BodyFigure.BENCH),
        compare("B1").orElseThrow().figures().stream().map(Comparison.Compared::figure).toList());
  }

  @Test
  void takeHomeIsOfTheHotWeightWhereNoneIsColdInTheShop() {
    scene = new Scene(folder).set("rail=hot", "limit.cutting_loss_pct=4");
    scene.file("bodies.csv", "body,species,class,killed,customer");
    for (int i = 0; i < 9; i++) {
      String id = "H" + i;
      scene.body(id + ",beef,steer,2026-03-02,ann");
      scene.weigh("02T10:00 " + id + " hot carcase 100");
      cut(id, i < 8 ? "03" : "04", "striploin", 80);
    }
    assertEquals(
        List.of(BodyFigure.BENCH, BodyFigure.TAKE_HOME_OF_HOT),
        compare("H8").orElseThrow().figures().stream().map(Comparison.Compared::figure).toList());
  }
}
