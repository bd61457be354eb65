package gambrel.pages.owner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.insight.FalseAlarms;
import gambrel.insight.month.MonthReport;
import gambrel.insight.month.figures.BodyFigure;
import gambrel.insight.month.figures.Evidence;
import gambrel.insight.month.figures.Finding;
import gambrel.insight.month.figures.MonthRecords;
import gambrel.insight.month.loss.LossChart;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** How many shops: {@code -Dmonth.shops=N}, 3 by default. */
class MonthAlarmsTest {
  private static final int SHOPS = Integer.getInteger("month.shops", 3);
  private static final Set<Finding.Kind> OF_SHIFTS =
      Set.of(Finding.Kind.CHILLER, Finding.Kind.BENCH, Finding.Kind.SCALE);

  @TempDir private Path folder;

  static LongStream seeds() {
    return LongStream.rangeClosed(1, SHOPS);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void aChillerThatTakesOneAndAHalfPerCentMoreIsNamedWithItsDay(long seed) {
    var records = records(new SteadyShop(folder, seed).chillerTakes(1.5, "2026-07-08").made());
    var finding = found(records, Finding.Kind.CHILLER).orElseThrow();
    assertEquals(new Evidence.Day(LocalDate.of(2026, 7, 8)), finding.evidence().get("since"));
    assertTrue(finding.money().orElseThrow().minor() > 0);
    assertTrue(
        signals(LossChart.of(records, BodyFigure.CHILL).get(0)).stream()
            .anyMatch(point -> finding.subjects().contains(point.body())));
    assertTrue(found(records, Finding.Kind.SCALE).isEmpty());
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void aBenchScaleThatDriftsIsNamedWithTheScalesOfTheBalance(long seed) {
    var records = records(new SteadyShop(folder, seed).benchDrifts("2026-07-08").made());
    var finding = found(records, Finding.Kind.SCALE).orElseThrow();
    assertEquals("balance", finding.variant());
    assertTrue(finding.subjects().containsAll(List.of("bench", "rail")));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void ofTwoBenchScalesTheOneThatDriftsIsNamed(long seed) {
    var shop = new SteadyShop(folder, seed).withTwoBenches().benchDrifts("2026-07-08");
    var finding = found(records(shop.made()), Finding.Kind.SCALE).orElseThrow();
    assertEquals("heavy", finding.variant());
    assertEquals("bench", finding.subjects().get(0));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void aRailScaleThatReadsLightIsNotTakenForAChiller(long seed) {
    var records = records(new SteadyShop(folder, seed).railReadsLight("2026-07-06").made());
    var finding = found(records, Finding.Kind.SCALE).orElseThrow();
    assertEquals("rail", finding.variant());
    assertTrue(finding.subjects().contains("rail"));
    assertTrue(found(records, Finding.Kind.CHILLER).isEmpty());
  }

  /**
   * For independent normal values a point lies beyond three sigmas with probability 0.0027; with
   * limits from about 300 values it is 0.003. With the three run rules it is at most the sum of the
   * four, 0.0027 + 0.0021 + 0.0045 + 0.0078 = 0.017. The findings of a month together promise one
   * in a hundred.
   *
   * <p>Counts are held to binomial bounds, see {@link FalseAlarms}. Signals of runs come in
   * clusters of about two, which doubles the variance of their number: so pairs of signals are
   * counted in half as many trials. The three shops of the default run, with 126 points, notice
   * rates that are ten times too high: 3 points may lie beyond limits, which 0.03 exceeds with
   * probability 0.53. A rate twice as high is noticed with probability 0.9 in 205 shops for points
   * beyond limits, in 75 for signals and in 2,600 for findings, as {@code FalseAlarmsTest} shows.
   * {@code ControlChartRatesTest} and {@code DayValuesTest} try as many points and months in every
   * run.
   */
  @Test
  void withNothingWrongAlarmsStayAtTheRateThatTheMethodPromises() {
    int points = 0;
    int beyond = 0;
    int signals = 0;
    int shifts = 0;
    for (long seed = 1; seed <= SHOPS; seed++) {
      var records = records(new SteadyShop(folder.resolve("s" + seed), 1000 + seed).made());
      for (var chart : charts(records)) {
        points += chart.ofMonth().size();
        signals += signals(chart).size();
        beyond += (int) signals(chart).stream().filter(MonthAlarmsTest::isBeyond).count();
      }
      shifts += (int) MonthReport.of(records).findings().stream().filter(f -> isShift(f)).count();
    }
    System.out.printf(
        "%d shops, %d points: %d beyond limits, %d with any signal, %d shifts%n",
        SHOPS, points, beyond, signals, shifts);
    new FalseAlarms(points, 0.003).check("beyond limits", beyond);
    new FalseAlarms(points / 2, 0.017).check("pairs of signals", signals / 2);
    new FalseAlarms(SHOPS, 0.01).check("shifts", shifts);
  }

  private static List<LossChart.Point> signals(LossChart chart) {
    return chart.ofMonth().stream().filter(point -> !point.signals().isEmpty()).toList();
  }

  private static boolean isBeyond(LossChart.Point point) {
    return point.signals().contains("beyond-limits");
  }

  private static boolean isShift(Finding finding) {
    return OF_SHIFTS.contains(finding.kind());
  }

  private static List<LossChart> charts(MonthRecords records) {
    return Stream.of(BodyFigure.CHILL, BodyFigure.BENCH)
        .flatMap(loss -> LossChart.of(records, loss).stream())
        .toList();
  }

  private static Optional<Finding> found(MonthRecords records, Finding.Kind kind) {
    return MonthReport.of(records).findings().stream().filter(f -> f.kind() == kind).findFirst();
  }

  private static MonthRecords records(SmallShop shop) {
    return MonthRecords.of(
        shop.at(SteadyShop.LATER), SmallShop.NOTHING_ISSUED, YearMonth.parse(SteadyShop.MONTH));
  }
}
