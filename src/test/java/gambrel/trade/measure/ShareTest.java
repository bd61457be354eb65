package gambrel.trade.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class ShareTest {
  private static final Optional<Weight> ONE = Optional.of(Weight.ofThousandths(1000));
  private static final Optional<Weight> THREE = Optional.of(Weight.ofThousandths(3000));

  @Test
  void thePercentageIsExact() {
    assertEquals(BigFraction.of(100, 3), Share.of(ONE, THREE).orElseThrow().percent());
  }

  @Test
  void theRestIsWhatIsLeftOfTheWhole() {
    var rest = Share.of(ONE, THREE).orElseThrow().rest();
    assertEquals(new Share(Weight.ofThousandths(2000), Weight.ofThousandths(3000)), rest);
  }

  @Test
  void nothingIsAShareOfAnUnknownOrZeroWeight() {
    assertEquals(Optional.empty(), Share.of(ONE, Optional.empty()));
    assertEquals(Optional.empty(), Share.of(Optional.empty(), ONE));
    assertEquals(Optional.empty(), Share.of(ONE, Optional.of(Weight.ZERO)));
    assertThrows(IllegalArgumentException.class, () -> new Share(Weight.ZERO, Weight.ZERO));
  }
}
