package gambrel.pages.statement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.bench.MonthFiles;
import gambrel.files.tables.NightTables;
import gambrel.files.tables.Table;
import gambrel.insight.cause.LikelyCauses;
import gambrel.pages.explain.Explanation;
import gambrel.pages.views.FlowView;
import gambrel.trade.register.Figures;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A figure of a body is the same in the tables, the attachment, explain and on the page. */
class OneFigureTest {
  @TempDir private Path folder;
  private FarmShop farm;

  @BeforeEach
  void openShop() {
    farm = new FarmShop(folder);
    farm.add("bodies.csv", "B1,beef,steer,2026-03-02,,,20,c-ann,1,,,");
  }

  /** A tub of 5 kg without a batch while the body hangs: 300 hot, 290 cold, 10 of 300 lost. */
  private void tubWithoutBatch() {
    farm.row("02T09:00", "B1", "hot", "300");
    farm.row("02T15:00", "B1", "trim", "5");
    farm.row("03T09:00", "B1", "cold", "290");
    farm.row("05T09:00", "B1", "rump", "290");
  }

  /** Both sides 145 cold, one 142 aged: 3 of 145 lost. */
  private void oneSideAged() {
    farm.add("shop.properties", "rail=cold");
    for (String side : List.of("left", "right")) {
      farm.add("codes.csv", side + "-cold," + side + "-side,cold");
      farm.add(
          "exports/day.csv", "rail,9" + side + ",2026-03-03T09:00:00,B1," + side + "-cold,145");
    }
    farm.add("codes.csv", "left-aged,left-side,aged");
    farm.add("exports/day.csv", "rail,99,2026-03-09T09:00:00,B1,left-aged,142");
    farm.row("09T10:00", "B1", "rump", "287");
  }

  private String cell(Stream<Table> tables, String table, String column) {
    var found = tables.filter(t -> t.name().equals(table)).findFirst().orElseThrow();
    return found.rows().findFirst().orElseThrow().get(found.header().indexOf(column));
  }

  private String attached(String figure) {
    var night = farm.night();
    var account = night.bodies().get("B1");
    return Figures.of(account, "c-ann", night.shop().settings()).values().get(figure);
  }

  private FlowView flow() {
    return farm.statement("B1", "c-ann").flow().orElseThrow();
  }

  private Optional<FlowView.Row> flow(String label) {
    return flow().rows().stream().filter(row -> row.label().equals(label)).findFirst();
  }

  private static String printed(FlowView.Row row) {
    return (row.weight() + ", " + row.share()).replace('\u00a0', ' ');
  }

  private List<String> explained() {
    return Explanation.of(farm.night(), LikelyCauses.NONE, "B1").orElseThrow().stream()
        .map(line -> line.replaceAll(" +", " "))
        .toList();
  }

  @Test
  void chillShrinkLeavesOutATubWithoutABatchInEveryPlace() {
    tubWithoutBatch();
    var night = farm.night();
    assertEquals("3.333", cell(NightTables.of(night).stream(), "bodies.csv", "chill_shrink_pct"));
    assertEquals("3.333", cell(NightTables.of(night).stream(), "shrink.csv", "chill_shrink_pct"));
    assertEquals("3.333", cell(MonthFiles.of(night).stream(), "month-charts.csv", "value_pct"));
    assertEquals("3.333", attached("body:chill_shrink_pct"));
    var lost = flow("Lost in the chiller").orElseThrow();
    assertEquals("10.0 kg, 3.3%", printed(lost));
  }

  @Test
  void aTubWithoutABatchIsNoRailTrim() {
    tubWithoutBatch();
    assertEquals(
        "0.000", cell(NightTables.of(farm.night()).stream(), "bodies.csv", "rail_trim_kg"));
    assertTrue(flow("Trimmed off on the rail").isEmpty());
    var lines = explained();
    int shrink = lines.indexOf("chill_shrink_pct 3.333 (hot - cold - rail trim before cold) / hot");
    assertTrue(lines.get(shrink + 1).startsWith("ageing_shrink_pct "), lines.get(shrink + 1));
  }

  @Test
  void daysHungRunPastATubWithoutABatch() {
    tubWithoutBatch();
    assertEquals("3", cell(NightTables.of(farm.night()).stream(), "bodies.csv", "days_hung"));
  }

  @Test
  void ageingShrinkIsOfTheColdWeightOfTheAgedPartsInEveryPlace() {
    oneSideAged();
    var tables = NightTables.of(farm.night());
    assertEquals("2.069", cell(tables.stream(), "bodies.csv", "ageing_shrink_pct"));
    assertEquals("2.069", attached("body:ageing_shrink_pct"));
    assertTrue(explained().stream().anyMatch(line -> line.startsWith("ageing_shrink_pct 2.069 ")));
    var lost = flow("Lost while it hung").orElseThrow();
    assertEquals("3.0 kg, 1.0%", printed(lost));
  }

  @Test
  void thePageSaysOfWhichPartsTheAgeingShrinkIs() {
    oneSideAged();
    String says = "of the cold weight of the parts that were weighed again";
    assertTrue(flow().notes().toString().contains(says), flow().notes().toString());
    farm.add("codes.csv", "right-aged,right-side,aged");
    farm.add("exports/day.csv", "rail,98,2026-03-09T09:30:00,B1,right-aged,146");
    assertFalse(flow().notes().toString().contains(says), flow().notes().toString());
  }

  @Test
  void explainNamesLossLimitAndUncertaintyOfABodyThatWaitsForItsLoss() {
    farm.row("02T09:00", "B1", "hot", "100");
    farm.row("03T09:00", "B1", "cold", "100");
    farm.row("05T09:00", "B1", "rump", "50");
    farm.row("05T09:01", "B1", "bone", "20");
    var lines = explained();
    assertTrue(
        lines.stream().anyMatch(line -> line.startsWith(" waits: loss-high: loss 30.000 kg of")),
        lines.toString());
    assertTrue(lines.stream().anyMatch(line -> line.startsWith("cutting_loss 30.000 ")));
    assertTrue(lines.stream().anyMatch(line -> line.startsWith("loss_limit 3.000 ")));
    assertTrue(lines.stream().anyMatch(line -> line.startsWith("loss_u 0.289 ")));
  }
}
