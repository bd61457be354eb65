package gambrel.scenes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Weights that a scale cannot have shown, or that nothing in the shop can have. */
class ScaleSenseTest extends SceneTest {
  private void bench(String division, String capacity) {
    scene.file(
        "scales.csv",
        "scale,division,capacity",
        "rail,0.2,600",
        "bench," + division + "," + capacity);
  }

  @Test
  void aNetBelowZeroIsSetAside() {
    scene.weigh("05T10:00 B1 pack rump -0.15");
    assertEquals(List.of("hold net-negative"), besidesHeld(scene.at(LATER)));
  }

  @Test
  void aTareAboveTheGrossIsSetAside() {
    scene.weigh("05T10:00 B1 pack rump - gross=0.5 tare=0.7");
    assertEquals(List.of("hold net-negative"), besidesHeld(scene.at(LATER)));
  }

  /** Nine divisions above its capacity a scale shows no weight any more. */
  @ParameterizedTest
  @CsvSource({"30.09, 1 = 1 + 0 + 0 + 0", "30.10, 1 = 0 + 0 + 0 + 1"})
  void moreThanTheScaleCanShowIsSetAside(String net, String counts) {
    bench("0.01", "30");
    scene.weigh("05T10:00 B1 pack rump " + net);
    assertEquals(counts, scene.at(LATER).counts());
  }

  @Test
  void theGrossIsWhatTheScaleCarries() {
    bench("0.01", "30");
    scene.weigh("05T10:00 B1 pack rump 29 gross=31 tare=2");
    assertEquals(List.of("hold over-capacity"), besidesHeld(scene.at(LATER)));
  }

  @Test
  void aColdWeightAboveTheHotOneIsMarked() {
    scene.weigh("02T10:00 B1 hot carcase 300").weigh("03T10:00 B1 cold carcase 301");
    assertEquals(List.of("mark cold-above-hot"), besidesHeld(scene.at(LATER)));
  }

  @Test
  void aWeightBetweenTwoDivisionsIsTakenWithANoteAtItsRow() {
    bench("0.005", "");
    scene.weigh(
        """
        05T10:00 B1 pack rump 1.000
        05T10:01 B1 pack rump 1.005
        05T10:02 B1 pack rump 1.003
        """);
    var found = scene.at(LATER);
    assertEquals(List.of("note off-division"), besidesHeld(found));
    assertEquals("3", found.notice("off-division", "ticket"));
    assertBody(found, "take_home_kg", "3.008");
  }

  @ParameterizedTest
  @ValueSource(strings = {"1005 unit=g", "2.5 unit=lb scale=pounds", "- gross=1.5 tare=0.003"})
  void itIsJudgedAsWrittenInTheRowsOwnUnitAndByTheGrossWhereNoNetStands(String weight) {
    bench("0.005", "");
    scene.file("scales.csv", "scale,division,unit", "bench,0.005,kg", "pounds,0.5,lb");
    scene.weigh("05T10:00 B1 pack rump " + weight);
    assertEquals(List.of(), besidesHeld(scene.at(LATER)));
  }

  @Test
  void aFifthOfAnExportBetweenDivisionsIsToldOnceAScaleHoweverManyFiles() {
    bench("0.005", "");
    for (String file : List.of("exports/a.csv", "exports/b.csv")) {
      scene.weigh(
          file,
          """
          05T10:00 B1 pack rump 1.001
          05T10:01 B1 pack rump 1.002
          """);
    }
    var found = scene.at(LATER);
    assertEquals(List.of("note off-division"), besidesHeld(found));
    String message = found.notice("off-division", "message");
    assertTrue(message.startsWith("4 weights of scale bench in 2 files, such as net"), message);
    assertTrue(found.notice("off-division", "advice").contains("scales.csv"));
  }

  @Test
  void ofManyTypedWeightsTheFirstHaveANoteEachAndTheRestOne() {
    bench("0.005", "");
    scene.weigh(String.join("\n", Collections.nCopies(80, "05T10:00 B1 pack rump 1.000")));
    scene.weigh(String.join("\n", Collections.nCopies(12, "05T10:00 B1 pack rump 1.001")));
    var notes = scene.at(LATER).rows("notices", "code=off-division");
    assertEquals(10, notes.size());
    assertTrue(notes.get(9).get("message").startsWith("3 more weights"), notes::toString);
  }

  @Test
  void aWeightThatACorrectionGivesIsNotTakenForTheScales() {
    bench("0.005", "");
    scene.weigh("05T10:00 B1 pack rump 1.000");
    scene.correct("bench", "1", "net", "1.003", "06");
    assertEquals(List.of(), besidesHeld(scene.at(LATER)));
  }
}
