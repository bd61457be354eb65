package gambrel.trade.notice;

import gambrel.trade.measure.Weight;
import gambrel.trade.measure.WeightUnit;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;

/**
 * A type with named values. Instances are immutable; each method returns a copy with one more
 * value.
 *
 * @param <T> the type itself
 */
public interface NamedValues<T> {
  /** A copy with this value. */
  T with(String name, Value value);

  /** A copy with a text or id. */
  default T with(String name, String text) {
    return with(name, new Value.Text(text));
  }

  /** A copy with a whole number. */
  default T with(String name, long number) {
    return with(name, new Value.Count(number));
  }

  /** A copy with a weight in the shop's unit. */
  default T with(String name, Weight weight, WeightUnit unit) {
    return with(name, new Value.Mass(weight, unit));
  }

  /** A copy with a date. */
  default T with(String name, LocalDate date) {
    return with(name, new Value.Day(date));
  }

  /** A copy with a date and time. */
  default T with(String name, LocalDateTime time) {
    return with(name, new Value.Moment(time));
  }

  /** A copy with ids or texts. */
  default T with(String name, List<String> names) {
    return with(name, new Value.Names(names));
  }
}
