package gambrel.trade.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class WorthTest {
  @Test
  void nothingIsWorthNothing() {
    assertEquals(BigFraction.ZERO, new Worth().sum());
  }

  @Test
  void twoKilosAtTwelveAndAHalfAndOneAtAThirdAreWorthTwentyFiveAndAThird() {
    var worth = new Worth();
    worth.add(Weight.ofThousandths(2000), BigFraction.of(25, 2));
    worth.add(Weight.ofThousandths(1000), BigFraction.of(1, 3));

    assertEquals(BigFraction.of(76, 3), worth.sum());
  }

  @Test
  void anySumIsTheOneThatFractionsGiveStepByStep() {
    var random = new SplittableRandom(11);
    for (int run = 0; run < 200; run++) {
      var worth = new Worth();
      var sum = BigFraction.ZERO;
      for (int i = 0; i < 20; i++) {
        var weight = Weight.ofHundredThousandths(random.nextLong(-10_000_000, 10_000_000));
        var value = BigFraction.of(random.nextInt(-5000, 5000), random.nextInt(1, 400));
        worth.add(weight, value);
        sum = sum.add(value.multiply(weight.fraction()));
      }
      assertEquals(sum, worth.sum());
    }
  }
}
