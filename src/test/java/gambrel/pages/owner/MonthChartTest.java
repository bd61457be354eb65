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
import java.util.stream.Stream;
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
            + " Every body is in the list at the end.",
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
    assertEquals(22, trace(chart("2026-07")).size());
    assertEquals(2, chart("2026-07").points().size());
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
    assertEquals(List.of("K21"), names(july));
    var august = chart("2026-08");
    assertEquals(List.of(), names(august));
    assertFalse(august.notes().stream().anyMatch(note -> note.contains("K21")));
  }

  @Test
  void fillsAndNamesAllThatBreakARule() {
    twentyInJune(20);
    kill("2026-07-06", 7);
    kill("2026-07-07", 2);
    kill("2026-07-08", 9);
    assertEquals(List.of("K21", "K23"), names(chart("2026-07")));
  }

  /** So many bodies of one loss lie side by side: not all of their names have room. */
  @Test
  void namesTheFarthestOfThoseSideBySideAndSaysSo() {
    twentyInJune(20);
    for (int i = 0; i < 180; i++) {
      kill("2026-07-06", 7);
    }
    kill("2026-07-07", 8);
    var july = chart("2026-07");
    assertTrue(names(july).contains("K201"), names(july).toString());
    assertTrue(names(july).size() < 181);
    assertTrue(
        july.notes()
            .get(1)
            .startsWith(
                "Of such bodies side by side only those farthest from the usual are filled and"
                    + " named. "));
  }

  /** The lines stand at 0 and 5.16 %: what is beyond three times 5.16 % stands at the edge. */
  @Test
  void drawsABodyFarBeyondTheLinesAtTheEdgeWithAnArrow() {
    twentyInJune(20);
    kill("2026-07-06", 10);
    kill("2026-07-07", 60);
    var july = chart("2026-07");
    assertEquals(List.of("K21", "K22 ↑ 60.00%"), names(july));
    var lines = july.lines().stream().map(ChartView.Line::y).sorted().toList();
    int height = july.plot().bottom() - july.plot().top();
    assertTrue(4 * (lines.get(2) - lines.get(0)) > height, lines.toString());
  }

  @Test
  void tellsTheMonthsChillersApartByTheFormOfTheirPoints() {
    inChillers();
    kill("2026-07-06", 2, "south");
    kill("2026-07-07", 3, "north");
    kill("2026-07-08", 2, "south");
    var july = chart("2026-07");
    var forms = july.points().stream().map(point -> corners(point.outline())).toList();
    assertEquals(List.of(4, 0, 4), forms);
    assertEquals("Circles: north, squares: south.", forms(july));
  }

  @Test
  void givesAllBodiesBeyondTheThirdChillerAndThoseOfNoneOneForm() {
    inChillers();
    for (String chiller : List.of("a", "b", "c", "d", "e", "")) {
      kill("2026-07-06", 2, chiller);
    }
    var july = chart("2026-07");
    assertEquals("Circles: a, squares: b, triangles: c, diamonds: all others.", forms(july));
    assertEquals(1, july.points().stream().skip(3).map(MonthChartTest::form).distinct().count());
  }

  @Test
  void hasOneFormWhereAllBodiesHungInOneChiller() {
    inChillers();
    kill("2026-07-06", 2, "north");
    kill("2026-07-07", 3, "north");
    var july = chart("2026-07");
    assertTrue(july.points().stream().allMatch(point -> point.outline().isEmpty()));
    assertFalse(july.notes().get(0).contains("Circles"));
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
    assertEquals(20 + number, trace(chart).size());
    if (number <= 80) {
      assertEquals(number, chart.points().size());
    }
    assertEquals(names(chart).size(), chart.points().stream().filter(p -> p.filled()).count());
    for (var point : chart.points()) {
      assertTrue(point.x() > chart.monthLeft() && point.x() < chart.plot().right());
      assertTrue(point.y() >= chart.plot().top() && point.y() <= chart.plot().bottom());
    }
    assertApart(chart.lines().stream().map(ChartView.Line::textY).toList());
    var named = chart.points().stream().filter(ChartView.Point::filled).toList();
    for (var one : named) {
      assertTrue(one.labelY() > 0 && one.labelY() <= chart.plot().bottom());
      assertTrue(one.labelX() - 3 * one.label().length() >= chart.plot().left());
      assertTrue(one.labelX() + 3 * one.label().length() <= chart.plot().right());
      assertTrue(named.stream().filter(other -> touch(one, other)).count() == 1);
    }
  }

  /** Names of letters of 6 units and lines of 10. */
  private static boolean touch(ChartView.Point one, ChartView.Point other) {
    int apart = 3 * (one.label().length() + other.label().length());
    return Math.abs(one.labelX() - other.labelX()) < apart
        && Math.abs(one.labelY() - other.labelY()) < 9;
  }

  @Test
  void showsAtMost80BodiesBeforeTheMonth() {
    for (int i = 0; i < 130; i++) {
      kill(i < 110 ? "2026-06-06" : "2026-07-06", 2 + i % 2);
    }
    assertEquals(80 + 20, trace(chart("2026-07")).size());
  }

  @Test
  void givesABodyOfTheMonthFourTimesTheRoomOfOneBefore() {
    twentyInJune(20);
    for (int i = 0; i < 5; i++) {
      kill("2026-07-06", 2 + i % 2);
    }
    var chart = chart("2026-07");
    assertEquals((chart.plot().left() + chart.plot().right()) / 2, chart.monthLeft());
  }

  @Test
  void joinsItsPointsInOrderOfKill() {
    twentyInJune(20);
    kill("2026-07-08", 4);
    kill("2026-07-06", 1);
    var chart = chart("2026-07");
    assertEquals(
        chart.points().stream().map(p -> p.x() + "," + p.y()).toList(),
        trace(chart).subList(20, 22));
    assertTrue(chart.points().get(0).y() > chart.points().get(1).y(), "the 1% of 6 July first");
  }

  private void inChillers() {
    shop.instead(
        "bodies.csv", "body,species,killed,live_weight,live_guessed,customer,outcome,head,chiller");
    twentyInJune(20);
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

  private void kill(String day, int percent, String chiller) {
    String body = "K" + ++bodies;
    shop.add("bodies.csv", body + ",beef," + day + ",,,c-ann,,," + chiller);
    shop.hung(body, day, "200", "" + (200 - 2 * percent));
  }

  private static List<String> trace(ChartView chart) {
    return List.of(chart.trace().split(" "));
  }

  private static List<String> names(ChartView chart) {
    return chart.points().stream().filter(p -> p.filled()).map(p -> p.label()).toList();
  }

  /** The sentence that begins what is said of a chart without a signal. */
  private static String forms(ChartView chart) {
    return chart.notes().get(0).replaceFirst(" A filled point.*", "");
  }

  /** The outline of a point relative to its place. */
  private static String form(ChartView.Point point) {
    return Stream.of(point.outline().split(" "))
        .map(corner -> corner.split(","))
        .map(
            xy -> Integer.parseInt(xy[0]) - point.x() + "," + (Integer.parseInt(xy[1]) - point.y()))
        .collect(Collectors.joining(" "));
  }

  /** The corners of a closed line; none of a circle. */
  private static int corners(String outline) {
    return outline.isEmpty() ? 0 : outline.split(" ").length - 1;
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
    return SmallShop.parts(month).flatMap(part -> part.charts().stream()).toList();
  }
}
