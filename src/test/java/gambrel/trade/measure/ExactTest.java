package gambrel.trade.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class ExactTest {
  @ParameterizedTest
  @CsvSource({
    "5,2,0,3",
    "-5,2,0,-3",
    "1,3,3,0.333",
    "2,3,3,0.667",
    "1,2000,3,0.001",
    "-1,2000,3,-0.001"
  })
  void roundsHalfAwayFromZero(int numerator, int denominator, int decimals, String rounded) {
    var value = BigFraction.of(numerator, denominator);
    assertEquals(new BigDecimal(rounded), Exact.round(value, decimals));
  }

  @Test
  void aDecimalTextIsTakenExactly() {
    assertEquals(BigFraction.of(1, 10), Exact.fraction(new BigDecimal("0.1")));
    assertEquals(BigFraction.of(1200), Exact.fraction(new BigDecimal("1.2E+3")));
  }

  @ParameterizedTest
  @CsvSource({
    "0,1,0.000",
    "2,1,1.414",
    "1,4,0.500",
    "9,1,3.000",
    "1,12,0.289",
    "25,100000000,0.001"
  })
  void takesASquareRootToTheNearestThousandth(int numerator, int denominator, String root) {
    var square = BigFraction.of(numerator, denominator);
    assertEquals(new BigDecimal(root), Exact.sqrt(square, 3));
  }

  /**
   * Commons Numbers 1.2 has two negative fractions the wrong way round: a gain is a negative loss.
   */
  @Test
  void fractionsBelowZeroAreInOrderToo() {
    var random = new SplittableRandom(12);
    for (int i = 0; i < 1000; i++) {
      long one = random.nextInt(41) - 20L;
      long other = random.nextInt(41) - 20L;
      long below = 1L + random.nextInt(20);
      assertEquals(
          Long.compare(one, other),
          BigFraction.of(one, below).compareTo(BigFraction.of(other, below)),
          () -> one + " against " + other + ", both over " + below);
    }
  }

  @Test
  void refusesTheRootOfANegativeNumber() {
    assertThrows(ArithmeticException.class, () -> Exact.sqrt(BigFraction.of(-1), 3));
  }

  static LongStream seeds() {
    return LongStream.range(0, 500);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void theRootAgreesWithTheJdksOwn(long seed) {
    var random = new SplittableRandom(seed);
    var square = BigFraction.of(random.nextInt(1_000_000), 1 + random.nextInt(1_000_000));
    var reference =
        new BigDecimal(square.getNumerator())
            .divide(new BigDecimal(square.getDenominator()), new MathContext(60))
            .sqrt(new MathContext(50))
            .setScale(3, RoundingMode.HALF_UP);
    assertEquals(reference, Exact.sqrt(square, 3));
  }

  @ParameterizedTest
  @CsvSource({"1,2000,1", "-1,2000,-1", "4,10000,0", "1,3,333"})
  void countsWholeUnitsHalfAwayFromZero(int numerator, int denominator, long thousandths) {
    assertEquals(thousandths, Exact.units(BigFraction.of(numerator, denominator), 3));
  }

  @Test
  void aPartIsAnExactPercentageOfItsWhole() {
    assertEquals(BigFraction.of(100, 3), Exact.percent(BigFraction.ONE, BigFraction.of(3)));
  }

  @Test
  void theLargerOfTwoNumbersIsTaken() {
    var third = BigFraction.of(1, 3);
    assertEquals(BigFraction.ONE, Exact.max(third, BigFraction.ONE));
    assertEquals(BigFraction.ONE, Exact.max(BigFraction.ONE, third));
  }

  @Test
  void aStatisticIsTakenAsItPrints() {
    assertEquals(BigFraction.of(1, 10), Exact.ofStatistic(0.1));
  }

  @Test
  void wholeNumbersAreTakenExactlyWhateverTheirZeros() {
    assertEquals(BigFraction.of(7), Exact.fraction(new BigDecimal("7")));
    assertEquals(BigFraction.of(7), Exact.fraction(new BigDecimal("7.00")));
  }

  @Test
  void refusesTheRootOfANegativeNumberHoweverSmall() {
    assertThrows(ArithmeticException.class, () -> Exact.sqrt(BigFraction.of(-1, 1_000_000_000), 0));
  }
}
