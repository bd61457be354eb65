package gambrel.trade.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import gambrel.trade.measure.Weight;
import gambrel.trade.measure.WeightUnit;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class ReasonTest {
  private static final Reason LOSS = new Reason(ReasonCode.LOSS_HIGH, "");

  @Test
  void isTheSameThoughItsNumbersChanged() {
    var then = LOSS.with("loss", Weight.ofThousandths(12_300), WeightUnit.KG);
    var now = LOSS.with("loss", Weight.ofThousandths(12_400), WeightUnit.KG);
    assertEquals(then, now);
    assertEquals(Set.of(then), Set.of(now));
    assertEquals(1, new TreeSet<>(List.of(then, now)).size());
  }

  @Test
  void isAnotherIfItNamesAnotherBatch() {
    assertNotEquals(new Reason(ReasonCode.BATCH_OUT, "M7"), new Reason(ReasonCode.BATCH_OUT, "M8"));
    assertNotEquals(
        new Reason(ReasonCode.BATCH_OUT, "M7"), new Reason(ReasonCode.BATCH_LATE, "M7"));
  }

  @Test
  void keepsTheNumbersThatMadeIt() {
    var reason = LOSS.with("limit", Weight.ofThousandths(4_350), WeightUnit.KG);
    assertEquals(Weight.ofThousandths(4_350), reason.weight("limit"));
    assertEquals(Weight.ZERO, LOSS.weight("limit"));
  }

  @Test
  void isNoTextOfTheSameName() {
    assertNotEquals(LOSS, "LOSS_HIGH");
    assertNotEquals(new Reason(ReasonCode.LOSS_NEGATIVE, ""), LOSS);
  }
}
