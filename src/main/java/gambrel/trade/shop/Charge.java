package gambrel.trade.shop;

import gambrel.trade.measure.FileWord;
import gambrel.trade.measure.Weight;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * One line of the price list.
 *
 * @param id its id
 * @param description the text on the statement
 * @param basis the quantity that is charged
 * @param price money for a unit of the basis; negative for a credit
 * @param minimum least quantity charged
 * @param free quantity that is not charged
 * @param species only this species, or empty
 * @param category only bodies of this category, or empty
 * @param item only this item and the items under it, or empty
 * @param body only this body, or empty
 * @param hotFrom least hot weight, included
 * @param hotTo greatest hot weight, excluded
 * @param taxPercent tax on the line, in per cent
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

  /** The quantity that is charged. */
  public enum Basis implements FileWord {
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
    /** Net weight of packs without packs of a batch. */
    PACKED,
    /** Number of those packs. */
    PACK,
    /** Days hung. */
    DAY,
    /** Customers with a share; each pays the full price. */
    SHARE;

    private static final Set<Basis> COUNTED = EnumSet.of(HEAD, PACK, DAY, SHARE);

    /** Whether it is a weight, in the shop's unit; else it is a number of what its name says. */
    public boolean isWeight() {
      return !COUNTED.contains(this);
    }
  }
}
