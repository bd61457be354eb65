package gambrel.scenes;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Bodies that are not cut: left whole, condemned, cancelled. */
class OutcomesTest extends SceneTest {

  private void outcome(String outcome) {
    scene.file(
        "bodies.csv",
        "body,species,killed,customer,live_weight,outcome",
        "B1,lamb,2026-03-02,ann,45," + outcome);
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 21
        02T10:30 B1 pack liver    1
        03T10:00 B1 cold carcase 20
        """);
  }

  @Test
  void aBodyLeftWholeGoesHomeAsItsCarcase() {
    outcome("whole");
    var found = scene.at(LATER);
    assertEquals("issued", found.state("B1"));
    assertBody(found, "take_home_kg", "20.000");
    assertBody(found, "offal_kg", "1.000");
    assertBody(found, "take_home_of_cold_pct", "100.000");
    assertEquals("20.000", found.figure("ann", "B1", "item:carcase"));
    for (String column :
        List.of("cutting_loss_kg", "unweighed_kg", "meat_home_kg", "balance_u_kg")) {
      assertBody(found, column, "");
    }
    assertBody(found, "days_hung", "1");
  }

  @Test
  void aWholeBodyIsQuietFromItsLastRailWeighing() {
    outcome("whole");
    scene.weigh("03T12:00 B1 pack heart 0.2");
    var open = scene.at("03T15:59");
    assertEquals("open", open.state("B1"));
    assertBody(open, "cold_kg", "20.000");
    assertBody(open, "take_home_kg", "");
    assertBody(open, "days_hung", "");
    assertEquals("issued", scene.at("03T16:00").state("B1"));
  }

  @Test
  void aWholeBodyIsOpenUntilItsLastRailWeight() {
    scene.file(
        "bodies.csv", "body,species,killed,customer,outcome", "B1,lamb,2026-03-02,ann,whole");
    scene
        .set("rail=hot,cold,aged")
        .weigh("02T10:00 B1 hot carcase 21\n03T10:00 B1 cold carcase 20");
    assertEquals("open", scene.at(LATER).state("B1"));
    scene.weigh("12T10:00 B1 aged carcase 19");
    var found = scene.at(LATER);
    assertEquals("issued", found.state("B1"));
    assertBody(found, "take_home_kg", "19.000");
    assertBody(found, "days_hung", "10");
  }

  @Test
  void aWholeBodyThatMissesAnEarlierRailWeightIsHeld() {
    scene.file(
        "bodies.csv", "body,species,killed,customer,outcome", "B1,lamb,2026-03-02,ann,whole");
    scene.weigh("03T10:00 B1 cold carcase 20");
    assertEquals("held rail-missing", scene.at(LATER).state("B1"));
  }

  @Test
  void aCondemnedBodyNeedsNoRailWeight() {
    scene.file(
        "bodies.csv", "body,species,killed,customer,outcome", "B1,lamb,2026-03-02,ann,condemned");
    // Quiet hours run from the end of the day of its kill.
    assertEquals("open", scene.at("03T05:59").state("B1"));
    assertBody(scene.at("03T05:59"), "take_home_kg", "");
    var found = scene.at("03T06:00");
    assertEquals("issued", found.state("B1"));
    assertBody(found, "take_home_kg", "0.000");
    assertBody(found, "boning_kg", "");
  }

  @Test
  void aCondemnedBodyWeighedInPartMissesNothing() {
    scene.file(
        "bodies.csv", "body,species,killed,customer,outcome", "B1,lamb,2026-03-02,ann,condemned");
    scene.weigh("02T10:00 B1 hot carcase 21\n03T10:00 B1 cold side 10");
    var found = scene.at(LATER);
    assertEquals("issued", found.state("B1"));
    assertBody(found, "days_hung", "1");
  }

  @Test
  void aCondemnedBodyTakesNothingHome() {
    outcome("condemned");
    var found = scene.at(LATER);
    assertEquals("issued", found.state("B1"));
    assertBody(found, "take_home_kg", "0.000");
    assertBody(found, "boning_kg", "20.000");
    assertBody(found, "cutting_loss_kg", "");
    assertBody(found, "meat_home_kg", "");
  }

  @Test
  void aCancelledBodyHasNoStatementAndNoFigures() {
    outcome("cancelled");
    var found = scene.at(LATER);
    assertEquals("cancelled", found.state("B1"));
    assertEquals(List.of(), found.rows("statements"));
    assertBody(found, "hot_kg", "");
    assertEquals(0, found.exit());
    assertEquals(List.of(), found.rows("shrink"));
  }

  @Test
  void halvesOfAWholeBodyAreDividedExactly() {
    outcome("whole");
    scene.file("shares.csv", "body,customer,share", "B1,ann,1/2", "B1,bob,1/2");
    scene.correct("rail", "3", "net", "20.001", "04");
    var found = scene.at(LATER);
    assertEquals("10.001", found.statement("ann", "B1", "take_home_kg"));
    assertEquals("10.000", found.statement("bob", "B1", "take_home_kg"));
  }
}
