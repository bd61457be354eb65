package gambrel.trade.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * An amount in the shop's one currency, in its minor unit; negative for a credit.
 *
 * @param minor the number of minor units (cents, pence)
 */
public record Money(long minor) implements Comparable<Money> {
  /** An amount of zero. */
  public static final Money ZERO = new Money(0);

  /** {@code amount} of the currency's major unit, rounded half away from zero to its minor unit. */
  public static Money of(BigFraction amount, Currency currency) {
    return new Money(Exact.units(amount, digits(currency)));
  }

  /**
   * {@code amount} exactly.
   *
   * @throws ArithmeticException if it is finer than the currency's minor unit
   */
  public static Money exact(BigDecimal amount, Currency currency) {
    return new Money(
        amount
            .setScale(digits(currency), RoundingMode.UNNECESSARY)
            .unscaledValue()
            .longValueExact());
  }

  /** Decimals of the currency's minor unit (ISO 4217); 0 where the standard gives none. */
  public static int digits(Currency currency) {
    return Math.max(0, currency.getDefaultFractionDigits());
  }

  /** The sum of {@code amounts}. */
  public static Money sum(Stream<Money> amounts) {
    return amounts.reduce(ZERO, Money::plus);
  }

  /** The sum of this and {@code other}. */
  public Money plus(Money other) {
    return new Money(Math.addExact(minor, other.minor));
  }

  /** This less {@code other}. */
  public Money minus(Money other) {
    return new Money(Math.subtractExact(minor, other.minor));
  }

  /** The amount in the major unit with the currency's decimals. */
  public BigDecimal decimal(Currency currency) {
    return BigDecimal.valueOf(minor, digits(currency));
  }

  /** The amount in the major unit. */
  public BigFraction fraction(Currency currency) {
    return Exact.fraction(decimal(currency));
  }

  @Override
  public int compareTo(Money other) {
    return Long.compare(minor, other.minor);
  }
}
