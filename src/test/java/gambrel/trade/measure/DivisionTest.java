package gambrel.trade.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DivisionTest {
  private static final BigFraction THIRD = BigFraction.of(1, 3);

  @Test
  void theRestGoesToTheLargestRemainder() {
    var shares = Map.of("a", BigFraction.of(2, 3), "b", THIRD);
    assertEquals(Map.of("a", 67L, "b", 33L), Division.divide(100, shares));
    assertEquals(Map.of("a", 1L, "b", 0L), Division.divide(1, shares));
  }

  @Test
  void tiesGoToTheIdThatSortsFirst() {
    var shares = Map.of("c", THIRD, "b", THIRD, "a", THIRD);
    assertEquals(Map.of("a", 34L, "b", 33L, "c", 33L), Division.divide(100, shares));
    assertEquals(Map.of("a", 1L, "b", 1L, "c", 0L), Division.divide(2, shares));
  }

  @Test
  void aCreditIsDividedBySizeAndNegated() {
    var halves = Map.of("a", BigFraction.of(1, 2), "b", BigFraction.of(1, 2));
    assertEquals(Map.of("a", -3L, "b", -2L), Division.divide(-5, halves));
  }

  @Test
  void sharesThatCannotBeReadDivideEqually() {
    var unknown = Map.of("a", BigFraction.ZERO, "b", BigFraction.ZERO);
    assertEquals(Map.of("a", 2L, "b", 1L), Division.divide(3, unknown));
  }

  static LongStream seeds() {
    return LongStream.range(0, 500);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void partsAddUpAndNoPartIsOffByAUnit(long seed) {
    var random = new SplittableRandom(seed);
    var shares = new TreeMap<String, BigFraction>();
    for (int i = 0; i <= random.nextInt(6); i++) {
      shares.put("id" + i, BigFraction.of(1 + random.nextInt(9), 1 + random.nextInt(9)));
    }
    long total = random.nextInt(200_001) - 100_000L;
    var parts = Division.divide(total, shares);
    assertEquals(total, parts.values().stream().mapToLong(Long::longValue).sum());
    var whole = shares.values().stream().reduce(BigFraction.ZERO, BigFraction::add);
    shares.forEach(
        (id, share) -> {
          var exact = share.multiply(BigFraction.of(total)).divide(whole);
          var off = exact.subtract(BigFraction.of(parts.get(id))).abs();
          assertTrue(off.compareTo(BigFraction.ONE) < 0, id + " is off by " + off);
        });
  }

  @Test
  void ofANegativeTotalTheFirstIdTakesTheLargerPart() {
    var shares = Map.of("c", THIRD, "b", THIRD, "a", THIRD);
    assertEquals(Map.of("a", -34L, "b", -33L, "c", -33L), Division.divide(-100, shares));
  }

  @Test
  void theLargestRemainderGoesBeforeTheFirstId() {
    // of 10: 2.4 and 7.6
    var shares = Map.of("a", BigFraction.of(24, 100), "b", BigFraction.of(76, 100));
    assertEquals(Map.of("a", 2L, "b", 8L), Division.divide(10, shares));
  }

  @Test
  void sharesThatAddUpToMoreThanOneDivideInProportion() {
    var shares = Map.of("a", BigFraction.of(3), "b", BigFraction.of(1));
    assertEquals(Map.of("a", 75L, "b", 25L), Division.divide(100, shares));
  }

  @Test
  void nothingDividesIntoNothing() {
    assertEquals(Map.of("a", 0L, "b", 0L), Division.divide(0, Map.of("a", THIRD, "b", THIRD)));
  }
}
