package gambrel.cause;

import gambrel.measure.WeightUnit;
import java.math.BigDecimal;
import java.util.Optional;

/** What may be done to one row by a correction. */
sealed interface Remedy {
  /** Keys it to another body. */
  record Move(String body) implements Remedy {}

  /** Removes it. */
  record Remove() implements Remedy {}

  /**
   * Gives it another net weight.
   *
   * @param net in the row's unit
   * @param tare the tare that has to be given with it, in the row's unit
   */
  record Net(BigDecimal net, Optional<BigDecimal> tare) implements Remedy {}

  /** Reads it in another unit. */
  record In(WeightUnit unit) implements Remedy {}
}
