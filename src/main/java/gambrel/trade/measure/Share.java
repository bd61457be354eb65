package gambrel.trade.measure;

import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A weight as a share of another weight.
 *
 * @param part the part; negative where a loss is a gain
 * @param whole the weight that the part is compared with; never zero
 */
public record Share(Weight part, Weight whole) {
  /**
   * Checks the whole.
   *
   * @throws IllegalArgumentException if the whole is zero
   */
  public Share {
    if (whole.isZero()) {
      throw new IllegalArgumentException("a share of zero");
    }
  }

  /** The share of {@code part} in {@code whole}; empty if one is unknown or the whole is zero. */
  public static Optional<Share> of(Optional<Weight> part, Optional<Weight> whole) {
    return part.isEmpty() || whole.isEmpty() || whole.get().isZero()
        ? Optional.empty()
        : Optional.of(new Share(part.get(), whole.get()));
  }

  /** The whole less the part, as a share of the whole. */
  public Share rest() {
    return new Share(whole.minus(part), whole);
  }

  /** The exact percentage. */
  public BigFraction percent() {
    return part.percentOf(whole);
  }
}
