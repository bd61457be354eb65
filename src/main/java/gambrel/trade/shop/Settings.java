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
 * @param address the address, or empty
 * @param contact the contact line, or empty
 * @param currency the one currency of all money
 * @param locale the format of numbers and dates
 * @param language the language of the pages
 * @param region the names and cuts of the trade
 * @param unit the unit of all weights: kilogram or pound
 * @param zone the shop's time zone
 * @param paper page size
 * @param taxName the name of the tax, or empty
 * @param taxIncluded whether prices contain the tax
 * @param terms how statements are numbered and paid
 * @param templates the shop's own template folder, relative to the shop folder
 * @param rail the rail weights that the shop takes, of every species
 * @param bins whether bone, fat and waste are weighed
 * @param quietHours hours without a weighing after which a body is finished
 * @param cuttingDays days within which cutting of a part-cut body is expected to go on
 * @param yearReviews months whose summary also reviews the last twelve months
 * @param allowMixedBatches whether owners' meat may be mixed
 * @param printing how statements for customers who get paper are printed
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
    Terms terms,
    Optional<String> templates,
    Map<Species, Set<Step>> rail,
    Bins bins,
    int quietHours,
    int cuttingDays,
    Set<Month> yearReviews,
    boolean allowMixedBatches,
    Printing printing,
    Limits limits) {

  /** The rail weights that the shop takes of a species. */
  public Set<Step> railOf(Species species) {
    return rail.get(species);
  }

  /**
   * How statements are numbered and paid.
   *
   * @param taxNumber the shop's number with the tax office, or empty
   * @param taxNumberName what such a number is called, or empty
   * @param numberFrom the number of the first statement
   * @param payByDays days from issue until a statement is to be paid; empty if nothing is printed
   * @param payTo how to pay, lines separated by {@code ;}, or empty
   */
  public record Terms(
      String taxNumber,
      String taxNumberName,
      int numberFrom,
      Optional<Integer> payByDays,
      String payTo) {}

  /** Page sizes. */
  public enum Paper {
    /** 210 × 297 mm (ISO 216). */
    A4,
    /** 8.5 × 11 inches. */
    LETTER
  }

  /** Whether bone, fat and waste are weighed. */
  public enum Bins {
    /** All of it. */
    WEIGHED,
    /** Some of it: the loss is printed but never tested. */
    PARTLY,
    /** None of it. */
    NO
  }

  /**
   * How statements for customers who get paper are printed.
   *
   * @param bothSides whether the printer prints on both sides of a sheet
   * @param cover whether a sheet with the address comes before a customer's statements
   */
  public record Printing(boolean bothSides, boolean cover) {}

  /**
   * The shop's limits.
   *
   * @param cuttingLossPercent greatest loss at the bench, of the weight into the boning room
   * @param hangingPercentPerDay added for each day on which a body hung on after its last weighing
   * @param batchLossPercent greatest loss of a batch, of the weight that went into it
   * @param daysHung longest hanging without a notice
   * @param revisions most revised statements in a night
   * @param print most statements in the file to print
   */
  public record Limits(
      BigDecimal cuttingLossPercent,
      BigDecimal hangingPercentPerDay,
      BigDecimal batchLossPercent,
      int daysHung,
      int revisions,
      int print) {}
}
