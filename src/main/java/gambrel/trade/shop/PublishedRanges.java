package gambrel.trade.shop;

import gambrel.trade.cuts.Region;
import gambrel.trade.measure.Exact;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The published ranges with which figures are compared.
 *
 * @param all every range
 */
public record PublishedRanges(List<Published> all) {
  /** Copies the list. */
  public PublishedRanges {
    all = List.copyOf(all);
  }

  /**
   * A range and what it is about.
   *
   * @param species id of the species
   * @param figure {@code dressing} (of live weight), {@code chill} (of hot weight), {@code
   *     take_home} (of cold weight), {@code bone} or {@code fat} (of the weight into the boning
   *     room)
   * @param region id of the region whose animals it is about; empty for any
   * @param classes the classes that it is about; empty for any
   * @param days how long the bodies hung at most that it is about; empty for any time
   * @param range the range
   */
  public record Published(
      String species,
      String figure,
      String region,
      List<String> classes,
      Optional<Integer> days,
      Range range) {
    /** Copies the classes. */
    public Published {
      classes = List.copyOf(classes);
    }
  }

  /**
   * The range of a figure for a body's class in a region; empty if none is published.
   *
   * @param days how long the body hung; if that is unknown, none about a certain time is taken
   */
  public Optional<Range> of(Body body, Region region, String figure, Optional<Integer> days) {
    String category = body.category().toLowerCase(Locale.ROOT);
    return all.stream()
        .filter(of -> of.species().equals(body.species().id()) && of.figure().equals(figure))
        .filter(of -> of.region().isEmpty() || of.region().equals(region.id()))
        .filter(of -> of.classes().isEmpty() || of.classes().contains(category))
        .filter(of -> of.days().isEmpty() || days.filter(d -> d <= of.days().get()).isPresent())
        .map(Published::range)
        .findFirst();
  }

  /**
   * A range that a publication gives for a figure, or that a figure of this shop has.
   *
   * @param low lower end, in per cent
   * @param high upper end, in per cent
   * @param about a word for the animals or the method of the publication, or empty
   * @param source the publication, or empty
   */
  public record Range(BigDecimal low, BigDecimal high, String about, String source) {
    /** A range of this shop. */
    public Range(BigDecimal low, BigDecimal high) {
      this(low, high, "", "");
    }

    /** −1, 0 or 1 if a percentage, rounded to one decimal, is below, in or above the range. */
    public int compare(BigFraction percent) {
      var printed = Exact.round(percent, 1);
      return printed.compareTo(low) < 0 ? -1 : printed.compareTo(high) > 0 ? 1 : 0;
    }
  }
}
