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
 * @param id the key that scales and files use
 * @param species its species
 * @param category the shop's own word for its class, or empty
 * @param killed the date of slaughter
 * @param liveWeight its weight alive
 * @param liveGuessed whether that weight was a guess
 * @param ageMonths age in months
 * @param fatMillimetres fat depth, as written
 * @param customer the owner that {@code bodies.csv} names, or empty
 * @param shares each owner's share, zero where it could not be read; empty means {@code customer}
 *     or the shop takes all
 * @param head how many animals, at least 1
 * @param tags other numbers keyed for it at the scale
 * @param mark ear tag or brand that its owner knows it by, or empty
 * @param outcome what became of it
 * @param supplier where the shop bought it, or empty
 * @param cost what the shop paid
 * @param note printed for the customer, or empty
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
    String supplier,
    Optional<Money> cost,
    String note) {
  /** Copies the collections. */
  public Body {
    shares = Map.copyOf(shares);
    tags = List.copyOf(tags);
  }

  /** Who owns how much of it; the shop where nobody else is named. */
  public Map<String, BigFraction> owners() {
    if (!shares.isEmpty()) {
      return shares;
    }
    return Map.of(customer.isEmpty() ? Customer.SHOP : customer, BigFraction.ONE);
  }

  /** Whether the shares are all known and add up to exactly one. */
  public boolean sharesAddUp() {
    return !owners().containsValue(BigFraction.ZERO) && sharesSum().equals(BigFraction.ONE);
  }

  /** The sum of the owners' shares; a share that is not known counts as zero. */
  public BigFraction sharesSum() {
    return owners().values().stream().reduce(BigFraction.ZERO, BigFraction::add);
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
        supplier,
        cost,
        note);
  }
}
