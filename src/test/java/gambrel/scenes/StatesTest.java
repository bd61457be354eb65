package gambrel.scenes;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Open, held, issued, closed, cancelled: when a statement goes out. */
class StatesTest extends SceneTest {

  @Test
  void aBodyIsOpenUntilItHasAnEndProductHoweverLong() {
    scene.weigh(
        """
        02T10:00 B1 hot   carcase 300
        03T10:00 B1 cold  carcase 294
        05T10:00 B1 block rump     20
        """);
    assertEquals("open", scene.at(LATER).state("B1"));
    assertEquals(0, scene.at(LATER).exit());
  }

  @Test
  void aBodyIsOpenUntilQuietHoursHavePassedToTheMinute() {
    scene.simpleBody();
    assertEquals("open", scene.at("05T16:29").state("B1"));
    assertEquals("issued", scene.at("05T16:30").state("B1"));
  }

  @Test
  void anyWeighingOfTheBodyStartsTheQuietHoursAgain() {
    scene.simpleBody().weigh("05T15:00 B1 pack liver 6");
    assertEquals("open", scene.at("05T20:59").state("B1"));
    assertEquals("issued", scene.at("05T21:00").state("B1"));
  }

  @Test
  void theShopSetsItsQuietHours() {
    scene.simpleBody().set("quiet_hours=0");
    assertEquals("issued", scene.at("05T10:30").state("B1"));
  }

  @Test
  void quietHoursAreHoursNotWhatTheClockShows() {
    // In Berlin the clock goes from two to three on 29 March 2026.
    scene.set("zone=Europe/Berlin", "rail=cold", "bins=no");
    scene.weigh(
        """
        27T10:00 B1 cold carcase 294
        28T23:00 B1 pack rump    200
        """);
    assertEquals("open", scene.at("29T05:59").state("B1"));
    assertEquals("issued", scene.at("29T06:00").state("B1"));
  }

  @Test
  void aPartCutBodyIsOpenForFourDaysToTheMinute() {
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 300
        03T10:00 B1 cold carcase 294
        05T10:00 B1 pack rump    150
        """);
    assertEquals("open part-cut", scene.at("09T09:59").state("B1"));
    assertEquals("held loss-high", scene.at("09T10:00").state("B1"));
    scene.set("cutting_days=2");
    assertEquals("held loss-high", scene.at("07T10:00").state("B1"));
  }

  @Test
  void aBodyCutOverTwoDaysIsIssuedWhenItIsDone() {
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 300
        03T10:00 B1 cold carcase 294
        05T10:00 B1 pack rump    150
        06T10:00 B1 pack chuck   140
        """);
    assertEquals("open part-cut", scene.at("06T09:00").state("B1"));
    assertEquals("open", scene.at("06T15:59").state("B1"));
    assertEquals("issued", scene.at("06T16:00").state("B1"));
  }

  @Test
  void anUntestedLossIsNeverPartCut() {
    scene.set("bins=partly");
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 300
        03T10:00 B1 cold carcase 294
        05T10:00 B1 pack rump    150
        """);
    assertEquals("issued", scene.at("06T00:00").state("B1"));
  }

  @Test
  void aHeldStatementIsADraftAndANotice() {
    scene.simpleBody().weigh("05T11:00 B1 pack rump 5");
    var found = scene.at(LATER);
    assertEquals("held loss-negative", found.state("B1"));
    assertEquals(
        List.of("held/ann/B1.pdf", "morning.pdf", "summaries/2026-03.pdf"), found.documents());
    assertEquals("hold", found.notice("held", "severity"));
    assertEquals("B1", found.notice("held", "body"));
    assertEquals(1, found.exit());
  }

  @Test
  void everyReasonIsListed() {
    scene.file("shares.csv", "body,customer,share", "B1,ann,1/2");
    scene.weigh(
        """
        03T10:00 B1 cold carcase 294
        05T10:00 B1 pack rump    300
        05T10:05 B1 pack rump    x
        """);
    assertEquals(
        "held rail-missing;loss-negative;row-set-aside;shares", scene.at(LATER).state("B1"));
  }

  @Test
  void theShopsOwnBodyIsClosedOrHeldWithoutAPage() {
    scene.file("bodies.csv", "body,species,killed", "B1,beef,2026-03-02");
    scene.simpleBody();
    var closed = scene.at(LATER);
    assertEquals("closed", closed.state("B1"));
    assertEquals(List.of("morning.pdf", "summaries/2026-03.pdf"), closed.documents());
    assertEquals(0, closed.exit());

    scene.weigh("05T11:00 B1 pack rump 5");
    var held = scene.at(LATER);
    assertEquals("held loss-negative", held.state("B1"));
    assertEquals(List.of("morning.pdf", "summaries/2026-03.pdf"), held.documents());
    assertEquals(1, held.exit());
  }

  @Test
  void somebodyElsesPackMakesTheShopsOwnBodyAStatement() {
    scene.file("bodies.csv", "body,species,killed", "B1,beef,2026-03-02");
    scene.simpleBody().set("bins=partly").weigh("05T10:35 B1 pack liver 2 customer=bob");
    assertEquals("issued", scene.at(LATER).state("B1"));
  }

  @Test
  void aRowSetAsideHoldsOnlyTheBodyThatItNames() {
    scene.simpleBody().body("B2,beef,2026-03-02,ann");
    scene.weigh("05T10:35 B2 pack rump x\n05T10:36 - pack rump x");
    var found = scene.at(LATER);
    assertEquals("issued", found.state("B1"));
    // Two rows wait for a person all the same.
    assertEquals(1, found.exit());
  }

  @Test
  void aRowSetAsideThatIsDatedLaterHoldsNothingYet() {
    scene.simpleBody().weigh("20T10:35 B1 pack rump x");
    assertEquals("issued", scene.at("19T00:00").state("B1"));
    assertEquals("held row-set-aside", scene.at("21T00:00").state("B1"));
  }

  @Test
  void aMonthHasASummaryWhereItHasABody() {
    scene.body("B2,beef,2026-01-20,ann", "B3,beef,2026-07-02,ann");
    scene.body("B4,beef,2025-11-02,ann,,,,cancelled");
    scene.weigh("2026-04-01T10:00 B1 pack rump 1");
    // B2 and B1 by their kill, B1 by its last cut; B3 is yet to come and B4 never will.
    assertEquals(
        List.of("summaries/2026-01.pdf", "summaries/2026-03.pdf", "summaries/2026-04.pdf"),
        scene.at("2026-05-05T00:00").documents().stream()
            .filter(file -> file.startsWith("summaries/"))
            .toList());
  }

  @Test
  void aBodyThatIsKilledLaterInTheMonthMakesNoSummaryYet() {
    assertEquals(List.of("morning.pdf"), scene.at("01T02:00").documents());
    assertEquals(List.of("morning.pdf", "summaries/2026-03.pdf"), scene.at("02T02:00").documents());
  }
}
