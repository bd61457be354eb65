package gambrel.scenes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the time of a weighing means, and what is said of clocks that cannot be right. */
class ClocksTest extends SceneTest {

  @ParameterizedTest
  @ValueSource(strings = {"26-03-05T10:00", "0026-03-05T10:00", "1899-12-31T10:00"})
  void aYearOfTwoDigitsOrOfAnotherAgeIsNoTime(String time) {
    scene.weigh(time + " B1 pack rump 1");
    assertEquals(List.of("hold time-bad"), besidesHeld(scene.at(LATER)));
  }

  @Test
  void aLayoutsTwoDigitYearIsOfThisCentury() {
    scene.file("exports/shed/layout.properties", "time=dd.MM.yy HH:mm");
    scene.file("exports/shed/a.csv", "scale,ticket,time,body,code,net");
    scene.weigh("02T10:00 B1 pack rump 1");
    scene.add("exports/shed/a.csv", "bench,7,05.03.26 10:00,B1,pack.rump,2");
    var found = scene.at(LATER);
    assertEquals(List.of(), besidesHeld(found));
    assertBody(found, "take_home_kg", "3.000");
  }

  /** Clocks went from 02:00 back to 01:00 on 25 October, and from 01:00 on to 02:00 on 29 March. */
  @Nested
  class SummerTime {
    @BeforeEach
    void ofLondon() {
      scene.set("zone=Europe/London");
      scene.file("bodies.csv", "body,species,killed,customer", "B1,beef,2026-10-24,ann");
      scene.weigh("2026-10-24T23:30 B1 hot carcase 300");
    }

    private String hours(Found found) {
      return found.body("B1", "hours_chilled");
    }

    @Test
    void anHourThatComesTwiceIsTheSecondOnceTheClockWasSeenToGoBack() {
      scene.weigh(
          """
          2026-10-25T01:40 -  other -       1 scale=rail
          2026-10-25T01:30 B1 cold  carcase 294
          """);
      var found = scene.at("2026-10-25T12:00");
      assertEquals("3.000", hours(found));
      assertEquals(List.of(), besidesHeld(found));
    }

    @Test
    void itIsTheFirstBeforeThat() {
      scene.weigh(
          """
          2026-10-25T01:30 B1 cold  carcase 294
          2026-10-25T01:10 -  other -       1 scale=rail
          """);
      var found = scene.at("2026-10-25T12:00");
      assertEquals("2.000", hours(found));
      assertEquals(List.of(), besidesHeld(found));
    }

    @Test
    void anotherScalesClockTellsNothing() {
      scene.weigh(
          """
          2026-10-25T01:40 -  other -       1
          2026-10-25T01:30 B1 cold  carcase 294
          """);
      assertEquals("2.000", hours(scene.at("2026-10-25T12:00")));
    }

    @Test
    void whereNothingTellsTheFirstIsTakenWithOneNoteAScale() {
      scene.weigh(
          """
          2026-10-25T01:30 B1 cold  carcase 294
          2026-10-25T01:40 -  other -       1 scale=rail
          """);
      var found = scene.at("2026-10-25T12:00");
      assertEquals("2.000", hours(found));
      assertEquals(List.of("note hour-repeated"), besidesHeld(found));
      assertEquals("3", found.notice("hour-repeated", "line"));
    }

    @Test
    void itsAdviceSettlesIt() {
      scene.weigh("2026-10-25T01:30 B1 cold carcase 294");
      String advice = scene.at("2026-10-25T12:00").notice("hour-repeated", "advice");
      String time = advice.replaceFirst(".* as in (.*)\\.", "$1");
      scene.correct("rail", "2", "time", time, "2026-10-25");
      var found = scene.at("2026-10-25T12:00");
      assertEquals("3.000", hours(found));
      assertEquals(List.of(), besidesHeld(found));
    }

    @Test
    void anExportThatBeginsInTheSecondHourFollowsTheOneThatShowsTheFirst() {
      scene.weigh("2026-10-25T01:40 - other - 1 scale=rail ticket=8");
      scene.weigh("2026-10-25T01:10 - other - 1 scale=rail ticket=9");
      scene.weigh("exports/b.csv", "2026-10-25T01:10 - other - 1 scale=rail ticket=9");
      scene.weigh("exports/b.csv", "2026-10-25T01:30 B1 cold carcase 294 ticket=10");
      var found = scene.at("2026-10-25T12:00");
      assertEquals("3.000", hours(found));
      assertEquals("2 = 1 + 1 + 0 + 0", found.counts("exports/b.csv"));
      assertEquals(List.of(), besidesHeld(found));
    }

    @Test
    void aRepeatThatGivesItsOffsetIsFoundInTheSecondHour() {
      String columns = "scale,ticket,time,body,code,net";
      scene.file("codes.csv", "code,item,step", "6,carcase,cold", "7,,other");
      scene.file(
          "exports/b.csv",
          columns,
          "rail,,2026-10-25T01:40,,7,1",
          "rail,,2026-10-25T01:30,B1,6,294");
      scene.file(
          "exports/c.csv",
          columns,
          "rail,,2026-10-25T01:30+00:00,B1,6,294",
          "rail,,2026-10-25T01:40+00:00,,7,1");
      var found = scene.at("2026-10-25T12:00");
      assertEquals("2 = 2 + 0 + 0 + 0", found.counts("exports/b.csv"));
      assertEquals("2 = 1 + 1 + 0 + 0", found.counts("exports/c.csv"));
    }

    @Test
    void anExportThatListsTheNewestFirstIsReadFromItsEnd() {
      scene.weigh("exports/b.csv", "2026-10-25T01:50 - other - 1 scale=rail ticket=12");
      scene.weigh("exports/b.csv", "2026-10-25T01:30 B1 cold carcase 294 ticket=11");
      scene.weigh("exports/b.csv", "2026-10-25T01:40 - other - 1 scale=rail ticket=10");
      var found = scene.at("2026-10-25T12:00");
      assertEquals("3.000", hours(found));
      assertEquals(List.of(), besidesHeld(found));
    }

    @Test
    void aTimeInTheSkippedHourIsTakenAsAnHourLaterWithANote() {
      scene.file("bodies.csv", "body,species,killed,customer", "B1,beef,2026-03-28,ann");
      scene.file("exports/a.csv", Weighings.HEADER);
      scene.weigh(
          """
          2026-03-28T23:30 B1 hot  carcase 300
          2026-03-29T01:30 B1 cold carcase 294
          """);
      var found = scene.at(LATER);
      assertEquals("2.000", hours(found));
      assertEquals(List.of("note hour-skipped"), besidesHeld(found));
    }
  }

  @Test
  void rowsDatedAheadAreToldOnceAScale() {
    scene.weigh(
        """
        05T10:00 B1 pack rump 1
        07T10:00 B1 pack rump 2
        08T10:00 B1 pack rump 4
        """);
    var found = scene.at("06T00:00");
    assertEquals(List.of("note dated-ahead"), besidesHeld(found));
    String message = found.notice("dated-ahead", "message");
    assertTrue(message.startsWith("2 rows of scale bench are dated 2026-03-07T10:00 to"), message);
    assertEquals("3 = 3 + 0 + 0 + 0", found.counts());
  }

  @Test
  void whatIsWeighedWhileTheNightRunsIsNotAhead() {
    scene.weigh("05T08:00 B1 pack rump 1");
    assertEquals(List.of(), besidesHeld(scene.at("05T02:00")));
    assertEquals(List.of("note dated-ahead"), besidesHeld(scene.at("05T01:59")));
  }

  @Test
  void aClockThatGoesBackWhileTicketsCountOnIsToldAtTheRow() {
    scene.weigh(
        """
        05T10:00 B1 pack rump 1
        05T10:01 B1 pack rump 2
        05T08:00 B1 pack rump 4
        05T08:01 B1 pack rump 8
        """);
    var found = scene.at(LATER);
    assertEquals(List.of("note clock-reset"), besidesHeld(found));
    assertEquals("4", found.notice("clock-reset", "line"));
    assertEquals("3", found.notice("clock-reset", "ticket"));
    assertBody(found, "take_home_kg", "15.000");
  }

  @Test
  void aStepBackOfAnHourIsNoReset() {
    scene.weigh(
        """
        05T10:00 B1 pack rump 1
        05T10:01 B1 pack rump 2
        05T09:01 B1 pack rump 4
        05T09:02 B1 pack rump 8
        """);
    assertEquals(List.of(), besidesHeld(scene.at(LATER)));
  }

  @Test
  void ticketsThatStartAnewAreNoReset() {
    scene.weigh(
        """
        06T10:00 B1 pack rump 1 ticket=9998
        06T10:01 B1 pack rump 2 ticket=9999
        05T10:00 B1 pack rump 4 ticket=1
        05T10:01 B1 pack rump 8 ticket=2
        """);
    assertEquals(List.of(), besidesHeld(scene.at(LATER)));
  }

  @Test
  void anExportInSomeOtherOrderTellsNothingOfTheClock() {
    scene.weigh(
        """
        05T18:00 B1 pack rump 1
        05T16:00 B1 pack rump 2
        05T17:00 B1 pack rump 4
        05T13:00 B1 pack rump 8
        """);
    assertEquals(List.of(), besidesHeld(scene.at(LATER)));
  }

  @Test
  void aWeighingBeforeTheKillIsMarkedOnceABody() {
    scene.weigh(
        """
        01T10:00 B1 hot  carcase 300
        01T20:00 B1 cold carcase 294
        02T00:00 B1 pack rump    1
        """);
    var found = scene.at("02T02:00");
    assertEquals(List.of("mark weighed-before-kill"), besidesHeld(found));
    assertEquals("2", found.notice("weighed-before-kill", "line"));
    assertTrue(found.notice("weighed-before-kill", "message").contains("(2 weighings"));
  }
}
