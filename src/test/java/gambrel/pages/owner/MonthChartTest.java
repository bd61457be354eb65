package gambrel.pages.owner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.pages.views.ChartView;
import gambrel.pages.views.SummaryView;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MonthChartTest {
  private static final String LATER = "2026-09-15T02:00:00Z";

  @TempDir private Path folder;
  private SmallShop shop;
  private int bodies;

  @BeforeEach
  void startAShop() {
    shop = new SmallShop(folder);
  }

  @Test
  void needsTwentyBodiesInTheTwelveMonthsBeforeAndSaysSo() {
    twentyInJune(19);
    kill("2026-07-06", 2);
    var july = shop.summary("2026-07", LATER);
    assertEquals(List.of(), charts(july));
    assertEquals(
        "Beef has 19 bodies chilled in the twelve months before: a chart of the chiller needs 20."
            + " Every body stands in the list at the end.",
        SmallShop.remarks(july, "What beef lost").get(1));
  }

  /**
   * June: 2 % and 3 % by turns, so a mean of 2.5 and moving ranges of 1: 2.5 ± 3 / 1.128; not below
   * 0.
   */
  @Test
  void hasLinesAtTheMeanAnd3MeanMovingRangesOver1128OfTheMonthsBefore() {
    twentyInJune(20);
    kill("2026-07-06", 9);
    assertEquals(
        List.of("usual 2.50%", "seldom above 5.16%", "seldom below 0.00%"),
        labels(chart("2026-07")));
  }

  @Test
  void showsTheMonthsBeforeAndNeverThoseAfter() {
    twentyInJune(20);
    kill("2026-07-06", 2);
    kill("2026-07-07", 3);
    kill("2026-08-03", 2);
    assertEquals(22, chart("2026-07").points().size());
    assertEquals(
        List.of("June 2026", "July 2026"),
        chart("2026-07").xTicks().stream().map(ChartView.Tick::label).toList());
  }

  @Test
  void doesNotMoveItsLinesWhenLaterMonthsCome() {
    twentyInJune(20);
    kill("2026-07-06", 2);
    var before = chart("2026-07");
    kill("2026-08-03", 9);
    assertEquals(before, chart("2026-07"));
  }

  @Test
  void forgetsWhatIsMoreThanTwelveMonthsAgo() {
    for (int day = 1; day <= 20; day++) {
      kill(LocalDate.of(2025, 6, day).toString(), 9);
    }
    twentyInJune(20);
    kill("2026-07-06", 2);
    assertEquals("usual 2.50%", labels(chart("2026-07")).get(0));
  }

  @Test
  void namesABodyBeyondTheLinesInItsOwnMonthAlone() {
    twentyInJune(20);
    kill("2026-07-10", 9);
    kill("2026-08-03", 2);
    var july = chart("2026-07");
    assertEquals(
        "K21 lost 9.00% in the chiller; the lines stand at 0.00% and 5.16%.", july.notes().get(0));
    assertEquals("K21", july.points().get(20).label());
    assertTrue(july.points().get(20).signal());
    var august = chart("2026-08");
    assertEquals("", august.points().get(20).label());
    assertFalse(august.notes().stream().anyMatch(note -> note.contains("K21")));
  }

  @Test
  void fillsAllThatBreakARuleAndNamesTheFarthest() {
    twentyInJune(20);
    kill("2026-07-06", 7);
    kill("2026-07-07", 9);
    var july = chart("2026-07");
    assertEquals(
        List.of("", "K22"), july.points().subList(20, 22).stream().map(p -> p.label()).toList());
    assertTrue(july.points().stream().skip(20).allMatch(ChartView.Point::signal));
  }

  @Test
  void isOfTheMonthsMainSpeciesAndOfEachOtherWithFiveBodies() {
    for (String species : List.of("beef", "lamb", "pork")) {
      for (int day = 1; day <= 20; day++) {
        kill(species, LocalDate.of(2026, 6, day).toString(), 2 + day % 2);
      }
    }
    for (int i = 0; i < 6; i++) {
      kill("2026-07-06", 2);
    }
    for (int i = 0; i < 5; i++) {
      kill("lamb", "2026-07-06", 2 + i % 2);
    }
    for (int i = 0; i < 4; i++) {
      kill("pork", "2026-07-06", 2);
    }
    assertEquals(
        List.of("beef", "lamb"),
        charts(shop.summary("2026-07", LATER)).stream()
            .map(chart -> chart.heading().replaceAll("Chill shrink, (\\w+):.*", "$1"))
            .toList());
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 12, 80, 81, 150})
  void staysWithinItsFrameAndKeepsWordsApart(int number) {
    twentyInJune(20);
    for (int i = 0; i < number; i++) {
      kill("2026-07-06", i % 17 == 16 ? 9 : 1 + i * 7 % 3);
    }
    var chart = chart("2026-07");
    assertEquals(Math.max(number, Math.min(20 + number, 120)), chart.points().size());
    for (var point : chart.points()) {
      assertTrue(point.x() > chart.plot().left() && point.x() < chart.plot().right());
      assertTrue(point.y() >= chart.plot().top() && point.y() <= chart.plot().bottom());
    }
    assertApart(chart.lines().stream().map(ChartView.Line::textY).toList());
    assertTrue(chart.points().stream().filter(p -> !p.label().isEmpty()).count() <= 1);
  }

  @Test
  void showsAtMost120BodiesUnlessTheMonthHasMore() {
    for (int i = 0; i < 130; i++) {
      kill(i < 110 ? "2026-06-06" : "2026-07-06", 2 + i % 2);
    }
    assertEquals(120, chart("2026-07").points().size());
  }

  @Test
  void joinsItsPointsInOrderOfKill() {
    twentyInJune(20);
    kill("2026-07-08", 4);
    kill("2026-07-06", 1);
    var chart = chart("2026-07");
    assertEquals(
        chart.points().stream().map(p -> p.x() + "," + p.y()).collect(Collectors.joining(" ")),
        chart.trace());
    assertTrue(chart.points().get(20).y() > chart.points().get(21).y(), "the 1% of 6 July first");
  }

  private void twentyInJune(int number) {
    for (int day = 1; day <= number; day++) {
      kill(LocalDate.of(2026, 6, day).toString(), 2 + day % 2);
    }
  }

  private void kill(String day, int percent) {
    kill("beef", day, percent);
  }

  private void kill(String species, String day, int percent) {
    String body = "K" + ++bodies;
    shop.add("bodies.csv", body + "," + species + "," + day + ",,,c-ann");
    shop.hung(body, day, "200", "" + (200 - 2 * percent));
  }

  private ChartView chart(String month) {
    return charts(shop.summary(month, LATER)).get(0);
  }

  private static List<String> labels(ChartView chart) {
    return chart.lines().stream().map(ChartView.Line::label).toList();
  }

  private static void assertApart(List<Integer> heights) {
    for (int i = 0; i < heights.size(); i++) {
      for (int j = 0; j < i; j++) {
        assertTrue(Math.abs(heights.get(i) - heights.get(j)) >= 10, heights.toString());
      }
    }
  }

  private static List<ChartView> charts(SummaryView month) {
    return month.parts().stream().flatMap(part -> part.charts().stream()).toList();
  }
}
