package gambrel.trade.notice;

import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Weight;
import gambrel.trade.measure.WeightUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import org.apache.commons.numbers.fraction.BigFraction;

/** Prints values; the methods of the interface itself print them as data files do. */
public interface ValueFormat {
  /** The format of data files: decimal points, times by ISO 8601. */
  ValueFormat PLAIN = new ValueFormat() {};

  /** A whole number. */
  default String count(long number) {
    return Long.toString(number);
  }

  /** A number with all its decimals. */
  default String number(BigDecimal number) {
    return number.toPlainString();
  }

  /** A number with its unit. */
  default String number(BigDecimal number, WeightUnit unit) {
    return number(number) + ' ' + unit.id();
  }

  /** A weight, with three decimals. */
  default String weight(Weight weight, WeightUnit unit) {
    return number(weight.output(), unit);
  }

  /** A percentage with one decimal. */
  default String percent(BigFraction percent) {
    return number(Exact.round(percent, 1)) + " %";
  }

  /** A date. */
  default String date(LocalDate date) {
    return date.toString();
  }

  /** A date and time. */
  default String moment(LocalDateTime time) {
    return time.toString();
  }
}
