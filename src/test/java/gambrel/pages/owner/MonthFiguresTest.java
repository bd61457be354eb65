package gambrel.pages.owner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.pages.views.SummaryView;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MonthFiguresTest {
  private static final String LATER = "2026-09-15T02:00:00Z";

  @TempDir private Path folder;
  private SmallShop shop;

  @BeforeEach
  void startAShop() {
    shop = new SmallShop(folder);
  }

  @Test
  void hangingBelongsToTheMonthOfKillAndCuttingToThatOfTheLastCut() {
    shop.beef("B1", "2026-07-30", "c-ann").hung("B1", "2026-07-30", "300", "294");
    shop.cut("B1", "2026-08-04", "220", "70");
    var july = shop.summary("2026-07", LATER);
    var august = shop.summary("2026-08", LATER);
    assertEquals(List.of("2.0", "of 1"), shrink(july, 0).subList(1, 3));
    assertEquals(List.of("", ""), shrink(july, 0).subList(7, 9));
    assertEquals(List.of("", ""), shrink(august, 0).subList(1, 3));
    assertEquals(List.of("1.4", "of 1"), shrink(august, 0).subList(7, 9));
    assertEquals("4.00", shrink(august, 0).get(9));
  }

  @Test
  void aBodyIsListedInBothMonthsWithWhatBelongsToEach() {
    shop.beef("B1", "2026-07-30", "c-ann").hung("B1", "2026-07-30", "300", "294");
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
    var row = shrink(shop.summary("2026-07", LATER), 0);
    assertEquals(List.of("1.3", "of 2"), row.subList(1, 3), "5 of 400, not the mean of 2 and 1");
    assertEquals("5.0", row.get(3));
  }

  @Test
  void aFigureIsOfTheBodiesThatHaveIt() {
    shop.beef("B1", "2026-07-06", "c-ann").hung("B1", "2026-07-06", "100", "98");
    shop.beef("B2", "2026-07-07", "c-bob").row("rail", "2026-07-07T08:00", "B2", "hot", "300");
    assertEquals(List.of("2.0", "of 1"), shrink(shop.summary("2026-07", LATER), 0).subList(1, 3));
  }

  @Test
  void customersBodiesTheShopsOwnAndSharedOnesAreNeverAdded() {
    shop.beef("B1", "2026-07-06", "c-ann").hung("B1", "2026-07-06", "100", "98");
    shop.beef("B2", "2026-07-06", "").hung("B2", "2026-07-06", "100", "97");
    shop.beef("B3", "2026-07-06", "").hung("B3", "2026-07-06", "100", "96");
    shop.add("shares.csv", "B3,c-bob,1/2\nB3,shop,1/2");
    var month = shop.summary("2026-07", LATER);
    assertEquals(
        List.of(
            "Customers' bodies",
            "The shop's own bodies",
            "Bodies shared by customers and the shop"),
        groups(month));
    assertEquals(List.of("2.0", "3.0", "4.0"), SmallShop.column(month, "lost", 1));
    assertTrue(month.story().contains("Customers' bodies lost 2.0\u00a0kg in the chiller."));
    assertTrue(month.story().contains("The shop's own bodies lost 3.0\u00a0kg in the chiller."));
  }

  @Test
  void ageingIsOfTheColdWeightOfWhatWasAged() {
    shop.beef("B1", "2026-07-06", "c-ann").hung("B1", "2026-07-06", "300", "290");
    shop.row("rail", "2026-07-16T08:00", "B1", "aged", "284.2");
    var row = shrink(shop.summary("2026-07", LATER), 0);
    assertEquals(List.of("2.0", "of 1"), row.subList(4, 6));
    assertEquals("5.8", row.get(6));
  }

  @Test
  void aGuessedLiveWeightMakesNoDressingPercentage() {
    shop.add("bodies.csv", "B1,beef,2026-07-06,500,,c-ann\nB2,beef,2026-07-06,900,yes,c-ann");
    shop.hung("B1", "2026-07-06", "300", "294").hung("B2", "2026-07-06", "300", "294");
    assertEquals(List.of("60.0", "of 1"), yields(shop.summary("2026-07", LATER)).subList(1, 3));
  }

  @Test
  void yieldsAreOfColdAndOfTheWeightIntoTheBoningRoom() {
    shop.beef("B1", "2026-07-06", "c-ann").hung("B1", "2026-07-06", "204", "200");
    shop.cut("B1", "2026-07-09", "140", "40").row("bench", "2026-07-09T10:00", "B1", "fat", "17");
    var row = yields(shop.summary("2026-07", LATER));
    assertEquals(List.of("70.0", "of 1"), row.subList(3, 5));
    assertEquals(List.of("70.0", "of 1"), row.subList(5, 7));
    assertEquals(List.of("20.0", "of 1"), row.subList(7, 9));
    assertEquals(List.of("8.5", "of 1"), row.subList(9, 11));
  }

  @Test
  void whatIsStillBeingCutCountsOnTheRailAlone() {
    shop.beef("B1", "2026-07-06", "c-ann").hung("B1", "2026-07-06", "204", "200");
    shop.cut("B1", "2026-07-09", "140", "40");
    var month = shop.summary("2026-07", "2026-07-09T12:00:00Z");
    assertTrue(shrink(month, 0).get(1).startsWith("2."));
    assertEquals("", shrink(month, 0).get(7));
    assertEquals("", only(month).get(7));
    assertTrue(month.story().stream().anyMatch(s -> s.startsWith("1 body is still open")));
  }

  @Test
  void whatIsHeldCountsAsItStandsAndIsMarked() {
    shop.beef("B1", "2026-07-06", "c-ann").hung("B1", "2026-07-06", "204", "200");
    shop.cut("B1", "2026-07-09", "140", "40");
    var month = shop.summary("2026-07", LATER);
    assertEquals(List.of("10.0", "of 1"), shrink(month, 0).subList(7, 9));
    assertEquals("waits", SmallShop.tables(month, "bodies").get(0).rows().get(0).style());
    assertEquals("held", only(month).get(12));
    assertTrue(month.story().contains("1 body waits for you; its figures count as they stand."));
  }

  @Test
  void aBodyThatLeftWholeIsTakenHomeButNotCut() {
    shop.add("bodies.csv", "L1,lamb,2026-07-06,,,c-ann,whole");
    shop.hung("L1", "2026-07-06", "21", "20.5");
    var month = shop.summary("2026-07", LATER);
    assertTrue(month.story().contains("1 body left whole, as it hung: 20.5\u00a0kg."));
    assertTrue(month.story().stream().noneMatch(sentence -> sentence.contains("was cut")));
    assertEquals("20.5", only(month).get(7));
    assertEquals("lamb, left whole", only(month).get(2));
  }

  @Test
  void aCancelledBodyIsNowhere() {
    shop.add("bodies.csv", "B1,beef,2026-07-06,500,,c-ann,cancelled");
    shop.hung("B1", "2026-07-06", "204", "200");
    var month = shop.summary("2026-07", LATER);
    assertEquals(List.of(), SmallShop.rows(month, "bodies"));
    assertTrue(month.story().contains("No body was killed."));
  }

  @Test
  void aMonthInWhichNothingHappenedHasNoSections() {
    shop.beef("B1", "2026-07-06", "c-ann").hung("B1", "2026-07-06", "204", "200");
    var month = shop.summary("2026-08", LATER);
    assertEquals("", month.known());
    assertEquals(List.of(), month.held());
    assertEquals(List.of(), month.parts());
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
    assertTrue(month.story().contains("1 body killed: 1 beef."));
    assertFalse(SmallShop.column(month, "bodies", 0).contains("B2"));
  }

  @Test
  void aMobCountsAsOneBodyOfManyHead() {
    shop.add("bodies.csv", "L1,lamb,2026-07-06,,,c-ann,,6");
    shop.add("bodies.csv", "L2,lamb,2026-07-06,,,c-ann");
    assertTrue(
        shop.summary("2026-07", LATER).story().contains("2 bodies killed: 2 lamb (7 head)."));
  }

  private static List<String> shrink(SummaryView month, int group) {
    return SmallShop.rows(month, "lost").get(group);
  }

  private static List<String> groups(SummaryView month) {
    return SmallShop.tables(month, "lost").get(0).rows().stream()
        .filter(row -> row.style().equals("group"))
        .map(row -> row.texts().get(0))
        .toList();
  }

  private static List<String> yields(SummaryView month) {
    return SmallShop.rows(month, "yields").get(0);
  }

  private static List<String> only(SummaryView month) {
    var rows = SmallShop.rows(month, "bodies");
    assertEquals(1, rows.size());
    return rows.get(0);
  }
}
