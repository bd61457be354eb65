package gambrel.insight.month.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.trade.measure.Exact;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class SpreadTest {
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
  }

  private static List<BigFraction> fractions(String... values) {
    return List.of(values).stream().map(SpreadTest::fraction).toList();
  }

  private static BigFraction fraction(String value) {
    return Exact.fraction(new BigDecimal(value));
  }
}
