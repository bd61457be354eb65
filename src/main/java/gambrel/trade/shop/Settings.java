package gambrel.trade.shop;

import gambrel.trade.cuts.Region;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.WeightUnit;
import java.math.BigDecimal;
import java.time.Month;
import java.time.ZoneId;
import java.util.Currency;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The shop's settings, from {@code shop.properties}.
 *
 * @param name the shop's name
 * @param address or empty
 * @param contact or empty
 * @param currency the one currency of all money
 * @param locale how numbers and dates are printed
 * @param language the language of the pages
 * @param region which names and cuts of the trade apply
 * @param unit the unit of all weights: kilogram or pound
 * @param zone the shop's time zone
 * @param paper page size
 * @param taxName what the tax is called, or empty
 * @param taxIncluded whether prices contain the tax
 * @param templates the shop's own template folder, relative to the shop folder
 * @param rail rail weights taken, by species; the entry for no species is the default
 * @param bins whether bone, fat and waste are weighed
 * @param quietHours hours without a weighing after which a body is finished
 * @param cuttingDays days within which a part-cut body is carried on
 * @param yearReviews months whose summary also reviews the twelve months that end with it
 * @param allowMixedBatches whether owners' meat may be mixed
 * @param limits the shop's limits
 */
public record Settings(
    String name,
    String address,
    String contact,
    Currency currency,
    Locale locale,
    String language,
    Region region,
    WeightUnit unit,
    ZoneId zone,
    Paper paper,
    String taxName,
    boolean taxIncluded,
    Optional<String> templates,
    Map<Optional<Species>, Set<Step>> rail,
    Bins bins,
    int quietHours,
    int cuttingDays,
    Set<Month> yearReviews,
    boolean allowMixedBatches,
    Limits limits) {

  /** The rail weights that the shop takes of a species. */
  public Set<Step> railOf(Species species) {
    Set<Step> own = rail.get(Optional.of(species));
    return own != null ? own : rail.get(Optional.<Species>empty());
  }

  /** Page sizes. */
  public enum Paper {
    /** 210 × 297 mm (ISO 216). */
    A4,
    /** 8.5 × 11 inches. */
    LETTER
  }

  /** Whether what stays behind is weighed. */
  public enum Bins {
    /** All of it. */
    WEIGHED,
    /** Some of it: the loss is shown, never tested. */
    PARTLY,
    /** None of it. */
    NO
  }

  /**
   * What the shop accepts.
   *
   * @param cuttingLossPercent of the weight into the boning room
   * @param hangingPercentPerDay added where a body hung on without being weighed again
   * @param batchLossPercent of what went into a batch
   * @param daysHung longest hanging without a remark
   * @param revisions most revised statements in a night
   */
  public record Limits(
      BigDecimal cuttingLossPercent,
      BigDecimal hangingPercentPerDay,
      BigDecimal batchLossPercent,
      int daysHung,
      int revisions) {}
}
