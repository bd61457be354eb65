package gambrel.trade.shop;

import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Exact;
import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The published ranges with which figures are compared.
 *
 * @param ranges by {@link #key}
 */
public record PublishedRanges(Map<String, Range> ranges) {
  /** Copies the map. */
  public PublishedRanges {
    ranges = Map.copyOf(ranges);
  }

  /** The key of a range. */
  public static String key(String species, String figure) {
    return species + ' ' + figure;
  }

  /**
   * The range of a species for {@code dressing} (of live weight), {@code chill} (of hot weight),
   * {@code take_home} (of cold weight), {@code bone} or {@code fat} (of the weight into the boning
   * room); empty if none is published.
   */
  public Optional<Range> of(Species species, String figure) {
    return Optional.ofNullable(ranges.get(key(species.id(), figure)));
  }

  /**
   * A range that a publication gives for a figure.
   *
   * @param low lower end, in per cent
   * @param high upper end, in per cent
   * @param about a word for the animals or the method of the publication, or empty
   * @param source the publication
   */
  public record Range(BigDecimal low, BigDecimal high, String about, String source) {

    /** −1, 0 or 1 if a percentage, rounded to one decimal, is below, in or above the range. */
    public int compare(BigFraction percent) {
      var printed = Exact.round(percent, 1);
      return printed.compareTo(low) < 0 ? -1 : printed.compareTo(high) > 0 ? 1 : 0;
    }
  }
}
