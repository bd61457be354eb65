package gambrel.trade.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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

  @Test
  void thePercentageIsRoundedHalfAwayFromZero() {
    assertEquals(new BigDecimal("33.333"), new Share(new Weight(1), new Weight(3)).percent(3));
    assertEquals(new BigDecimal("-12.5"), new Share(new Weight(-1), new Weight(8)).percent(1));
    assertEquals(new BigDecimal("-13"), new Share(new Weight(-1), new Weight(8)).percent(0));
  }

  /** The last three rows are products of 123 bits, which differ in the upper or the lower half. */
  @ParameterizedTest
  @CsvSource({
    "1, 3, 334, 1000",
    "-1, 4, 1, 4",
    "1, -2, 1, 4",
    "1, -2, 1, -4",
    "3000000000, 4000000000, 4000000000, 3000000000",
    "3000000000000000000, 4000000000000000001, 3000000000000000000, 4000000000000000000",
    "3000000000000000000, 4000000000000000000, 4000000000000000000, 3000000000000000000",
    "3000000000000000000, 4, 4000000000000000000, 5"
  })
  void sharesAreOrderedByTheirExactPercentage(long part, long whole, long more, long ofWhole) {
    var less = new Share(new Weight(part), new Weight(whole));
    var greater = new Share(new Weight(more), new Weight(ofWhole));
    assertEquals(-1, Integer.signum(less.compareTo(greater)));
    assertEquals(1, Integer.signum(greater.compareTo(less)));
  }

  @Test
  void equalPercentagesOfDifferentWeightsAreInNoOrder() {
    var third = new Share(new Weight(1), new Weight(3));
    assertEquals(0, third.compareTo(new Share(new Weight(2), new Weight(6))));
    assertEquals(0, third.compareTo(new Share(new Weight(-1), new Weight(-3))));
  }
}
