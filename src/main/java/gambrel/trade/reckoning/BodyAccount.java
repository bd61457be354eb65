package gambrel.trade.reckoning;

import gambrel.trade.account.Bill;
import gambrel.trade.account.Entitlement;
import gambrel.trade.balance.BatchBalance;
import gambrel.trade.balance.BodyBalance;
import gambrel.trade.decision.Decision;
import gambrel.trade.measure.ByteOrder;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.Customer;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.function.Function;

/**
 * A body's figures, entitlements, bill and decision at one moment.
 *
 * @param balance its figures
 * @param entitlements what each customer gets, by id; the shop's own part under its reserved id
 * @param bill what it costs
 * @param decision its state and the reasons
 */
public record BodyAccount(
    BodyBalance balance,
    SortedMap<String, Entitlement> entitlements,
    Bill bill,
    Decision decision) {
  /** Copies the entitlements. */
  public BodyAccount {
    entitlements = ByteOrder.sorted(entitlements);
  }

  /** The body. */
  public Body body() {
    return balance.body();
  }

  /** The customers who get a statement: every customer but the shop. */
  public List<String> customers() {
    return entitlements.keySet().stream().filter(id -> !id.equals(Customer.SHOP)).toList();
  }

  /** A weight of all customers together, such as take-home; each item in whole thousandths. */
  public Weight sum(Function<Entitlement, Weight> weight) {
    return Weight.sum(entitlements.values().stream().map(weight).toList());
  }

  /**
   * The number of packs that are wholly a customer's: those that name him or are of a body that he
   * owns alone, and those of batches of this body's meat alone.
   */
  public int packs(String customer) {
    var own = entitlements.get(customer);
    int packs = own.lines().stream().mapToInt(line -> line.packs().orElse(0)).sum();
    return own.isSoleOwner() ? packs + packsOfOwnBatches() : packs;
  }

  /** The number of packs of finished batches that have no meat but this body's. */
  public int packsOfOwnBatches() {
    return balance.batches().stream()
        .filter(b -> !b.isOpen() && b.meatInByBody().keySet().equals(Set.of(body().id())))
        .mapToInt(BatchBalance::packs)
        .sum();
  }

  /**
   * Whether its weights are complete: issued or closed, with no batch open. A held body may lack a
   * tub, and the meat of an open batch is not yet taken home; comparisons leave both out.
   */
  public boolean isSettled() {
    return decision.state().isSettled()
        && balance.batches().stream().noneMatch(BatchBalance::isOpen);
  }
}
