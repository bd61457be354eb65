package gambrel.trade.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A weight as a share of another weight.
 *
 * @param part the part; negative where a loss is a gain
 * @param whole the weight that the part is compared with; never zero
 */
public record Share(Weight part, Weight whole) implements Comparable<Share> {
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

  /** The percentage rounded to {@code decimals} places, half away from zero. */
  public BigDecimal percent(int decimals) {
    return part.decimal().movePointRight(2).divide(whole.decimal(), decimals, RoundingMode.HALF_UP);
  }

  /** Compares the percentages exactly; none is rounded or reduced for it. */
  @Override
  public int compareTo(Share other) {
    int order = compareProducts(part, other.whole, other.part, whole);
    return whole.isNegative() == other.whole.isNegative() ? order : -order;
  }

  /** Compares a·b with c·d, each a number of 128 bits. */
  private static int compareProducts(Weight a, Weight b, Weight c, Weight d) {
    long one = a.hundredThousandths();
    long oneBy = b.hundredThousandths();
    long other = c.hundredThousandths();
    long otherBy = d.hundredThousandths();
    int high = Long.compare(Math.multiplyHigh(one, oneBy), Math.multiplyHigh(other, otherBy));
    return high != 0 ? high : Long.compareUnsigned(one * oneBy, other * otherBy);
  }
}
