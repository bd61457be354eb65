package gambrel.pages.owner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import gambrel.pages.views.SummaryView;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MonthFiguresTest {
  private static final String LATER = "2026-09-15T02:00:00Z";
  private static final String CHILL = "Customers’ bodies, in the chiller";
  private static final String BENCH = "Customers’ bodies, on the bench";
  private static final String SHARED = "Bodies shared by customers and the shop, in the chiller";

  @TempDir private Path folder;
  private SmallShop shop;

  @BeforeEach
  void startAShop() {
    shop = new SmallShop(folder);
  }

  @Test
  void hangingBelongsToTheMonthOfKillAndCuttingToThatOfTheLastCut() {
    shop.beef("B1", "2026-07-30", "c-ann").hung("B1", "2026-07-30", "300", "294");
    shop.row("rail", "2026-08-03T08:00", "B1", "aged", "294");
    shop.cut("B1", "2026-08-04", "220", "70");
    var july = shop.summary("2026-07", LATER);
    var august = shop.summary("2026-08", LATER);
    assertEquals(List.of("2.0", "of 1"), lost(july, CHILL));
    assertEquals(List.of(), lost(july, BENCH));
    assertEquals(List.of(), lost(august, CHILL));
    assertEquals(List.of("1.4", "of 1"), lost(august, BENCH));
    assertEquals("4.00", row(august, BENCH).get(1));
  }

  @Test
  void aBodyIsListedInBothMonthsWithWhatBelongsToEach() {
    shop.beef("B1", "2026-07-30", "c-ann").hung("B1", "2026-07-30", "300", "294");
    shop.row("rail", "2026-08-03T08:00", "B1", "aged", "294");
    shop.cut("B1", "2026-08-04", "220", "70");
    var july = only(shop.summary("2026-07", LATER));
    assertEquals(
        List.of("300.0", "294.0", "", "", "2.0", ""),
        List.of(july.get(4), july.get(5), july.get(6), july.get(7), july.get(9), july.get(10)));
    var august = only(shop.summary("2026-08", LATER));
    assertEquals(
        List.of("", "", "294.0", "220.00", "", "1.4"),
        List.of(
            august.get(4),
            august.get(5),
            august.get(6),
            august.get(7),
            august.get(9),
            august.get(10)));
  }

  @Test
  void anAverageIsAllWeightLostOverAllWeightItWasLostFrom() {
    shop.beef("B1", "2026-07-06", "c-ann").hung("B1", "2026-07-06", "100", "98");
    shop.beef("B2", "2026-07-07", "c-bob").hung("B2", "2026-07-07", "300", "297");
    var july = shop.summary("2026-07", LATER);
    assertEquals(List.of("1.3", "of 2"), lost(july, CHILL), "5 of 400, not the mean of 2 and 1");
    assertEquals("5.0", row(july, CHILL).get(1));
  }

  @Test
  void aFigureIsOfTheBodiesThatHaveIt() {
    shop.beef("B1", "2026-07-06", "c-ann").hung("B1", "2026-07-06", "100", "98");
    shop.beef("B2", "2026-07-07", "c-bob").row("rail", "2026-07-07T08:00", "B2", "hot", "300");
    assertEquals(List.of("2.0", "of 1"), lost(shop.summary("2026-07", LATER), CHILL));
  }

  @Test
  void customersBodiesTheShopsOwnAndSharedOnesAreNeverAdded() {
    shop.beef("B1", "2026-07-06", "c-ann").hung("B1", "2026-07-06", "100", "98");
    shop.beef("B2", "2026-07-06", "").hung("B2", "2026-07-06", "100", "97");
    shop.beef("B3", "2026-07-06", "").hung("B3", "2026-07-06", "100", "96");
    shop.add("shares.csv", "B3,c-bob,1/2\nB3,shop,1/2");
    var month = shop.summary("2026-07", LATER);
    assertEquals(
        List.of("2.0", "3.0", "4.0"),
        Stream.of(CHILL, "The shop’s own bodies, in the chiller", SHARED)
            .map(title -> row(month, title).get(1))
            .toList());
  }

  @Test
  void ageingIsOfTheColdWeightOfWhatWasAged() {
    shop.beef("B1", "2026-07-06", "c-ann").hung("B1", "2026-07-06", "300", "290");
    shop.row("rail", "2026-07-16T08:00", "B1", "aged", "284.2");
    var july = shop.summary("2026-07", LATER);
    assertEquals(List.of("2.0", "of 1"), lost(july, "Customers’ bodies, while hanging"));
    assertEquals("5.8", row(july, "Customers’ bodies, while hanging").get(1));
  }

  @Test
  void yieldsAreOfColdAndOfTheWeightIntoTheBoningRoom() {
    shop.beef("B1", "2026-07-06", "c-ann").hung("B1", "2026-07-06", "204", "200");
    shop.cut("B1", "2026-07-09", "140", "40").row("bench", "2026-07-09T10:00", "B1", "fat", "17");
    var row = SmallShop.rows(shop.summary("2026-07", LATER), "like").get(0);
    assertEquals(List.of("70.0", "of 1"), row.subList(1, 3));
    assertEquals(List.of("20.0", "of 1"), row.subList(3, 5));
    assertEquals(List.of("8.5", "of 1"), row.subList(5, 7));
  }

  @Test
  void whatIsStillBeingCutCountsOnTheRailAlone() {
    shop.beef("B1", "2026-07-06", "c-ann").hung("B1", "2026-07-06", "204", "200");
    shop.cut("B1", "2026-07-09", "140", "40");
    var month = shop.summary("2026-07", "2026-07-09T12:00:00Z");
    assertEquals(List.of("2.0", "of 1"), lost(month, CHILL));
    assertEquals(List.of(), lost(month, BENCH));
    assertEquals("", only(month).get(7));
  }

  /** B1 is sound, B2 is held: the head, the picture and its sums count B1. */
  @Test
  void thePictureItsSumsAndTheHeadCountTheSameBodies() {
    shop.beef("B1", "2026-07-06", "c-ann").hung("B1", "2026-07-06", "204", "200");
    shop.row("rail", "2026-07-09T08:00", "B1", "aged", "198");
    shop.cut("B1", "2026-07-09", "156", "40");
    shop.beef("B2", "2026-07-06", "c-bob").hung("B2", "2026-07-06", "204", "200");
    shop.cut("B2", "2026-07-09", "140", "40");
    var first = shop.summary("2026-07", LATER).first();
    assertEquals(
        "Bodies behind these figures: killed 1, cut 1 in the month; killed 0, cut 0 in the twelve"
            + " months before.",
        first.counted());
    assertEquals("204.0\u00a0kg", first.kilos().get(0).rows().get(0).weight());
    assertEquals(
        List.of("Customers’ bodies", "1", "204.0", "198.0", "156.0"),
        SmallShop.texts(first.sums().get(0).rows().get(0)));
    assertEquals(
        List.of("Bodies", "First weighed, kg", "Weight into the boning room, kg", "Take-home, kg"),
        first.sums().get(0).heads().get(0).stream().skip(1).map(h -> h.text()).toList());
  }

  @Test
  void whatIsHeldIsNamedAndCountsNowhere() {
    shop.beef("B1", "2026-07-06", "c-ann").hung("B1", "2026-07-06", "204", "200");
    shop.cut("B1", "2026-07-09", "140", "40");
    var month = shop.summary("2026-07", LATER);
    assertEquals(List.of(), lost(month, CHILL));
    assertEquals(List.of(), lost(month, BENCH));
    assertEquals(List.of(), month.first().kilos());
    assertEquals(
        List.of(
            "Held, so left out of these figures: B1. It lost 20.00 kg in the boning room, 10.0% of"
                + " the weight into it."),
        month.first().leftOut().stream().map(said -> said.replace('\u00a0', ' ')).toList());
    assertEquals("waits", SmallShop.tables(month, "bodies").get(0).rows().get(0).style());
    assertEquals("held", only(month).get(12));
  }

  /** 20 of 200 kg are missing: 10 %. */
  @Test
  void whatWasReleasedWithAFaultIsToldByNameAndReason() {
    shop.beef("B1", "2026-07-06", "c-ann").hung("B1", "2026-07-06", "204", "200");
    shop.cut("B1", "2026-07-08", "140", "40");
    shop.add("releases.csv", "body,by,on,reason,action");
    shop.add("releases.csv", "B1,Hetty,2026-07-20T08:00,a tub was spilt,release");
    var month = shop.summary("2026-07", LATER);
    assertEquals(List.of(), lost(month, BENCH));
    assertEquals(
        List.of(
            "Left out: B1, released by Hetty (a tub was spilt). It lost 20.00\u00a0kg in the boning"
                + " room, 10.0% of the weight into it."),
        month.first().leftOut());
  }

  /** 4 of 200 kg are lost, all within 0.4 % a day for 5 days on the rail. */
  @Test
  void whatHungOnUnweighedLostItWhileHangingAndNotOnTheBench() {
    shop.beef("B1", "2026-07-06", "c-ann").hung("B1", "2026-07-06", "204", "200");
    shop.cut("B1", "2026-07-12", "156", "40");
    var month = shop.summary("2026-07", LATER);
    assertEquals(List.of(), lost(month, BENCH));
    assertEquals(
        List.of(
            "First weighed 204.0\u00a0kg",
            "Lost in the chiller 4.0\u00a0kg",
            "Weight into the boning room 200.0\u00a0kg",
            "Take-home 156.0\u00a0kg",
            "Bone, not taken home 40.0\u00a0kg",
            "Hung on, not weighed again 4.0\u00a0kg"),
        month.first().kilos().get(0).rows().stream()
            .map(row -> row.label() + " " + row.weight())
            .toList());
  }

  @Test
  void aBodyThatLeftWholeIsTakenHomeButNotCut() {
    shop.add("bodies.csv", "L1,lamb,2026-07-06,,,c-ann,whole");
    shop.hung("L1", "2026-07-06", "21", "20.5");
    var month = shop.summary("2026-07", LATER);
    assertEquals("Left whole", month.first().kilos().get(0).rows().get(2).label());
    assertEquals(
        List.of("Customers’ bodies", "1", "21.0", "20.5"), SmallShop.rows(month, "sums").get(0));
    assertEquals("20.5", only(month).get(7));
    assertEquals("lamb, left whole", only(month).get(2));
  }

  @Test
  void aCancelledBodyIsNowhere() {
    shop.add("bodies.csv", "B1,beef,2026-07-06,500,,c-ann,cancelled");
    shop.hung("B1", "2026-07-06", "204", "200");
    var month = shop.summary("2026-07", LATER);
    assertEquals(List.of(), SmallShop.rows(month, "bodies"));
    assertEquals(List.of(), SmallShop.rows(month, "sums"));
  }

  @Test
  void aMonthInWhichNothingHappenedHasNoSections() {
    shop.beef("B1", "2026-07-06", "c-ann").hung("B1", "2026-07-06", "204", "200");
    var month = shop.summary("2026-08", LATER);
    assertEquals("", month.known());
    assertEquals(List.of(), month.first().leftOut());
    assertEquals(List.of(), SmallShop.parts(month).toList());
  }

  @Test
  void thePageIsTheSameOnEveryLaterNight() {
    shop.beef("B1", "2026-07-06", "c-ann").hung("B1", "2026-07-06", "204", "200");
    shop.cut("B1", "2026-07-09", "156", "40");
    var first = shop.summary("2026-07", "2026-07-20T02:00:00Z");
    assertEquals("As known on 9 July 2026, 09:30", first.known());
    assertEquals(first, shop.summary("2026-07", LATER));
  }

  @Test
  void aKillLaterThanNowHasNotHappened() {
    shop.beef("B1", "2026-07-06", "c-ann").hung("B1", "2026-07-06", "204", "200");
    shop.beef("B2", "2026-07-20", "c-ann");
    var month = shop.summary("2026-07", "2026-07-10T02:00:00Z");
    assertEquals("1", month.first().five().get(0).rows().get(0).cells().get(0).text());
    assertFalse(SmallShop.column(month, "bodies", 0).contains("B2"));
  }

  /** The percentage lost, and of how many bodies, below a title. */
  private static List<String> lost(SummaryView month, String title) {
    var row = row(month, title);
    return row.isEmpty() ? row : row.subList(3, 5);
  }

  private static List<String> row(SummaryView month, String title) {
    var rows = SmallShop.below(month, "against", title);
    return rows.isEmpty() ? List.of() : rows.get(0);
  }

  private static List<String> only(SummaryView month) {
    var rows = SmallShop.rows(month, "bodies");
    assertEquals(1, rows.size());
    return rows.get(0);
  }
}
