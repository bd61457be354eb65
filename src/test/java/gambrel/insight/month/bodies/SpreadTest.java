package gambrel.insight.month.bodies;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SpreadTest {
  /** No body weighs more than this, a thousand units, and few weigh as much. */
  private static final int MOST = 100_000_000;

  /**
   * Type 7 of 1, 2, 3, 10, worked by hand: a quarter of the way from 1 to 10 are three quarters of
   * a step.
   */
  @Test
  void quartilesLieBetweenTheValuesBesideThem() {
    var spread = Spread.of(fractions("10", "1", "3", "2")).orElseThrow();
    assertEquals(fraction("1.75"), spread.lower());
    assertEquals(fraction("2.5"), spread.median());
    assertEquals(fraction("4.75"), spread.upper());
  }

  @Test
  void nothingHasNoSpread() {
    assertEquals(Optional.empty(), Spread.of(List.of()));
    assertEquals(Optional.empty(), Spread.ofPercent(List.of()));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 7, 200})
  void sharesSpreadLikeTheirPercentages(int number) {
    var random = new SplittableRandom(number);
    for (int i = 0; i < 50; i++) {
      var shares = shares(random, number);
      var percents = shares.stream().map(Share::percent).toList();
      assertEquals(Spread.of(percents), Spread.ofPercent(shares));
    }
  }

  @Test
  void sharesAreComparedExactly() {
    var random = new SplittableRandom(128);
    var shares = shares(random, 300);
    shares.addAll(huge(random));
    for (var one : shares) {
      for (var other : shares) {
        assertEquals(
            one.percent().compareTo(other.percent()),
            Spread.compareShares(one, other),
            () -> one + " against " + other);
      }
    }
  }

  /** Losses may be gains; some are a step apart, some the same share of another whole. */
  private static List<Share> shares(SplittableRandom random, int number) {
    var shares = new ArrayList<Share>();
    while (shares.size() < number) {
      long whole = 1L + random.nextInt(MOST);
      long part = random.nextInt(MOST) - MOST / 4L;
      shares.add(share(part, whole));
      if (shares.size() < number && random.nextBoolean()) {
        shares.add(random.nextBoolean() ? share(2 * part, 2 * whole) : share(part + 1, whole));
      }
    }
    return shares;
  }

  /** Whose products do not fit into 64 bits. */
  private static List<Share> huge(SplittableRandom random) {
    var shares = new ArrayList<Share>();
    for (int i = 0; i < 40; i++) {
      long whole = random.nextLong();
      shares.add(share(random.nextLong(), whole == 0 ? 1 : whole));
    }
    shares.add(share(Long.MAX_VALUE, Long.MAX_VALUE - 1));
    shares.add(share(Long.MAX_VALUE - 1, Long.MAX_VALUE));
    shares.add(share(Long.MIN_VALUE, 1));
    shares.add(share(1, Long.MIN_VALUE));
    return shares;
  }

  private static Share share(long part, long whole) {
    return new Share(new Weight(part), new Weight(whole));
  }

  private static List<BigFraction> fractions(String... values) {
    return List.of(values).stream().map(SpreadTest::fraction).toList();
  }

  private static BigFraction fraction(String value) {
    return Exact.fraction(new BigDecimal(value));
  }
}
