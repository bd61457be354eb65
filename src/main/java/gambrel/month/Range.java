package gambrel.month;

import java.util.function.UnaryOperator;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A figure and between what it lies.
 *
 * @param low lower end
 * @param middle the figure
 * @param high upper end
 */
public record Range(BigFraction low, BigFraction middle, BigFraction high) {
  /** A figure that rises with this one. */
  public Range map(UnaryOperator<BigFraction> rising) {
    return new Range(rising.apply(low), rising.apply(middle), rising.apply(high));
  }
}
