package gambrel.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The calculation of pages and months on a shop whose figures are worked out by hand. */
class OraclePagesTest {
  @TempDir Path folder;

  private TinyShop shop;

  /** Of 560 alive 300 hot and 294 cold; 120 rump, 80 mince, 60 bone, 28 fat: 6 are lost. */
  @BeforeEach
  void open() {
    shop = new TinyShop(folder).balanced();
  }

  private static void assertLine(String expected, ExactNight.Line line) {
    var percent = line.percent() == null ? "" : " " + Num.text(line.percent(), 1);
    assertEquals(expected, line.label() + " " + Num.text(line.weight(), 0) + percent);
  }

  @Test
  void drawsTheWayFromAliveToTheBoxes() {
    var lines = shop.exactlyAt("06T00:00").picture("B1");
    assertEquals(9, lines.size());
    assertLine("live 560 100.0", lines.get(0));
    assertLine("dressing 260 46.4", lines.get(1)); // 100 - 53.6
    assertLine("hot 300 53.6", lines.get(2)); // 300 / 560
    assertLine("chill 6 1.1", lines.get(3)); // 53.6 - 52.5
    assertLine("boning 294 52.5", lines.get(4)); // 294 / 560
    // 35.71, 10.71, 5.00 and 1.07 are rounded down to 52.4: a tenth for the largest rest
    assertLine("home 200 35.7", lines.get(5));
    assertLine("bone 60 10.7", lines.get(6));
    assertLine("fat 28 5.0", lines.get(7));
    assertLine("bench 6 1.1", lines.get(8));
  }

  @Test
  void addsUpAMonthByOwnerAndSpecies() {
    var month = shop.exactlyAt("06T00:00").month("2026-03");
    assertEquals(BigFraction.of(6), month.get("customers beef chill_loss"));
    assertEquals(BigFraction.of(2), month.get("customers beef chill_loss pct"));
    assertEquals(BigFraction.of(600, 294), month.get("any all bench_loss pct"));
    assertEquals(BigFraction.of(1), month.get("any all bench_loss bodies"));
    assertEquals(null, month.get("own beef chill_loss"));
  }

  @Test
  void comparesAMonthWithTheMonthBefore() {
    shop.add("bodies.csv", "B2,beef,2026-02-02,,ann");
    shop.add("exports/a.csv", "rail,901,2026-02-02T10:00:00,B2,hot carcase,200");
    shop.add("exports/a.csv", "rail,902,2026-02-03T10:00:00,B2,cold carcase,192");
    var exact = shop.exactlyAt("06T00:00");
    assertEquals("2.000", exact.charts().cell("month-charts.csv", "moving_range", "2026-03"));
    var figures = exact.figures(Map.of());
    var key = new String[] {"2026-03", "chill_loss_pct", "customers", "beef", ""};
    assertEquals("2.000", figures.cell("month-figures.csv", "value", key)); // 6 / 300
    assertEquals("4.000", figures.cell("month-figures.csv", "baseline_value", key)); // 8 / 200
    assertEquals("1", figures.cell("month-figures.csv", "baseline_bodies", key));
    assertEquals(List.of("2026-02", "2026-03"), exact.months());
  }

  @Test
  void halvesABodyBetweenTwoCustomersItemByItem() {
    shop.add("shares.csv", "B1,ann,1/2", "B1,bob,1/2");
    var ann = shop.exactlyAt("06T00:00").customer("B1", "ann");
    assertEquals(BigFraction.of(60), ann.get("item:rump"));
    assertEquals(BigFraction.of(100), ann.get("take_home"));
  }
}
