package gambrel.ownerpages;

import gambrel.measure.Exact;
import gambrel.measure.Money;
import gambrel.month.Spread;
import gambrel.wording.Wording;
import java.util.Currency;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Money for a unit of weight or time, and ranges, for columns. */
record Rates(Wording wording, Currency currency) {
  /** Fewer values have no middle half worth printing. */
  private static final int MIDDLE = 4;

  /** A rate in the major unit. */
  String major(BigFraction rate) {
    return wording.formats().bareMoney(Money.of(rate, currency));
  }

  /** A rate in minor units. */
  String minor(BigFraction rate) {
    return wording.formats().bareMoney(new Money(Exact.units(rate, 0)));
  }

  /** A rate in minor units; empty where not known. */
  String minor(Optional<BigFraction> rate) {
    return rate.map(this::minor).orElse("");
  }

  /** A difference with its sign, in the major unit. */
  String gain(BigFraction rate) {
    String text = major(rate);
    return Money.of(rate, currency).compareTo(Money.ZERO) > 0 ? "+" + text : text;
  }

  /** The middle half of rates in the major unit. */
  String middleMajor(Spread spread) {
    return spread.number() < MIDDLE ? "" : range(major(spread.lower()), major(spread.upper()));
  }

  /** The middle half of numbers with one decimal. */
  String middle(Spread spread) {
    return spread.number() < MIDDLE ? "" : range(tenths(spread.lower()), tenths(spread.upper()));
  }

  /** Median and middle half of percentages. */
  String medianAndMiddle(Spread spread) {
    String middle = middle(spread);
    return middle.isEmpty()
        ? ""
        : wording.say("month.median.middle", tenths(spread.median()), middle);
  }

  /** One decimal. */
  String tenths(BigFraction value) {
    return wording.formats().number(Exact.round(value, 1));
  }

  /** One decimal. */
  String tenths(double value) {
    return tenths(Exact.ofStatistic(value));
  }

  private String range(String low, String high) {
    return wording.say("month.range", low, high);
  }
}
