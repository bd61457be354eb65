package gambrel.published;

import static gambrel.published.Published.assertPrinted;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.insight.statistics.ControlChart;
import gambrel.scenes.Found;
import gambrel.scenes.Scene;
import gambrel.trade.measure.Exact;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Standards of measurement and statistics. */
class StandardsTest {
  private static final String LATER = "31T00:00";

  @TempDir Path folder;

  /**
   * NIST/SEMATECH e-Handbook 6.3.2.2, flow rates (nist_imr_example.txt; the ten values are from
   * memory and give all four published results): each is the chill shrink of a body of 100 kg.
   * Published: mean 50.81, limits 45.8159 and 55.8041.
   */
  @Test
  void theIndividualsChartOfTheFlowRates() {
    var table = Published.table("nist_imr_example");
    var scene = new Scene(folder).file("bodies.csv", "body,species,killed,customer");
    for (var row : table) {
      String day = "%02d".formatted(Integer.parseInt(row.get("batch")));
      var cold = new BigDecimal("100").subtract(new BigDecimal(row.get("flowrate")));
      scene.body("N" + day + ",beef,2026-03-" + day + ",ann");
      scene.weigh(
          """
          %1$sT10:00 N%1$s hot  carcase 100
          %1$sT20:00 N%1$s cold carcase %2$s
          """
              .formatted(day, cold.toPlainString()));
    }
    var found = scene.at(LATER);
    assertEquals(10, found.rows("shrink").size());
    for (var row : found.rows("shrink")) {
      assertPrinted("50.81", row.get("centre"), "mean");
      assertEquals("45.816", row.get("lower"));
      assertEquals("55.804", row.get("upper"));
      assertEquals("", row.get("signal"));
    }
  }

  /** The same to four decimals; with the rounded factor 2.66 the upper limit would be 55.8049. */
  @Test
  void theIndividualsChartToAllPublishedDigits() {
    var values =
        Published.table("nist_imr_example").stream()
            .map(row -> Exact.fraction(new BigDecimal(row.get("flowrate"))))
            .toList();
    var chart = ControlChart.of(values, values.size());
    assertPrinted("50.81", chart.centre().orElseThrow().toPlainString(), "mean");
    assertPrinted("45.8159", chart.lower().orElseThrow().toPlainString(), "lower limit");
    assertPrinted("55.8041", chart.upper().orElseThrow().toPlainString(), "upper limit");
  }

  /**
   * Limits of error of OIML R 76 (as UK SI 1995/1907, schedule 2, table 3; in service) and of NIST
   * Handbook 44, 2.20, table 6 (maintenance; class III retrieved, the others unsourced): a test
   * weight passes at the limit and fails beyond it, at the upper end of each band and above it.
   * Class III L of the Handbook is no class that the program knows.
   */
  @ParameterizedTest
  @CsvSource({"EU/UK NAWI = OIML R 76, au", "NIST HB44, us"})
  void limitsOfErrorOfAScale(String document, String region) {
    var scene = new Scene(folder).set("region=" + region);
    scene.file("scales.csv", "scale,division,class");
    var failing = new HashSet<String>();
    for (var row : Published.table("nist_hb44_tolerances", "document", document)) {
      if (!row.get("class").equals("IIIL")) {
        test(scene, row, failing);
      }
    }
    var failed = new HashSet<String>();
    scene.at(LATER).rows("notices", "code=scale-failed").forEach(n -> failed.add(n.get("scale")));
    assertEquals(failing, failed);
  }

  /** Tests at the lower and upper end of a band, on a scale each; the division is 1 kg. */
  private static void test(Scene scene, Map<String, String> row, Set<String> failing) {
    int from = Integer.parseInt(row.get("load_from_divisions"));
    String to = row.get("load_to_divisions");
    // OIML bands begin where the one below ends, those of the Handbook one division higher.
    int first = from % 10 == 0 ? from + 1 : from;
    int last = to.isEmpty() ? 2 * from : Integer.parseInt(to);
    var limit = new BigDecimal(row.get("in_service_or_maintenance_divisions"));
    for (int load : List.of(first, last)) {
      var most = new BigDecimal(load).add(limit);
      String scale = row.get("class") + '-' + load;
      tested(scene, scale + "-at", row.get("class"), load, most);
      tested(scene, scale + "-over", row.get("class"), load, most.add(new BigDecimal("0.001")));
      failing.add(scale + "-over");
    }
  }

  private static void tested(
      Scene scene, String scale, String accuracy, int load, BigDecimal shown) {
    scene.add("scales.csv", scale + ",1," + accuracy);
    scene.add("codes.csv", "test-" + scale + ",,test," + load + ",,");
    scene.weigh(
        "05T10:00 - - - %s scale=%s code=test-%2$s".formatted(shown.toPlainString(), scale));
  }

  /** Definitions of units (unit_definitions.txt): so many of a unit show all their digits. */
  @ParameterizedTest
  @CsvSource({
    "lb avoirdupois, lb, 100000, 100000",
    "oz avoirdupois, oz, 1000000, 1000",
    "'cwt (short, 100 lb)', lb, 100000, 1000",
    "'ton (short, 2000 lb)', lb, 100000, 50",
    "stone (14 lb), lb, 1400000, 100000"
  })
  void definitionsOfUnits(String name, String unit, String weighed, String makes) {
    String factor = Published.table("unit_definitions", "from", name).get(0).get("factor");
    var expected =
        new BigDecimal(factor).multiply(new BigDecimal(makes)).setScale(3, RoundingMode.HALF_UP);
    assertEquals(expected.toPlainString(), packed(unit, "kg", weighed));
  }

  private String packed(String unit, String shop, String number) {
    Found found =
        new Scene(folder)
            .set("unit=" + shop)
            .weigh("05T10:00 B1 pack rump %s unit=%s".formatted(number, unit))
            .at(LATER);
    return found.body("B1", "take_home_" + shop);
  }

  /** A pound shop that is given kilograms divides by the same definition. */
  @Test
  void kilogramsInPounds() {
    assertEquals("220462.262", packed("kg", "lb", "100000"));
  }

  /**
   * Largest remainder with the Hare quota: 100,000 votes for ten seats, an example of textbooks on
   * elections (from memory), as shares of ten grams.
   */
  @Test
  void theLargestRemaindersOfAnElection() {
    var scene = new Scene(folder).set("bins=no").file("customers.csv", "customer,name");
    scene.file("shares.csv", "body,customer,share");
    var votes = List.of("47000", "16000", "15900", "12000", "6000", "3100");
    for (int i = 0; i < votes.size(); i++) {
      scene.add("customers.csv", "c" + i + ",C");
      scene.add("shares.csv", "B1,c" + i + "," + votes.get(i) + "/100000");
    }
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 0.010
        03T10:00 B1 cold carcase 0.010
        05T10:00 B1 pack rump    0.010
        """);
    var found = scene.at(LATER);
    var seats = List.of("0.005", "0.002", "0.001", "0.001", "0.001", "0.000");
    for (int i = 0; i < seats.size(); i++) {
      assertEquals(seats.get(i), found.statement("c" + i, "B1", "take_home_kg"), "c" + i);
    }
  }
}
