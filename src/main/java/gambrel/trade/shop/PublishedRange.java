package gambrel.trade.shop;

import gambrel.trade.measure.Exact;
import java.math.BigDecimal;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What others have published of a figure.
 *
 * @param low lower end, in per cent
 * @param high upper end, in per cent
 * @param about word for what it was found of, or how; or empty
 * @param source who published it
 */
public record PublishedRange(BigDecimal low, BigDecimal high, String about, String source) {

  /** Whether a percentage, as printed, lies below (−1), in (0) or above (1) the range. */
  public int compare(BigFraction percent) {
    var printed = Exact.round(percent, 1);
    if (printed.compareTo(low) < 0) {
      return -1;
    }
    return printed.compareTo(high) > 0 ? 1 : 0;
  }
}
