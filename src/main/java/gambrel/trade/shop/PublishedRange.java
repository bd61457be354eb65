package gambrel.trade.shop;

import gambrel.trade.measure.Exact;
import java.math.BigDecimal;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A range that a publication gives for a figure.
 *
 * @param low lower end, in per cent
 * @param high upper end, in per cent
 * @param about a word for the animals or the method of the publication, or empty
 * @param source the publication
 */
public record PublishedRange(BigDecimal low, BigDecimal high, String about, String source) {

  /** −1, 0 or 1 if a percentage, rounded to one decimal, is below, in or above the range. */
  public int compare(BigFraction percent) {
    var printed = Exact.round(percent, 1);
    if (printed.compareTo(low) < 0) {
      return -1;
    }
    return printed.compareTo(high) > 0 ? 1 : 0;
  }
}
