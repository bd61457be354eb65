package gambrel.trade.shop;

import gambrel.trade.cuts.Species;
import java.util.Map;
import java.util.Optional;

/**
 * The published ranges with which figures are compared.
 *
 * @param ranges by {@link #key}
 */
public record PublishedRanges(Map<String, PublishedRange> ranges) {
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
  public Optional<PublishedRange> of(Species species, String figure) {
    return Optional.ofNullable(ranges.get(key(species.id(), figure)));
  }
}
