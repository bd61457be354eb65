package gambrel.pages.owner.month;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChartScaleTest {

  @ParameterizedTest
  @CsvSource({
    "1.53, 1.97, '1.5 1.6 1.7 1.8 1.9 2.0'",
    "-0.16, 5.16, '-1 0 1 2 3 4 5 6'",
    "2, 2, '1.9 2.0 2.1'",
    "2.301, 2.302, '2.2 2.3 2.4 2.5'",
    "-3, -2.1, '-3.0 -2.8 -2.6 -2.4 -2.2 -2.0'",
    "0, 250, '0 50 100 150 200 250'"
  })
  void runsInRoundStepsFromBelowTheLeastToAboveTheMost(
      BigDecimal least, BigDecimal most, String ticks) {
    var scale = new ChartScale(14, 150, List.of(most, least));
    assertEquals(
        Stream.of(ticks.split(" ")).toList(),
        scale.ticks().stream().map(BigDecimal::toPlainString).toList());
  }

  @Test
  void putsItsEndsAtTheEndsOfThePlotAndTheRestInProportion() {
    var scale = new ChartScale(14, 150, List.of(BigDecimal.ZERO, BigDecimal.TEN));
    assertEquals(150, scale.y(BigDecimal.ZERO));
    assertEquals(14, scale.y(BigDecimal.TEN));
    assertEquals(82, scale.y(BigDecimal.valueOf(5)));
    assertTrue(scale.y(BigDecimal.valueOf(3)) > scale.y(BigDecimal.valueOf(4)));
  }
}
