package gambrel.trade.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
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

  @ParameterizedTest
  @CsvSource({"50,1", "49,0", "-50,-1", "-49,0", "150,2", "-150,-2"})
  void halfAThousandthRoundsAwayFromZero(long hundredThousandths, long thousandths) {
    assertEquals(thousandths, new Weight(hundredThousandths).thousandths());
  }

  @Test
  void aWeightOfAFractionIsTheNearestAndAHalfGoesAwayFromZero() {
    assertEquals(new Weight(33_333), Weight.of(BigFraction.of(1, 3)));
    assertEquals(new Weight(1), Weight.of(BigFraction.of(1, 200_000)));
    assertEquals(new Weight(-1), Weight.of(BigFraction.of(-1, 200_000)));
  }

  @Test
  void weightsAddAndSubtract() {
    var two = Weight.ofThousandths(2);
    var three = Weight.ofThousandths(3);
    assertEquals(new Weight(500), two.plus(three));
    assertEquals(new Weight(-100), two.minus(three));
    assertEquals(new Weight(700), Weight.sum(List.of(two, two, three)));
    assertEquals(Weight.ZERO, Weight.sum(List.of()));
  }

  @Test
  void aWeightIsAnExactPercentageOfAnother() {
    var third = Weight.ofThousandths(1).percentOf(Weight.ofThousandths(3));
    assertEquals(BigFraction.of(100, 3), third);
  }

  @Test
  void aWeightHasFiveDecimalsAndItsExactValue() {
    assertEquals(new BigDecimal("0.12345"), new Weight(12_345).decimal());
    assertEquals(BigFraction.of(12_345, 100_000), new Weight(12_345).fraction());
    assertEquals(new BigDecimal("0.123"), new Weight(12_345).output());
  }

  @Test
  void onlyAWeightBelowZeroIsNegative() {
    assertTrue(new Weight(-1).isNegative());
    assertFalse(Weight.ZERO.isNegative());
    assertFalse(new Weight(1).isNegative());
    assertTrue(Weight.ZERO.isZero());
    assertFalse(new Weight(1).isZero());
  }

  @Test
  void weightsAreOrderedBySize() {
    assertTrue(new Weight(1).compareTo(new Weight(2)) < 0);
    assertTrue(new Weight(2).compareTo(new Weight(1)) > 0);
    assertEquals(0, new Weight(2).compareTo(new Weight(2)));
  }
}
