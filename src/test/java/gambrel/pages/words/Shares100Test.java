package gambrel.pages.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.trade.measure.Weight;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class Shares100Test {

  private static List<Long> tenths(long... thousandths) {
    return Shares100.tenths(Arrays.stream(thousandths).mapToObj(Weight::ofThousandths).toList());
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
  void ofNothingAreNothing() {
    assertEquals(List.of(0L, 0L), tenths(0, 0));
    assertEquals(List.of(), tenths());
  }

  @Test
  void withALossBelowZeroAreRoundedAlone() {
    assertEquals(List.of(1100L, -100L), tenths(110, -10));
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
  void alwaysAddUpToAHundred(List<Weight> table) {
    assertEquals(1000, Shares100.tenths(table).stream().mapToLong(Long::longValue).sum());
  }
}
