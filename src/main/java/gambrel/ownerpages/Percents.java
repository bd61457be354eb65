package gambrel.ownerpages;

import gambrel.measure.Exact;
import gambrel.wording.Wording;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Percentages for columns whose head says that they are percentages. */
final class Percents {
  private static final int DECIMALS = 1;

  private Percents() {}

  /** A percentage without its sign. */
  static String bare(BigFraction percent, Wording wording) {
    return wording.formats().number(Exact.round(percent, DECIMALS));
  }

  /** A percentage without its sign; empty where not known. */
  static String bare(Optional<BigFraction> percent, Wording wording) {
    return percent.map(value -> bare(value, wording)).orElse("");
  }
}
