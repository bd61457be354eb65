package gambrel.insight.month.bodies;

import java.util.function.UnaryOperator;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A figure and between what it lies.
 *
 * @param low lower end
 * @param middle the figure
 * @param high upper end
 */
public record FigureRange(BigFraction low, BigFraction middle, BigFraction high) {
  /** A figure that rises with this one. */
  public FigureRange map(UnaryOperator<BigFraction> rising) {
    return new FigureRange(rising.apply(low), rising.apply(middle), rising.apply(high));
  }
}
