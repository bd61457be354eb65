package gambrel.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.trade.measure.Division;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The method of largest remainders, stated without computing it: the parts make the whole, each is
 * its exact part rounded down or up, and nobody was rounded up before one with a larger remainder,
 * or with the same and an id that sorts before.
 */
class DivisionTest {

  static IntStream seeds() {
    return IntStream.range(0, 200);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void partsAreThoseOfTheLargestRemainders(int seed) {
    var random = new SplittableRandom(seed);
    var shares = shares(random);
    long total = random.nextInt(5_000) - 1_000L;
    var parts = Division.divide(total, shares);
    assertEquals(total, parts.values().stream().mapToLong(Long::longValue).sum());
    assertEquals(shares.keySet(), parts.keySet());
    assertLargestRemainders(Math.abs(total), shares, parts);
  }

  /** Sixths, so that remainders are often equal. */
  private static TreeMap<String, BigFraction> shares(SplittableRandom random) {
    var shares = new TreeMap<String, BigFraction>();
    int owners = 1 + random.nextInt(6);
    for (int i = 0; i < owners; i++) {
      shares.put("c" + i, BigFraction.of(1 + random.nextInt(4), 6));
    }
    return shares;
  }

  private static void assertLargestRemainders(
      long size, Map<String, BigFraction> shares, Map<String, Long> parts) {
    var whole = shares.values().stream().reduce(BigFraction.ZERO, BigFraction::add);
    var surplus = new TreeMap<String, BigFraction>();
    shares.forEach(
        (id, share) -> {
          var exact = share.multiply(BigFraction.of(Math.toIntExact(size))).divide(whole);
          surplus.put(id, BigFraction.of(Math.abs(parts.get(id))).subtract(exact));
        });
    for (String id : surplus.keySet()) {
      var own = surplus.get(id);
      assertTrue(own.abs().compareTo(BigFraction.ONE) < 0, id);
      for (String other : surplus.keySet()) {
        if (own.signum() > 0 && surplus.get(other).signum() < 0) {
          // Rounded up by s from a remainder of 1 - s; rounded down by the remainder itself.
          var gained = BigFraction.ONE.subtract(own);
          int larger = gained.compareTo(surplus.get(other).negate());
          assertTrue(larger > 0 || larger == 0 && id.compareTo(other) < 0, id + " over " + other);
        }
      }
    }
  }
}
