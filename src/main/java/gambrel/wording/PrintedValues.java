package gambrel.wording;

import gambrel.measure.WeightUnit;
import gambrel.notice.Value;
import gambrel.notice.ValueFormat;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Prints the values of notices as a reader expects numbers, dates and names of cuts.
 *
 * @param formats how numbers and dates are printed
 * @param cuts how cuts are called
 */
record PrintedValues(Formats formats, CutNames cuts) implements ValueFormat {
  @Override
  public String count(long number) {
    return formats.count(number);
  }

  @Override
  public String number(BigDecimal number) {
    return formats.number(number);
  }

  @Override
  public String number(BigDecimal number, WeightUnit unit) {
    return formats.number(number) + '\u00a0' + unit.id();
  }

  @Override
  public String percent(BigFraction percent) {
    return formats.percent(percent);
  }

  @Override
  public String date(LocalDate date) {
    return formats.date(date);
  }

  @Override
  public String moment(LocalDateTime time) {
    return formats.date(time.toLocalDate()) + ", " + formats.time(time.toLocalTime());
  }

  @Override
  public String part(Value.Part part) {
    return formats.inside(cuts.of(part.species(), part.item()));
  }
}
