package gambrel.trade.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import gambrel.trade.measure.Weight;
import gambrel.trade.measure.WeightUnit;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A reason")
class ReasonTest {
  private static final Reason LOSS = new Reason(ReasonCode.LOSS_HIGH, "");

  @Test
  void is_the_same_though_its_numbers_changed() {
    var then = LOSS.with("loss", Weight.ofThousandths(12_300), WeightUnit.KG);
    var now = LOSS.with("loss", Weight.ofThousandths(12_400), WeightUnit.KG);
    assertEquals(then, now);
    assertEquals(Set.of(then), Set.of(now));
    assertEquals(1, new TreeSet<>(List.of(then, now)).size());
  }

  @Test
  void is_another_if_it_names_another_batch() {
    assertNotEquals(new Reason(ReasonCode.BATCH_OUT, "M7"), new Reason(ReasonCode.BATCH_OUT, "M8"));
    assertNotEquals(
        new Reason(ReasonCode.BATCH_OUT, "M7"), new Reason(ReasonCode.BATCH_LATE, "M7"));
  }

  @Test
  void keeps_the_numbers_that_made_it() {
    var reason = LOSS.with("limit", Weight.ofThousandths(4_350), WeightUnit.KG);
    assertEquals(Weight.ofThousandths(4_350), reason.weight("limit"));
    assertEquals(Weight.ZERO, LOSS.weight("limit"));
  }
}
