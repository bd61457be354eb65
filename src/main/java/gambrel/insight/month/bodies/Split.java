package gambrel.insight.month.bodies;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;

/** By what bodies of a species are divided. */
public enum Split {
  /** Not at all. */
  ALL,
  /** The shop's own word for its class. */
  CATEGORY,
  /** Days hung, in weeks. */
  DAYS,
  /** Fat depth, in thirds of the shop's bodies. */
  FAT,
  /** Hot weight, in thirds of the shop's bodies. */
  WEIGHT;

  /** Its name in data files and words. */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The number by which a body falls into a band; empty where not known or not a number. */
  Optional<BigDecimal> value(MonthBody account) {
    return switch (this) {
      case ALL, CATEGORY -> Optional.empty();
      case DAYS -> account.balance().daysHung().map(BigDecimal::valueOf);
      case FAT -> number(account.body().fatMillimetres());
      case WEIGHT -> account.balance().hot().map(weight -> weight.decimal());
    };
  }

  /** A depth as it was written, if it is a plain number. */
  private static Optional<BigDecimal> number(String text) {
    return text.matches("\\d{1,4}([.,]\\d{1,3})?")
        ? Optional.of(new BigDecimal(text.replace(',', '.')))
        : Optional.empty();
  }
}
