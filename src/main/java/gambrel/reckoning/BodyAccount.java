package gambrel.reckoning;

import gambrel.balance.BodyBalance;
import gambrel.charge.Bill;
import gambrel.decision.Decision;
import gambrel.measure.ByteOrder;
import gambrel.owner.Entitlement;
import gambrel.shop.Body;
import gambrel.shop.Customer;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;

/** All that is known of a body at one moment. Immutable. */
public final class BodyAccount {
  private final BodyBalance balance;
  private final SortedMap<String, Entitlement> entitlements;
  private final List<String> customers;
  private final Bill bill;
  private final Decision decision;

  /**
   * All that is known of a body.
   *
   * @param balance its figures
   * @param entitlements what each customer gets, by id; the shop's own part under its reserved id
   * @param bill what it costs
   * @param decision where it stands
   */
  BodyAccount(
      BodyBalance balance,
      SortedMap<String, Entitlement> entitlements,
      Bill bill,
      Decision decision) {
    this.balance = balance;
    this.entitlements = Collections.unmodifiableSortedMap(ByteOrder.sorted(entitlements));
    this.customers =
        entitlements.keySet().stream().filter(id -> !id.equals(Customer.SHOP)).toList();
    this.bill = bill;
    this.decision = decision;
  }

  /** Its figures. */
  public BodyBalance balance() {
    return balance;
  }

  /** What each customer gets, by id; the shop's own part under its reserved id. */
  public SortedMap<String, Entitlement> entitlements() {
    return entitlements;
  }

  /** What it costs. */
  public Bill bill() {
    return bill;
  }

  /** Where it stands. */
  public Decision decision() {
    return decision;
  }

  /** The body. */
  public Body body() {
    return balance.body();
  }

  /** The customers who get a statement: everybody but the shop. */
  public List<String> customers() {
    return customers;
  }

  /**
   * Whether its weights hold and are all there: issued or closed, with no batch open. A held body may
   * lack a tub, and the meat of an open batch is not yet taken home; in a comparison either would pass
   * for a poor body.
   */
  public boolean isSettled() {
    return decision.state().isSettled()
        && balance.batches().stream().noneMatch(batch -> batch.isOpen());
  }

  @Override
  public String toString() {
    return body().id() + ", " + decision.state();
  }
}
