package gambrel.insight.month.bodies;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;

/** A property by which the bodies of a species are divided into groups. */
public enum Split {
  /** None: all bodies are one group. */
  ALL,
  /** The class that the shop gives the body. */
  CATEGORY,
  /** Days hung, by weeks. */
  DAYS,
  /** Fat depth, by thirds of the shop's bodies. */
  FAT,
  /** Hot weight, by thirds of the shop's bodies. */
  WEIGHT;

  /** Its name in data files and words. */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The body's number; empty if unknown, or if the property is no number. */
  Optional<BigDecimal> value(MonthBody body) {
    return switch (this) {
      case ALL, CATEGORY -> Optional.empty();
      case DAYS -> body.balance().daysHung().map(BigDecimal::valueOf);
      case FAT -> number(body.body().fatMillimetres());
      case WEIGHT -> body.balance().hot().map(weight -> weight.decimal());
    };
  }

  /** A depth as a number; empty if the text is not one. */
  private static Optional<BigDecimal> number(String text) {
    return text.matches("\\d{1,4}([.,]\\d{1,3})?")
        ? Optional.of(new BigDecimal(text.replace(',', '.')))
        : Optional.empty();
  }
}
