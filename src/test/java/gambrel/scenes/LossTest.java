package gambrel.scenes;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * When a cutting loss holds a statement. All divisions are 0.3, so that three weighings in the
 * equation (one on the rail, two off it) give U = 2·√(3·0.3²/12) = 0.3.
 */
class LossTest extends SceneTest {
  @BeforeEach
  void coarseScales() {
    scene.file("scales.csv", "scale,division,class", "rail,0.3,", "bench,0.3,");
  }

  /** Cold 300 on the 3rd; two cuts on a day, together {@code out}. */
  private Found cut(String day, String out) {
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 306
        03T10:00 B1 cold carcase 300
        %1$sT10:00 B1 pack rump 200
        %1$sT10:30 B1 bin  bone %2$s
        """
            .formatted(day, out));
    return scene.at(LATER);
  }

  @Test
  void uncertaintyIsThatOfTheScalesDivisions() {
    assertBody(cut("05", "95"), "balance_u_kg", "0.300");
  }

  @Test
  void threePerCentMayBeLostGiveOrTakeTheUncertainty() {
    // 3 % of 300 is 9; 9.3 lost
    assertEquals("issued", cut("05", "90.70").state("B1"));
  }

  @Test
  void aLossBeyondLimitAndUncertaintyHolds() {
    assertEquals("held loss-high", cut("05", "90.69").state("B1"));
  }

  @Test
  void aGainWithinTheUncertaintyPasses() {
    assertEquals("issued", cut("05", "100.30").state("B1"));
  }

  @Test
  void aGainBeyondTheUncertaintyHolds() {
    var found = cut("05", "100.31");
    assertBody(found, "cutting_loss_kg", "-0.310");
    assertEquals("held loss-negative", found.state("B1"));
  }

  @Test
  void theShopSetsTheLimit() {
    scene.set("limit.cutting_loss_pct=1");
    assertEquals("held loss-high", cut("05", "96.69").state("B1"));
  }

  @Test
  void hangingOnForTwoDaysAllowsNothingMore() {
    assertEquals("held loss-high", cut("05", "89").state("B1"));
  }

  @Test
  void withoutAReweighBeforeCuttingEveryDayAllowsFourTenthsOfAPerCent() {
    // 3 + 3 · 0.4 = 4.2 % of 300 is 12.6; with U 12.9
    assertEquals("issued", cut("06", "87.10").state("B1"));
  }

  @Test
  void hangingAllowanceHasItsLimit() {
    assertEquals("held loss-high", cut("06", "87.09").state("B1"));
  }

  @Test
  void theShopSetsTheHangingAllowance() {
    scene.set("limit.hanging_pct_per_day=0");
    assertEquals("held loss-high", cut("06", "90.69").state("B1"));
  }

  @Test
  void anAgedWeightTakesTheHangingAllowanceAway() {
    scene.weigh("06T08:00 B1 aged carcase 300");
    assertEquals("held loss-high", cut("13", "90.69").state("B1"));
  }

  @Test
  void whatTheScalesMayErrAddsToTheUncertainty() {
    // Class III, loads of 1000, 667 and about 300 divisions: 2, 2 and 1 divisions in service.
    scene.file("scales.csv", "scale,division,class", "rail,0.3,III", "bench,0.3,III");
    var found = cut("05", "90.00");
    // √(0.6² + (0.6 + 0.3)²); U² = 0.3² + 1.17, so U = 1.122
    assertBody(found, "balance_scale_kg", "1.082");
    assertEquals("issued", found.state("B1"));
  }

  @Test
  void beyondWhatTheScalesMayErrItHolds() {
    scene.file("scales.csv", "scale,division,class", "rail,0.3,III", "bench,0.3,III");
    assertEquals("held loss-high", cut("05", "89.87").state("B1"));
  }

  @Test
  void theErrorOfOneScaleIsCommonToWhatGoesInAndComesOut() {
    scene.file("scales.csv", "scale,division,class", "rail,0.3,III", "bench,0.3,III");
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 306 scale=bench
        03T10:00 B1 cold carcase 300 scale=bench
        05T10:00 B1 pack rump    200
        05T10:30 B1 bin  bone     95
        """);
    // |2 - (2 + 1)| divisions of 0.3
    assertBody(scene.at(LATER), "balance_scale_kg", "0.300");
  }

  @Test
  void scaleErrorIsNotKnownWhereAScaleHasNoClass() {
    scene.file("scales.csv", "scale,division,class", "rail,0.3,III", "bench,0.3,");
    assertBody(cut("05", "95"), "balance_scale_kg", "");
  }
}
