package gambrel.trade.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ByteOrderTest {
  private static final int[] POINTS = {'-', '0', 'A', 'a', 0xE9, 0x20AC, 0xFFFD, 0x10400, 0x1F404};

  static LongStream seeds() {
    return LongStream.range(0, 500);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void textSortsAsItsBytesDo(long seed) {
    var random = new SplittableRandom(seed);
    String one = text(random);
    String other = text(random);
    int byBytes =
        Arrays.compareUnsigned(
            one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
    assertEquals(Integer.signum(byBytes), Integer.signum(ByteOrder.IDS.compare(one, other)));
  }

  private static String text(SplittableRandom random) {
    return random
        .ints(random.nextInt(4), 0, POINTS.length)
        .mapToObj(i -> Character.toString(POINTS[i]))
        .collect(Collectors.joining());
  }

  @Test
  void aMapIsSortedByTheBytesOfItsKeys() {
    var sorted = ByteOrder.sorted(Map.of("b", 1, "B10", 2, "B2", 3, "\u00e9", 4));
    assertEquals(List.of("B10", "B2", "b", "\u00e9"), List.copyOf(sorted.keySet()));
    assertEquals(3, sorted.get("B2"));
  }
}
