package gambrel.scenes;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** {@code shrink.csv}: the individuals chart of chill shrink, species by species. */
class ShrinkChartTest extends SceneTest {

  /** A body of 100 hot that loses {@code shrink} per cent; killed on a day at ten. */
  private void chilled(String body, String species, String day, String cold) {
    scene.body(body + "," + species + ",2026-03-" + day + ",ann");
    scene.weigh(
        """
        %1$sT10:00 %2$s hot  carcase 100
        28T10:00   %2$s cold carcase %3$s
        """
            .formatted(day, body, cold));
  }

  private Scene withoutB1() {
    return scene.file("bodies.csv", "body,species,killed,customer,live_weight,head,tags,outcome");
  }

  private static String limits(Found found, String body) {
    var row = found.rows("shrink", "body=" + body).get(0);
    return row.get("centre") + ' ' + row.get("lower") + ' ' + row.get("upper");
  }

  @Test
  void limitsAreTheMeanAndThreeMeanMovingRangesOverOnePointOneTwoEight() {
    withoutB1();
    chilled("B2", "beef", "03", "98");
    chilled("B3", "beef", "04", "97");
    chilled("B4", "beef", "05", "96");
    // 2, 3 and 4 %: mean 3, moving ranges 1 and 1, 3 · 1 / 1.128 = 2.660
    assertEquals("3.000 0.340 5.660", limits(scene.at(LATER), "B3"));
  }

  @Test
  void limitsAreNotClippedAtZero() {
    withoutB1();
    chilled("B2", "beef", "03", "99");
    chilled("B3", "beef", "04", "97");
    assertEquals("2.000 -3.319 7.319", limits(scene.at(LATER), "B2"));
  }

  @Test
  void oneValueHasACentreAndNoLimits() {
    withoutB1();
    chilled("B2", "beef", "03", "98");
    assertEquals("2.000  ", limits(scene.at(LATER), "B2"));
  }

  @Test
  void everySpeciesHasItsOwnChart() {
    withoutB1();
    chilled("B2", "beef", "03", "98");
    chilled("L1", "lamb", "03", "96");
    var found = scene.at(LATER);
    assertEquals("2.000  ", limits(found, "B2"));
    assertEquals("4.000  ", limits(found, "L1"));
  }

  @Test
  void bodiesComeInOrderOfKillThenHotWeighingThenId() {
    withoutB1();
    chilled("B5", "beef", "03", "98");
    chilled("B4", "beef", "04", "98");
    chilled("B3", "beef", "04", "98");
    scene.body("B2,beef,2026-03-04,ann").weigh("04T09:00 B2 hot carcase 100");
    assertEquals(
        List.of("B5", "B2", "B3", "B4"),
        scene.at(LATER).rows("shrink").stream().map(row -> row.get("body")).toList());
  }

  @Test
  void aBodyWithoutChillShrinkIsListedWithoutAChart() {
    withoutB1();
    chilled("B2", "beef", "03", "98");
    scene.body("B3,beef,2026-03-04,ann").weigh("04T09:00 B3 hot carcase 100");
    var row = scene.at(LATER).rows("shrink", "body=B3").get(0);
    assertEquals("2026-03", row.get("month"));
    for (String column : List.of("chill_shrink_pct", "centre", "lower", "upper", "signal")) {
      assertEquals("", row.get(column), column);
    }
  }

  @Test
  void bodiesKilledLaterOrCancelledAreNotListed() {
    scene.body("B2,beef,2026-04-01,ann", "B3,beef,2026-03-03,ann,,,,cancelled");
    assertEquals(
        List.of("B1"),
        scene.at(LATER).rows("shrink").stream().map(row -> row.get("body")).toList());
  }

  @Test
  void aBodyBeyondTheLimitsIsASignal() {
    withoutB1();
    for (int i = 10; i < 21; i++) {
      chilled("B" + i, "beef", String.valueOf(i), "98");
    }
    chilled("B21", "beef", "21", "90");
    var found = scene.at(LATER);
    assertEquals("beyond-limits", found.cell("shrink", "signal", "body=B21"));
    assertEquals("", found.cell("shrink", "signal", "body=B10"));
  }

  @Test
  void aChillShrinkBeyondTheLimitsOfTheYearBeforeIsMarked() {
    withoutB1();
    for (int i = 0; i < 8; i++) {
      chilled("B1" + i, "beef", "0" + (i + 1), i % 2 == 0 ? "98" : "97");
    }
    // 2 and 3 % in turn: mean 2.5, moving ranges of 1, limits -0.16 and 5.16
    chilled("B30", "beef", "20", "94.8");
    chilled("B31", "beef", "21", "94.9");
    assertEquals("B30", scene.at(LATER).notice("chill-unusual", "body"));
    assertEquals(List.of(), scene.at("2026-04-21T00:00").rows("notices", "code=chill-unusual"));
  }

  @Test
  void sevenBodiesBeforeAreTooFewToMarkOne() {
    withoutB1();
    for (int i = 0; i < 7; i++) {
      chilled("B1" + i, "beef", "0" + (i + 1), i % 2 == 0 ? "98" : "97");
    }
    chilled("B30", "beef", "20", "80");
    assertEquals(List.of(), scene.at(LATER).rows("notices", "code=chill-unusual"));
  }
}
