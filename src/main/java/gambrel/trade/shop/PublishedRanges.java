package gambrel.trade.shop;

import gambrel.trade.cuts.Species;
import java.util.Map;
import java.util.Optional;

/**
 * The published ranges that figures are held against.
 *
 * @param ranges by {@link #key}
 */
public record PublishedRanges(Map<String, PublishedRange> ranges) {
  /** Copies the map. */
  public PublishedRanges {
    ranges = Map.copyOf(ranges);
  }

  /** Under what a range is kept. */
  public static String key(String species, String figure) {
    return species + ' ' + figure;
  }

  /**
   * The range of a species' figure: {@code dressing} of live, {@code chill} of hot, {@code
   * take_home} of cold, {@code bone} and {@code fat} of the weight into the boning room.
   */
  public Optional<PublishedRange> of(Species species, String figure) {
    return Optional.ofNullable(ranges.get(key(species.id(), figure)));
  }
}
