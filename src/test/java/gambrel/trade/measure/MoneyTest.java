package gambrel.trade.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Currency;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MoneyTest {
  private static final Currency EURO = Currency.getInstance("EUR");

  @ParameterizedTest
  @CsvSource({"1,200,1", "-1,200,-1", "49,10000,0", "-49,10000,0"})
  void anAmountIsRoundedHalfAwayFromZero(int numerator, int denominator, long cents) {
    assertEquals(new Money(cents), Money.of(BigFraction.of(numerator, denominator), EURO));
  }

  @Test
  void anExactAmountKeepsEveryCent() {
    assertEquals(new Money(1234), Money.exact(new BigDecimal("12.34"), EURO));
    assertEquals(new Money(1200), Money.exact(new BigDecimal("12"), EURO));
  }

  @Test
  void anAmountFinerThanTheMinorUnitIsRefused() {
    assertThrows(ArithmeticException.class, () -> Money.exact(new BigDecimal("12.345"), EURO));
  }

  /** ISO 4217: the euro has two decimals, the yen none; XXX is no currency and has none given. */
  @ParameterizedTest
  @CsvSource({"EUR,2", "JPY,0", "XXX,0"})
  void aCurrencyWithoutDecimalsHasNone(String code, int digits) {
    assertEquals(digits, Money.digits(Currency.getInstance(code)));
  }

  @Test
  void moneyAddsAndSubtractsToTheCent() {
    assertEquals(new Money(15), new Money(10).plus(new Money(5)));
    assertEquals(new Money(-5), new Money(5).minus(new Money(10)));
  }

  @Test
  void moneyPrintsInTheMajorUnit() {
    assertEquals(new BigDecimal("-0.05"), new Money(-5).decimal(EURO));
    assertEquals(BigFraction.of(-1, 20), new Money(-5).fraction(EURO));
  }

  @Test
  void moneyIsOrderedByAmount() {
    assertTrue(new Money(-1).compareTo(Money.ZERO) < 0);
    assertTrue(new Money(1).compareTo(Money.ZERO) > 0);
    assertEquals(0, new Money(1).compareTo(new Money(1)));
  }
}
