package gambrel.trade.shop;

import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Money;
import gambrel.trade.measure.Weight;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * One animal, or a mob boned together.
 *
 * @param id the id that scales and files use
 * @param species its species
 * @param category the shop's own word for its class, or empty
 * @param killed the date of slaughter
 * @param liveWeight live weight
 * @param liveGuessed whether the live weight is a guess
 * @param ageMonths age in months
 * @param fatMillimetres fat depth in millimetres, as the file has it
 * @param customer the owner that {@code bodies.csv} names, or empty
 * @param shares each owner's share; empty if {@code customer} or the shop owns the whole body
 * @param head number of animals, at least 1
 * @param tags other numbers that are keyed for it at the scale
 * @param mark ear tag or brand by which its owner knows it, or empty
 * @param outcome the result for the body as a whole
 * @param chiller the chiller in which it hangs, or empty
 * @param cutBy the date by which its owner wants it cut
 * @param supplier the supplier from whom the shop bought it, or empty
 * @param cost the price that the shop paid
 * @param note a note for the customer, or empty
 */
public record Body(
    String id,
    Species species,
    String category,
    Optional<LocalDate> killed,
    Optional<Weight> liveWeight,
    boolean liveGuessed,
    Optional<Integer> ageMonths,
    String fatMillimetres,
    String customer,
    Map<String, BigFraction> shares,
    int head,
    List<String> tags,
    String mark,
    Outcome outcome,
    String chiller,
    Optional<LocalDate> cutBy,
    String supplier,
    Optional<Money> cost,
    String note) {
  /** Age in months from which parts of cattle are specified risk material (9 CFR 310.22). */
  private static final int RISK_MONTHS = 30;

  /** The result for a body as a whole. */
  public enum Outcome {
    /** Cut in the usual way. */
    CUT,
    /** Taken home as it hung. */
    WHOLE,
    /** Found unfit for food. */
    CONDEMNED,
    /** Entered by mistake or withdrawn. */
    CANCELLED
  }

  /** Copies the collections. */
  public Body {
    shares = Map.copyOf(shares);
    tags = List.copyOf(tags);
  }

  /** The share of each owner; the shop owns a body without a customer. */
  public Map<String, BigFraction> owners() {
    if (!shares.isEmpty()) {
      return shares;
    }
    return Map.of(customer.isEmpty() ? Customer.SHOP : customer, BigFraction.ONE);
  }

  /** Whether it is cut in the usual way. */
  public boolean isCut() {
    return outcome == Outcome.CUT;
  }

  /** Whether the shares add up to exactly one. */
  public boolean sharesAddUp() {
    return sharesSum().equals(BigFraction.ONE);
  }

  /** The sum of the owners' shares. */
  public BigFraction sharesSum() {
    return owners().values().stream().reduce(BigFraction.ZERO, BigFraction::add);
  }

  /** Whether it is cattle of 30 months or more, or of unknown age. */
  public boolean mayHoldRiskMaterial() {
    return species == Species.BEEF && ageMonths.filter(age -> age < RISK_MONTHS).isEmpty();
  }

  /** The same body with these shares. */
  public Body withShares(Map<String, BigFraction> shares) {
    return new Body(
        id,
        species,
        category,
        killed,
        liveWeight,
        liveGuessed,
        ageMonths,
        fatMillimetres,
        customer,
        shares,
        head,
        tags,
        mark,
        outcome,
        chiller,
        cutBy,
        supplier,
        cost,
        note);
  }
}
