package gambrel.pages.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.trade.measure.Weight;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PrintedSharesTest {

  private static List<Weight> weights(long... thousandths) {
    return Arrays.stream(thousandths).mapToObj(Weight::ofThousandths).toList();
  }

  private static List<Long> tenths(long... thousandths) {
    var parts = weights(thousandths);
    return PrintedShares.tenths(1000, parts, Weight.sum(parts));
  }

  @Test
  void ofThirdsGiveTheTenthLeftOverToTheFirst() {
    assertEquals(List.of(334L, 333L, 333L), tenths(1, 1, 1));
  }

  @Test
  void goToTheLargestRemainder() {
    assertEquals(List.of(0L, 1000L), tenths(1, 9999));
    assertEquals(List.of(167L, 167L, 666L), tenths(167, 167, 667));
  }

  @Test
  void addUpWithALossBelowZeroToo() {
    assertEquals(List.of(1100L, -100L), tenths(110, -10));
    assertEquals(List.of(671L, 332L, -3L), tenths(20_130, 9_955, -85));
  }

  /** 180.44, 9.14 and 1.95 are 191.53: printed 191.5, of which one part is rounded down. */
  @Test
  void letWeightsWithOneDecimalAddUpToTheirRoundedSum() {
    assertEquals(
        weights(180_400, 9_100, 2_000), PrintedShares.weights(weights(180_440, 9_140, 1_950), 1));
  }

  static Stream<List<Weight>> tables() {
    var random = new SplittableRandom(20260801);
    return IntStream.range(0, 200)
        .mapToObj(
            i ->
                random
                    .ints(1 + random.nextInt(60), 0, 40_000)
                    .mapToObj(Weight::ofThousandths)
                    .toList())
        .filter(table -> !Weight.sum(table).isZero());
  }

  @ParameterizedTest
  @MethodSource("tables")
  void alwaysAddUpAndAreNeverAStepAway(List<Weight> table) {
    var whole = Weight.sum(table);
    var tenths = PrintedShares.tenths(1000, table, whole);
    assertEquals(1000, tenths.stream().mapToLong(Long::longValue).sum());
    for (int i = 0; i < table.size(); i++) {
      assertTrue(Math.abs(tenths.get(i) - PrintedShares.tenths(table.get(i), whole)) <= 1);
    }
  }
}
