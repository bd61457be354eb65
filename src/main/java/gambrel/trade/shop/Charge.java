package gambrel.trade.shop;

import gambrel.trade.measure.Weight;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/**
 * One line of the price list.
 *
 * @param id its key
 * @param description printed on the statement
 * @param basis what it is charged on
 * @param price money a unit of the basis; negative for a credit
 * @param minimum least quantity charged
 * @param free quantity that costs nothing
 * @param species only this species, or empty
 * @param category only this class of body, or empty
 * @param item only this item and what lies under it, or empty
 * @param body only this body, or empty
 * @param hotFrom lower end of a hot weight band, included
 * @param hotTo upper end of the band, excluded
 * @param taxPercent tax on the line
 * @param from first day, included
 * @param to last day, included
 */
public record Charge(
    String id,
    String description,
    Basis basis,
    BigDecimal price,
    BigDecimal minimum,
    BigDecimal free,
    String species,
    String category,
    String item,
    String body,
    Optional<Weight> hotFrom,
    Optional<Weight> hotTo,
    BigDecimal taxPercent,
    Optional<LocalDate> from,
    Optional<LocalDate> to) {

  /** What a charge counts. */
  public enum Basis {
    /** Animals. */
    HEAD,
    /** Live weight. */
    LIVE,
    /** Hot weight. */
    HOT,
    /** Cold weight. */
    COLD,
    /** Weight into the boning room. */
    BONING,
    /** Green weight into batches. */
    TUB,
    /** Weight of packs as weighed, batch packs left out. */
    PACKED,
    /** Number of those packs. */
    PACK,
    /** Days hung. */
    DAY,
    /** Each customer in shares, in full. */
    SHARE
  }
}
