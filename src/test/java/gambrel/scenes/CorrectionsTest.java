package gambrel.scenes;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Corrections are laid over the rows of exports. */
class CorrectionsTest extends SceneTest {

  private void threePacks() {
    scene.weigh(
        """
        05T10:00 B1 pack rump 1 ticket=5119
        05T10:01 B1 pack rump 2 ticket=5120
        05T10:02 B1 pack rump 4 ticket=5121
        """);
  }

  @Test
  void aCorrectionOfOneTicket() {
    threePacks();
    scene.correct("bench", "5120", "net", "20", "06");
    assertBody(scene.at(LATER), "take_home_kg", "25.000");
  }

  @Test
  void aCorrectionOfARunOfTickets() {
    threePacks();
    scene.body("B2,beef,2026-03-02,bob").correct("bench", "5120-5163", "body", "B2", "06");
    var found = scene.at(LATER);
    assertBody(found, "take_home_kg", "1.000");
    assertEquals("6.000", found.body("B2", "take_home_kg"));
  }

  @Test
  void aCorrectionOfOneRowByItsFileAndLine() {
    threePacks();
    scene.correct("bench", "exports/a.csv:4", "net", "40", "06");
    assertBody(scene.at(LATER), "take_home_kg", "43.000");
  }

  @Test
  void whereNumbersCameRoundAgainADateTellsWhich() {
    scene.weigh(
        """
        05T10:00 B1 pack rump 1 ticket=7
        06T10:00 B1 pack rump 2 ticket=7
        """);
    scene.add("corrections.csv", "bench,7,2026-03-06,net,20,Eve,2026-03-07,misread");
    assertBody(scene.at(LATER), "take_home_kg", "21.000");
  }

  @Test
  void withoutADateATicketIsCorrectedOnEveryDay() {
    scene.weigh(
        """
        05T10:00 B1 pack rump 1 ticket=7
        06T10:00 B1 pack rump 2 ticket=7
        """);
    scene.correct("bench", "7", "net", "10", "07");
    assertBody(scene.at(LATER), "take_home_kg", "20.000");
  }

  @Test
  void ofSeveralTheLatestStandsAndAtOneTimeTheLastInTheFile() {
    threePacks();
    scene.correct("bench", "5120", "net", "30", "08");
    scene.correct("bench", "5120", "net", "20", "07");
    assertBody(scene.at(LATER), "take_home_kg", "35.000");
    scene.correct("bench", "5120", "net", "40", "08");
    assertBody(scene.at(LATER), "take_home_kg", "45.000");
  }

  @Test
  void aCorrectionDatedLaterHasNoEffectYetAndADateMeansMidnight() {
    threePacks();
    scene.correct("bench", "5120", "net", "20", "08");
    assertBody(scene.at("07T23:59:59"), "take_home_kg", "7.000");
    assertEquals(List.of(), scene.at("07T23:59:59").rows("notices", "code=correction-unused"));
    assertBody(scene.at("08T00:00"), "take_home_kg", "25.000");
  }

  @Test
  void aVoidedRowCountsAsVoid() {
    threePacks();
    scene.correct("bench", "5120", "status", "void", "06");
    var found = scene.at(LATER);
    assertEquals("3 = 2 + 0 + 1 + 0", found.counts());
    assertBody(found, "take_home_kg", "5.000");
  }

  @Test
  void whatThenStandsAloneOnItsTicketIsNoConflict() {
    scene.weigh(
        """
        05T10:00 B1 pack rump 1.0 ticket=7
        05T10:00 B1 pack rump 1.2 ticket=7
        """);
    scene.correct("bench", "exports/a.csv:2", "status", "void", "06");
    var found = scene.at(LATER);
    assertEquals("2 = 1 + 0 + 1 + 0", found.counts());
    assertBody(found, "take_home_kg", "1.200");
  }

  @ParameterizedTest
  @ValueSource(strings = {"9999", "6000-6100", "exports/a.csv:99"})
  void aCorrectionThatFitsNothingIsMarked(String ticket) {
    threePacks();
    scene.correct("bench", ticket, "net", "20", "06");
    var found = scene.at(LATER);
    assertEquals("mark", found.notice("correction-unused", "severity"));
    assertEquals("corrections.csv", found.notice("correction-unused", "file"));
    assertEquals("2", found.notice("correction-unused", "line"));
  }

  @Test
  void correctedRowsAreComparedAsCorrected() {
    scene.weigh(
        """
        05T10:00 B1 pack rump 1.0 ticket=7
        05T10:00 B1 pack rump 1.2 ticket=7
        """);
    scene.correct("bench", "exports/a.csv:2", "net", "1.20", "06");
    assertEquals("2 = 1 + 1 + 0 + 0", scene.at(LATER).counts());
  }

  @Test
  void aTimeCorrectedToAnotherDayMovesTheWeighing() {
    scene.weigh("05T10:00 B1 pack rump 1.0 ticket=7");
    scene.correct("bench", "7", "time", "2026-03-09T10:00", "10");
    assertBody(scene.at(LATER), "days_hung", "7");
  }

  @Test
  void aLaterWordTakesBackAVoid() {
    threePacks();
    scene.correct("bench", "5120", "status", "void", "06");
    scene.correct("bench", "5120", "status", "ok", "07");
    assertBody(scene.at(LATER), "take_home_kg", "7.000");
  }

  @Test
  void codeCustomerAndBatchCanBeCorrectedToo() {
    threePacks();
    scene.weigh("05T10:03 B1 bin bone 8");
    scene.correct("bench", "5119", "code", "bin.bone", "06");
    scene.correct("bench", "5120", "customer", "bob", "06");
    scene.correct("bench", "5121", "batch", "M1", "06");
    scene.release("B1", "close", "06").set("bins=no").release("B1", "release", "06");
    var found = scene.at(LATER);
    assertBody(found, "take_home_kg", "2.000");
    assertEquals("2.000", found.statement("bob", "B1", "take_home_kg"));
    assertEquals("4.000", found.cell("batches", "out_kg"));
  }
}
