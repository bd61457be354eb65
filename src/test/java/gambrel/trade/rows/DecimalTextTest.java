package gambrel.trade.rows;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DecimalTextTest {
  @ParameterizedTest
  @CsvSource({
    "1.50, 1.5",
    "+1.5, 1.5",
    "01.5, 1.5",
    "10, 10",
    "100.00, 100",
    "0.00, 0",
    "0, 0",
    "-0.50, -0.5",
    ".5, 0.5",
    "5., 5",
    "1e3, 1e3",
    "'1,5', '1,5'"
  })
  void hasOneTextHoweverItIsWritten(String text, String canonical) {
    assertEquals(canonical, DecimalText.canonical(text));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", ".", "-", "+.", "1.2.3", "--1", "1e3", "1,5", "1 2", "1234567890123", "٣"})
  void isNothingElse(String text) {
    assertEquals(Optional.empty(), DecimalText.of(text));
  }

  @Test
  void isTheNumberThatTheJdkReads() {
    var dice = new SplittableRandom(13);
    for (int i = 0; i < 20_000; i++) {
      var text = new StringBuilder(dice.nextInt(3) == 0 ? "-" : dice.nextInt(3) == 0 ? "+" : "");
      int whole = dice.nextInt(13);
      dice.ints(whole, 0, 10).forEach(text::append);
      if (whole == 0 || dice.nextBoolean()) {
        text.append('.');
        dice.ints(whole == 0 ? 1 : dice.nextInt(13), 0, 10).forEach(text::append);
      }
      var number = DecimalText.of(text.toString());
      assertEquals(Optional.of(new BigDecimal(text.toString())), number, text.toString());
    }
  }

  @Test
  void hasTheTextOfItsValue() {
    var dice = new SplittableRandom(11);
    for (int i = 0; i < 20_000; i++) {
      String text = "%d.%0" + (1 + dice.nextInt(5)) + "d";
      text = text.formatted(dice.nextInt(300), dice.nextInt(10));
      String value = new BigDecimal(text).stripTrailingZeros().toPlainString();
      assertEquals(value, DecimalText.canonical(text), text);
    }
  }
}
