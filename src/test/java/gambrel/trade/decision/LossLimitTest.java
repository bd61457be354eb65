package gambrel.trade.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.trade.measure.Weight;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * The loss test and its limit. All divisions are 0.3 and three weighings are in the equation, so
 * that U = 2·√(3·0.3²/12) = 0.3. The limit is 3 % of 300: 9.
 */
class LossLimitTest extends DecisionScene {
  @BeforeEach
  void coarseScales() {
    scene.file("scales.csv", "scale,division,class", "rail,0.3,", "bench,0.3,");
  }

  private void cut(String day, String bone) {
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 306
        03T10:00 B1 cold carcase 300
        %1$sT10:00 B1 pack rump 200
        %1$sT10:30 B1 bin  bone %2$s
        """
            .formatted(day, bone));
  }

  private Weight limit() {
    return Weight.of(LossLimit.of(night().shop().settings(), balance()));
  }

  @Test
  void aLossOfLimitAndUncertaintyPasses() {
    cut("05", "90.7");
    assertEquals(List.of(), reasons());
  }

  @Test
  void aHundredThousandthMoreHolds() {
    cut("05", "90.69999");
    assertEquals(List.of("LOSS_HIGH"), reasons());
  }

  @Test
  void aGainOfTheUncertaintyPasses() {
    cut("05", "100.3");
    assertEquals(List.of(), reasons());
  }

  @Test
  void aGainOfAHundredThousandthMoreHolds() {
    cut("05", "100.30001");
    assertEquals(List.of("LOSS_NEGATIVE"), reasons());
  }

  @Test
  void aHighLossKeepsLossLimitUncertaintyAndBoningWeight() {
    cut("05", "80");
    var reason = decision().reasons().get(0);
    assertEquals(kg("20"), reason.weight("loss"));
    assertEquals(kg("-20"), reason.weight("surplus"));
    assertEquals(kg("9"), reason.weight("limit"));
    assertEquals(kg("0.3"), reason.weight("uncertainty"));
    assertEquals(kg("300"), reason.weight("boning"));
  }

  @Test
  void binsWeighedInPartAreNotTested() {
    scene.set("bins=partly");
    cut("05", "10");
    assertEquals(List.of(), reasons());
    scene.correct("bench", "4", "net", "200", "07");
    assertEquals(List.of(), reasons());
  }

  @Test
  void permittedErrorsAddToTheUncertainty() {
    // Class III: 300 is 1000 divisions, 200 is 667: 2 each, 0.6; 90 is 300 divisions: 1, 0.3.
    // In: 0.6 on the rail; out: 0.9 on the bench. U² = 0.09 + 0.36 + 0.81 = 1.26; 1.12² = 1.2544
    scene.file("scales.csv", "scale,division,class", "rail,0.3,III", "bench,0.3,III");
    cut("05", "89.88");
    assertEquals(BigFraction.of(126, 100), balance().outputs().orElseThrow().uncertaintySquared());
    assertEquals(List.of(), reasons());
    // 1.13² = 1.2769
    scene.correct("bench", "4", "net", "89.87", "07");
    assertEquals(List.of("LOSS_HIGH"), reasons());
  }

  @Test
  void twoDaysFromTheRailToTheFirstCutAllowNothingMore() {
    cut("05", "95");
    assertEquals(kg("9"), limit());
  }

  @Test
  void ofThreeDaysEachAllowsFourTenthsOfAPerCent() {
    // 3 % + 3 · 0.4 % = 4.2 % of 300
    cut("06", "95");
    assertEquals(kg("12.6"), limit());
  }

  @Test
  void theDaysRunToTheFirstCutAndNotToTheLast() {
    cut("05", "95");
    scene.weigh("12T10:00 B1 pack rump 1");
    assertEquals(kg("9"), limit());
  }

  @Test
  void anAgedWeighingTakesTheAllowanceAway() {
    cut("12", "95");
    scene.weigh("06T10:00 B1 aged carcase 300");
    assertEquals(kg("9"), limit());
  }

  @Test
  void withoutAColdWeighingTheDaysRunFromTheHotOne() {
    // 3 % + 3 · 0.4 % of 300
    scene.set("rail=hot").weigh("02T10:00 B1 hot carcase 300\n05T10:00 B1 pack rump 295");
    assertEquals(kg("12.6"), limit());
  }

  @Test
  void withoutAHotWeighingTheDaysRunFromTheColdOne() {
    scene.set("rail=cold").weigh("02T10:00 B1 cold carcase 300\n05T10:00 B1 pack rump 295");
    assertEquals(kg("12.6"), limit());
  }

  @Test
  void theLaterOfHotAndColdCounts() {
    // the second side was weighed hot on the 4th
    scene.weigh(
        """
        02T10:00 B1 hot  left-side  150
        03T10:00 B1 cold left-side  150
        04T10:00 B1 hot  right-side 150
        06T10:00 B1 pack rump       295
        """);
    // 3 % of the 150 that hang cold
    assertEquals(kg("4.5"), limit());
  }

  @Test
  void withoutAWeightIntoTheBoningRoomNothingMayBeLost() {
    scene.weigh("05T10:00 B1 pack rump 295");
    assertEquals(kg("0"), limit());
  }

  @Test
  void theShopSetsBothLimits() {
    scene.set("limit.cutting_loss_pct=2", "limit.hanging_pct_per_day=1");
    cut("06", "95");
    // 2 % + 3 · 1 % of 300
    assertEquals(kg("15"), limit());
  }
}
