package gambrel.trade.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.Currency;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WeightTest {
  @ParameterizedTest
  @CsvSource({"12.3454,12.345", "12.34550,12.346", "-0.0005,-0.001", "0.00049,0.000"})
  void printsThreeDecimalsHalfAwayFromZero(String value, String printed) {
    assertEquals(printed, Weight.of(new BigDecimal(value)).toString());
  }

  @Test
  void keepsFiveDecimals() {
    assertEquals(new Weight(1), Weight.of(new BigDecimal("0.000005")));
    assertEquals(Weight.ZERO, Weight.of(new BigDecimal("0.0000049")));
  }

  /** 1 lb = 0.45359237 kg exactly (NIST SP 811, Appendix B); an ounce is a sixteenth of it. */
  @ParameterizedTest
  @CsvSource({"1,LB,KG,0.45359237", "16,OZ,LB,1", "1,OZ,KG,0.028349523125", "1000,G,KG,1"})
  void convertsByTheLegalDefinitions(String value, WeightUnit from, WeightUnit to, String result) {
    assertEquals(Exact.fraction(new BigDecimal(result)), from.convert(new BigDecimal(value), to));
  }

  @Test
  void aPoundComesBackAfterTwoConversions() {
    var kilograms = WeightUnit.LB.convert(BigDecimal.ONE, WeightUnit.KG);
    var back = kilograms.divide(WeightUnit.LB.convert(BigDecimal.ONE, WeightUnit.KG));
    assertEquals(BigFraction.ONE, back);
  }

  @Test
  void overflowIsAnErrorAndNoWeight() {
    var most = new Weight(Long.MAX_VALUE);
    assertThrows(ArithmeticException.class, () -> most.plus(new Weight(1)));
  }

  /** ISO 4217: two decimals for the dollar, none for the yen, three for the Bahraini dinar. */
  @ParameterizedTest
  @CsvSource({"AUD,1.005,1.01", "JPY,1.5,2", "BHD,0.0005,0.001"})
  void moneyIsRoundedToTheCurrencysMinorUnit(String code, String amount, String rounded) {
    var currency = Currency.getInstance(code);
    var money = Money.of(Exact.fraction(new BigDecimal(amount)), currency);
    assertEquals(new BigDecimal(rounded), money.decimal(currency));
  }
}
