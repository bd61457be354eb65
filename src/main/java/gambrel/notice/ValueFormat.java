package gambrel.notice;

import gambrel.measure.Exact;
import gambrel.measure.Weight;
import gambrel.measure.WeightUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Locale;
import org.apache.commons.numbers.fraction.BigFraction;

/** How values are printed; the methods of the interface print them as data files do. */
public interface ValueFormat {
  /** As data files do: decimal points, ISO 8601, English names of parts. */
  ValueFormat PLAIN = new ValueFormat() {};

  /** A whole number. */
  default String count(long number) {
    return Long.toString(number);
  }

  /** A number with the decimals that it has. */
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

  /** A part of a body in the middle of a sentence. */
  default String part(Value.Part part) {
    return small(part.item().name());
  }

  /** A name with a small first letter, unless it is an abbreviation. */
  static String small(String name) {
    boolean word = name.length() > 1 && Character.isLowerCase(name.charAt(1));
    return word ? name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1) : name;
  }
}
